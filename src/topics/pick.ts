import type { Books } from "../books/books.ts";
import type { Answer, FindingOf, FindingSpecs, OutOfRange, Verdict } from "../declaration/answer.ts";
import { q } from "../declaration/answer.ts";
import { askedFacts } from "../declaration/asked-facts.ts";
import { commonFacts } from "../declaration/common-facts.ts";
import type { FactSpecs, FactsOf } from "../declaration/facts.ts";
import { declareTopic, type PartsDone, type TopicParts } from "../declaration/topic.ts";
import { PICK_REFUSALS, type PickCase, planPick } from "../household/pick-case.ts";
import { headline, PICK_SAYS, sayBest, sayHelp, saySearch, saySources } from "../household/pick-findings.ts";
import {
  bodyResults,
  limitsTable,
  PICK_CELLS,
  rankingTable,
  refusedTable,
  relaxEach,
  runResults,
} from "../household/pick-results.ts";
import {
  bestSoFar,
  countPickParts,
  PICK_ROUNDS,
  type PickPart,
  rankFinalists,
  runPickPart,
  trialsOf,
} from "../household/pick-search.ts";
import { type Best, bestPick, describePickSite } from "../household/pick-site.ts";
import { bestSteps, helpSteps, PICK_STEPS } from "../household/pick-steps.ts";
import { SAMPLE_FACTS } from "../household/sample-facts.ts";
import { toBase } from "../units/convert.ts";

const inches = (...values: readonly number[]) => values.map((value) => toBase(value, "in"));
const SITE = { byNameOnly: true, optional: true } as const;

const FACTS = {
  people: { ...commonFacts.people, unless: "bedrooms" },
  bedrooms: commonFacts.bedrooms,
  height: {
    ...SITE,
    type: "quantity",
    quantity: "dimension",
    min: toBase(30, "in"),
    max: toBase(240, "in"),
    usual: inches(66, 72, 84, 96),
    ask: true,
  },
  door: {
    ...SITE,
    type: "quantity",
    quantity: "dimension",
    min: toBase(12, "in"),
    max: toBase(120, "in"),
    usual: inches(24, 28, 30, 32),
    ask: true,
  },
  supply: { ...commonFacts.supply, ask: true },
  breaker: { ...SITE, type: "quantity", quantity: "current", min: 10, max: 200, usual: [15, 20, 30] },
  spaces: { ...SITE, type: "quantity", quantity: "count", min: 0, max: 20, whole: true, usual: [0, 1, 2] },
  room: {
    ...SITE,
    type: "quantity",
    quantity: "room_volume",
    min: toBase(20, "ft3"),
    max: toBase(100_000, "ft3"),
    usual: [toBase(450, "ft3"), toBase(700, "ft3"), toBase(1000, "ft3")],
  },
  floor: { ...SITE, type: "quantity", quantity: "mass", min: toBase(100, "lb"), max: toBase(5000, "lb") },
  bedroom: { ...SITE, type: "quantity", quantity: "length", min: 0, max: toBase(300, "ft") },
  sound: { ...SITE, type: "quantity", quantity: "sound", min: 10, max: 90, usual: [40, 45, 50] },
  mixing_valve: { type: "flag", optional: true },
  setpoint: { ...commonFacts.setpoint, byNameOnly: true, optional: true },
  hottest: {
    type: "quantity",
    quantity: "temperature",
    min: toBase(100, "F"),
    max: toBase(180, "F"),
    usual: [toBase(120, "F"), toBase(130, "F")],
    byNameOnly: true,
    optional: true,
  },
  mode: commonFacts.mode,
  bathrooms: commonFacts.bathrooms,
  wanted: commonFacts.wanted,
  place: commonFacts.place,
  month: commonFacts.month,
  rate: commonFacts.rate,
  limit: SAMPLE_FACTS.limit,
  days: { ...SAMPLE_FACTS.days, max: 1000, usual: [200, 400] },
} as const satisfies FactSpecs;

const RESULTS = [
  "cost_per_year",
  "energy_per_year",
  "cop_year",
  "chance_of_running_cold",
  "sampling_error",
  "height_needed",
  "full_mass",
  "footprint_load",
  "sound_at_bedroom",
] as const;

const FINDINGS = {
  ...PICK_REFUSALS,
  ...PICK_CELLS,
  ...PICK_STEPS,
  ...PICK_SAYS,
} as const satisfies FindingSpecs;

type Facts = FactsOf<typeof FACTS>;
type Id = (typeof RESULTS)[number];
type F = FindingOf<typeof FINDINGS>;

const PARTS: TopicParts<Facts, F, PickPart> = {
  rounds: PICK_ROUNDS,
  count: countPickParts,
  run: runPickPart,
  preview: (_facts, books, done) => {
    const best = bestSoFar(done);
    const model = books.catalogue.find(({ id }) => id === best?.model);
    if (best?.cost_usd === undefined || model === undefined) return undefined;
    const setpoint = q("temperature", best.setpoint_C);
    return { code: `so_far_${best.mode}`, data: { model: model.name, setpoint, cost: q("money", best.cost_usd) } };
  },
};

export const pick = declareTopic({
  id: "pick",
  work: "long",
  facts: FACTS,
  results: RESULTS,
  findings: FINDINGS,
  tables: {
    ranking: ["rank", "model", "setpoint", "mode", "cost", "energy", "chance", "remark"],
    refused: ["model", "reason"],
    limits: ["limit", "there", "refuses", "admits", "from"],
  },
  asides: {
    results: ["cop_year", "footprint_load"],
    findings: ["tried", "chance_for", "prices_set", "only_running_cost"],
    tables: ["refused"],
  },
  parts: PARTS,
  compute: (facts, books, _report, done): Answer<Id, F> | OutOfRange<F> => {
    const planned = planPick(facts, books);
    return planned.ok ? answer(planned.known, books, done) : planned.refused;
  },
  site: (facts, books, done = []) => {
    const planned = planPick(facts, books);
    if (!planned.ok) return {};
    return describePickSite(planned.known, bestPick(planned.known, rankFinalists(trialsOf(done))));
  },
});

function answer(known: PickCase, books: Books, done: PartsDone<PickPart>): Answer<Id, F> {
  const trials = trialsOf(done);
  const ranked = rankFinalists(trials);
  const best = bestPick(known, ranked);
  const relaxed = relaxEach(known);
  const asked = askedFacts(FACTS, { ...known.facts });
  return {
    kind: "answer",
    verdict: judge(best),
    headline: headline(known, best),
    results:
      best === undefined
        ? []
        : [
            ...runResults(known, best.finalist, best.candidate.model, books),
            ...bodyResults(known, best.candidate.model),
          ],
    findings: [
      ...(best === undefined ? sayHelp(known, relaxed) : sayBest(known, best, ranked)),
      ...saySearch(known, done, ranked),
      ...(best === undefined ? [] : saySources(known, books)),
    ],
    tables: [
      ...(ranked.length > 0 ? [rankingTable(known, ranked)] : []),
      ...refusedTable(known, trials),
      ...limitsTable(known, relaxed),
    ],
    next: best === undefined ? helpSteps(known, asked, relaxed, trials) : bestSteps(known, asked, best),
    assumed: known.assumed,
  };
}

/** Good only where the chance is surely under the limit and the unit stands in the air that it was simulated in. */
function judge(best: Best | undefined): Verdict {
  if (best === undefined) return "no";
  return best.finalist.isSure && best.candidate.model.kind !== "split" ? "good" : "caution";
}
