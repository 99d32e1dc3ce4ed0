import type { Books } from "../../books/books.ts";
import { dayAt } from "../../crew/zone-time.ts";
import type { JobAct, Paper } from "../job-act.ts";
import type { Digest } from "./collect-digest.ts";
import { jobsOf } from "./digest-tables.ts";
import type { Story } from "./story.ts";
import type { Figure } from "./who-sees.ts";

type Sheet = Extract<Paper, { readonly kind: "sheet" }>;
interface Column {
  readonly name: string;
  /** The column is about this figure: only who sees the one gets the other. */
  readonly of?: Figure;
  readonly cell: (story: Story, digest: Digest, books: Books) => string;
}

const SECONDS_AN_HOUR = 3600;
const zoned = (at_ms: number | undefined, { company }: Books) =>
  at_ms === undefined ? "" : dayAt(company.timeZone, at_ms);

/** Names of columns are a public interface: snake_case, the same in every language, kept stable. */
const COLUMNS: readonly Column[] = [
  { name: "job", cell: ({ job }) => job.number },
  { name: "customer", cell: ({ job }) => job.customer },
  { name: "place", cell: ({ job }) => job.place },
  { name: "unit", cell: ({ job }) => job.model ?? "" },
  { name: "status", cell: ({ job }) => job.status },
  { name: "planned_day", cell: ({ job }) => job.day ?? "" },
  { name: "opened_day", cell: ({ job }, _, books) => zoned(job.openedAt_ms, books) },
  { name: "first_closed_day", cell: ({ closings: [first] }, _, books) => zoned(first?.at_ms, books) },
  {
    name: "finished_day",
    cell: (story, { finished }, books) => zoned(finished.find((one) => one.story === story)?.closing.at_ms, books),
  },
  { name: "visits", of: "first_visit", cell: ({ visits }) => String(visits.length) },
  { name: "call_backs", cell: (story, { callBacks }) => String(callBacks.filter((one) => one.story === story).length) },
  {
    name: "call_back_because",
    cell: (story, { callBacks }) => callBacks.findLast((one) => one.story === story)?.callBack.because ?? "",
  },
  {
    name: "cause",
    cell: (story, { callBacks }) => callBacks.findLast((one) => one.story === story)?.callBack.cause ?? "",
  },
  { name: "open_items", cell: (story, { items }) => String(items.filter((one) => one.story === story).length) },
  {
    name: "overdue_items",
    cell: (story, { items }) => String(items.filter((one) => one.story === story && one.isOverdue).length),
  },
  {
    name: "hours_on_site",
    of: "on_site",
    cell: (story, { onSite }) => {
      const found = onSite.find((one) => one.story === story);
      return found === undefined ? "" : (found.time_s / SECONDS_AN_HOUR).toFixed(2);
    },
  },
  {
    name: "readings_taken",
    of: "readings",
    cell: (story, { steps }) => String(steps.filter(({ stories }) => stories.includes(story)).length),
  },
  {
    name: "readings_not_accepted",
    of: "readings",
    cell: ({ job }) => String(Object.values(job.readings).filter(({ isAccepted }) => !isAccepted).length),
  },
];

/** A row for each job that any figure of the digest is counted from. */
export function makeSheet(digest: Digest, sees: readonly Figure[], books: Books): Sheet {
  const { from, to } = digest.period;
  const columns = COLUMNS.filter(({ of }) => of === undefined || sees.includes(of));
  const stories = touched(digest, sees, books);
  return {
    kind: "sheet",
    name: from === to ? `digest-${from}` : `digest-${from}-to-${to}`,
    columns: columns.map(({ name }) => name),
    rows: stories.map((story) => columns.map(({ cell }) => cell(story, digest, books))),
  };
}

/** What the desk is asked to do with it. */
export function handOver(paper: Sheet): JobAct {
  return { kind: "paper", paper };
}

function touched(digest: Digest, sees: readonly Figure[], books: Books): readonly Story[] {
  const numbers = new Set(sees.flatMap((figure) => jobsOf(digest, figure, books)));
  const all = [
    ...digest.finished.map(({ story }) => story),
    ...digest.opened,
    ...digest.cancelled,
    ...digest.items.map(({ story }) => story),
    ...digest.callBacks.map(({ story }) => story),
    ...digest.onSite.map(({ story }) => story),
    ...digest.steps.flatMap(({ stories }) => stories),
    ...digest.parts.flatMap(({ stories }) => stories),
  ];
  const wanted = new Set(all.filter(({ job }) => numbers.has(job.number)));
  return [...wanted].sort((a, b) => a.job.number.localeCompare(b.job.number, "en", { numeric: true }));
}
