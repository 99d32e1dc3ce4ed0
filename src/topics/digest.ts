import type { Books } from "../books/books.ts";
import { addDays, daysBetween } from "../crew/days.ts";
import { dayAt } from "../crew/zone-time.ts";
import {
  type Answer,
  type FindingOf,
  type FindingSpecs,
  type NextStep,
  type OutOfRange,
  q,
} from "../declaration/answer.ts";
import type { FactSpecs, FactsOf } from "../declaration/facts.ts";
import { declareTopic } from "../declaration/topic.ts";
import { collectDigest, type Digest } from "../jobs/digest/collect-digest.ts";
import { countDigest, DIGEST_NUMBERS, DIGEST_SHARES, sayShares } from "../jobs/digest/digest-numbers.ts";
import { handOver, makeSheet } from "../jobs/digest/digest-sheet.ts";
import { jobsOf, tabulateDigest, tabulateJobs } from "../jobs/digest/digest-tables.ts";
import { DIGEST_CELLS } from "../jobs/digest/digest-words.ts";
import { dayPeriod, type Period, weekPeriod } from "../jobs/digest/period.ts";
import { ENOUGH_FOR_A_MEDIAN } from "../jobs/digest/share.ts";
import { FIGURES, type Figure, roleOf, SEES } from "../jobs/digest/who-sees.ts";

const FACTS = {
  span: { type: "choice", options: ["week", "last_week"], optional: true },
  day: { type: "day", optional: true },
  from: { type: "day", optional: true, byNameOnly: true },
  to: { type: "day", optional: true, byNameOnly: true },
  show: { type: "choice", options: FIGURES, optional: true, byNameOnly: true },
  csv: { type: "flag", optional: true },
} as const satisfies FactSpecs;

const FINDINGS = {
  ...DIGEST_CELLS,
  ...DIGEST_SHARES,
  of_day: { day: "word", finished: "count", items: "count", callbacks: "count" },
  of_days: { from: "word", to: "word", finished: "count", items: "count", callbacks: "count" },
  jobs_finished: { from: "word", to: "word", jobs: "count" },
  jobs_opened: { from: "word", to: "word", jobs: "count" },
  jobs_cancelled: { from: "word", to: "word", jobs: "count" },
  jobs_open_items: { from: "word", to: "word", jobs: "count" },
  jobs_overdue: { from: "word", to: "word", jobs: "count" },
  jobs_callbacks: { from: "word", to: "word", jobs: "count" },
  jobs_first_visit: { from: "word", to: "word", jobs: "count" },
  jobs_readings: { from: "word", to: "word", jobs: "count" },
  jobs_on_site: { from: "word", to: "word", jobs: "count" },
  jobs_parts: { from: "word", to: "word", jobs: "count" },
  jobs_lapses: { day: "word", lapses: "count" },
  for_the_office: {},
  not_this_figure: {},
  your_own_jobs: {},
  running: { today: "word" },
  lies_ahead: { today: "word" },
  sheet_made: { rows: "count" },
  from_after_to: {},
  from_missing: {},
  too_long: { most: "count" },
  how_finished: {},
  how_items: {},
  how_callbacks: {},
  how_first_visit: {},
  how_on_site: {},
  how_measured: { enough: "count" },
  how_nobody_ranked: {},
  step_finished: {},
  step_open_items: {},
  step_overdue: {},
  step_callbacks: {},
  step_opened: {},
  step_first_visit: {},
  step_readings: {},
  step_on_site: {},
  step_lapses: {},
  step_parts: {},
  step_csv: {},
  step_whole: {},
  step_today: {},
} as const satisfies FindingSpecs;

type Facts = FactsOf<typeof FACTS>;
type F = FindingOf<typeof FINDINGS>;
type Id = (typeof DIGEST_NUMBERS)[number];

const WEEK_days = 7;
/** A year and a day: more is a matter for the sheet. */
const MOST_days = 366;
/** Jobs of one figure that are offered as buttons; every other is opened by its number. */
const MOST_OFFERED = 8;
/** Figures that are offered as buttons, the most asked for first. */
const OFFERED = [
  "overdue",
  "callbacks",
  "finished",
  "open_items",
  "opened",
  "readings",
  "first_visit",
  "on_site",
  "lapses",
  "parts",
] as const satisfies readonly Figure[];

export const digest = declareTopic({
  id: "digest",
  work: "short",
  uses: "office",
  facts: FACTS,
  results: DIGEST_NUMBERS,
  findings: FINDINGS,
  tables: {
    items: ["job", "what", "owner", "due"],
    callbacks: ["job", "place", "unit", "why", "cause"],
    by_model: ["unit", "callbacks", "finished", "came_back"],
    by_cause: ["cause", "callbacks"],
    measured: ["step", "taken", "compared", "middle", "farthest", "not_accepted"],
    parts: ["part", "amount", "jobs"],
    lapses_soon: ["who", "what", "on", "within"],
    lapses: ["who", "what", "on", "within"],
    jobs: ["job", "customer", "place", "day", "unit", "about"],
  },
  asides: {
    results: ["opened", "cancelled", "lapses_60", "lapses_90"],
    findings: [
      "how_finished",
      "how_items",
      "how_callbacks",
      "how_first_visit",
      "how_on_site",
      "how_measured",
      "how_nobody_ranked",
    ],
    tables: ["by_model", "by_cause", "measured", "parts", "lapses_soon"],
  },
  // What is asked here is about the records, not about a house.
  enters: () => [],
  compute: (facts, books) => {
    const today = books.today ?? lastDay(books);
    const sees = SEES[roleOf(books.asker)];
    if (sees.length === 0) return refuse({ code: "for_the_office", data: {} });
    if (facts.show !== undefined && !sees.includes(facts.show)) return refuse({ code: "not_this_figure", data: {} });
    const period = choosePeriod(facts, today);
    if ("kind" in period) return period;
    const counted = collectDigest(books, period, today);
    const answer = facts.show === undefined ? tell(counted, sees, books) : open(counted, facts.show, books);
    return facts.csv === true ? withSheet(answer, counted, sees, books) : answer;
  },
});

/** Without a clock: the last day on which anything was written down. */
function lastDay({ jobEvents, company }: Books): string {
  return dayAt(company.timeZone, Math.max(0, ...jobEvents.map(({ at_ms }) => at_ms)));
}

function choosePeriod({ span, day, from, to }: Facts, today: string): Period | OutOfRange<F> {
  if (from === undefined && to === undefined) {
    if (span === undefined) return dayPeriod(day ?? today);
    return weekPeriod(span === "week" ? (day ?? today) : addDays(day ?? today, -WEEK_days));
  }
  if (from === undefined) return outOf("to", to ?? "", { code: "from_missing", data: {} });
  const period: Period = { from, to: to ?? (today < from ? from : today) };
  if (period.to < from) return outOf("to", period.to, { code: "from_after_to", data: {} });
  if (daysBetween(from, period.to) >= MOST_days)
    return outOf("from", from, { code: "too_long", data: { most: q("count", MOST_days) } });
  return period;
}

function outOf(fact: "from" | "to", value: string, reason: F): OutOfRange<F> {
  return { kind: "out-of-range", fact, value, reason };
}

function refuse(headline: F): Answer<Id, F> {
  return {
    kind: "answer",
    verdict: "no",
    headline,
    results: [],
    findings: [{ code: "your_own_jobs", data: {} }],
    next: [{ say: { code: "step_today", data: {} }, request: "today" }],
  };
}

/** The first look: what stands out as the headline, then the numbers, and what each is made of. */
function tell(counted: Digest, sees: readonly Figure[], books: Books): Answer<Id, F> {
  const { period, asOf, finished, items, callBacks } = counted;
  const data = {
    finished: q("count", finished.length),
    items: q("count", items.length),
    callbacks: q("count", callBacks.length),
  };
  const isLate = items.some(({ isOverdue }) => isOverdue);
  return {
    kind: "answer",
    verdict: isLate || callBacks.length > 0 ? "caution" : "info",
    headline:
      period.from === period.to
        ? { code: "of_day", data: { day: period.from, ...data } }
        : { code: "of_days", data: { ...period, ...data } },
    results: countDigest(counted, sees, books),
    findings: [...whenCounted(period, asOf), ...sayShares(counted, sees), ...definitions(sees)],
    tables: tabulateDigest(counted, sees, books),
    next: steps(counted, sees, books),
  };
}

/** A period that is not over yet says so. */
function whenCounted({ from, to }: Period, asOf: string): readonly F[] {
  if (asOf === to) return [];
  return [{ code: asOf < from ? "lies_ahead" : "running", data: { today: asOf } }];
}

function definitions(sees: readonly Figure[]): readonly F[] {
  const enough = q("count", ENOUGH_FOR_A_MEDIAN);
  const said: readonly (readonly [Figure, F])[] = [
    ["finished", { code: "how_finished", data: {} }],
    ["open_items", { code: "how_items", data: {} }],
    ["callbacks", { code: "how_callbacks", data: {} }],
    ["first_visit", { code: "how_first_visit", data: {} }],
    ["on_site", { code: "how_on_site", data: {} }],
    ["readings", { code: "how_measured", data: { enough } }],
    ["finished", { code: "how_nobody_ranked", data: {} }],
  ];
  return said.filter(([figure]) => sees.includes(figure)).map(([, finding]) => finding);
}

/** Each figure opens to its jobs; what has none is not offered. */
function steps(counted: Digest, sees: readonly Figure[], books: Books): readonly NextStep<F>[] {
  const days = writePeriod(counted.period);
  const filled = OFFERED.filter(
    (figure) =>
      sees.includes(figure) &&
      (figure === "lapses" ? counted.lapses.length : jobsOf(counted, figure, books).length) > 0,
  );
  return [
    ...filled.map(
      (figure): NextStep<F> => ({
        say: { code: `step_${figure}`, data: {} },
        request: `digest show=${figure} ${days}`,
      }),
    ),
    { say: { code: "step_csv", data: {} }, request: `digest csv ${days}` },
  ];
}

/** A period as it is typed, whole, so that a button says the same tomorrow. */
function writePeriod({ from, to }: Period): string {
  return from === to ? `day=${from}` : `from=${from} to=${to}`;
}

/** The jobs that one figure was counted from, each to be opened. */
function open(counted: Digest, figure: Figure, books: Books): Answer<Id, F> {
  const numbers = jobsOf(counted, figure, books);
  const table = tabulateJobs(counted, figure, books);
  const data = { ...counted.period, jobs: q("count", numbers.length) };
  return {
    kind: "answer",
    verdict: "info",
    headline:
      figure === "lapses"
        ? { code: "jobs_lapses", data: { day: counted.asOf, lapses: q("count", counted.lapses.length) } }
        : { code: `jobs_${figure}`, data },
    results: countDigest(counted, [figure], books),
    findings: definitions([figure]),
    ...(table.rows.length > 0 && { tables: [table] }),
    next: [
      ...numbers.slice(0, MOST_OFFERED).map(
        (job): NextStep<F> => ({
          say: { code: "step_open", data: { job } },
          request: `job number=${job}`,
        }),
      ),
      { say: { code: "step_whole", data: {} }, request: `digest ${writePeriod(counted.period)}` },
    ],
  };
}

function withSheet(answer: Answer<Id, F>, counted: Digest, sees: readonly Figure[], books: Books): Answer<Id, F> {
  const sheet = makeSheet(counted, sees, books);
  const made: F = { code: "sheet_made", data: { rows: q("count", sheet.rows.length) } };
  return { ...answer, findings: [made, ...answer.findings], acts: [handOver(sheet)] };
}
