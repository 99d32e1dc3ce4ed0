import type { digest } from "../../../topics/digest.ts";
import type { TopicTexts } from "../../topic-texts.ts";
import { digestWords } from "../digest-words.ts";

const when = (from: string, to: string) => (from === to ? from : `${from} to ${to}`);
const counts = (finished: string, items: string, callbacks: string) =>
  `finished ${finished}, open items ${items}, call-backs ${callbacks}.`;
type Jobs = { readonly from: string; readonly to: string; readonly jobs: string };

export const texts: TopicTexts<typeof digest> = {
  title: "Digest",
  summary:
    "A day or week of the company: finished, left open, called back, measured, lapsing; each figure opens to its jobs.",
  examples: ["digest week", "digest day=2026-11-24", "digest last week show=callbacks"],
  facts: {
    span: {
      label: "Span",
      question: "This week or the last?",
      words: ["span"],
      options: {
        week: { label: "Week", words: ["week", "this week", "weekly"] },
        last_week: { label: "Last week", words: ["last week", "week before"] },
      },
    },
    day: { label: "Day", question: "Which day?", help: "A date, today or yesterday.", words: ["day", "date"] },
    from: { label: "From", question: "From which day?", words: ["from"] },
    to: { label: "To", question: "To which day?", words: ["to", "until"] },
    show: {
      label: "Show",
      question: "The jobs of which figure?",
      words: ["show", "open"],
      options: {
        finished: { label: "Finished", words: ["finished"] },
        opened: { label: "Opened", words: ["opened"] },
        cancelled: { label: "Cancelled", words: ["cancelled", "canceled"] },
        open_items: { label: "Open items", words: ["open items"] },
        overdue: { label: "Overdue", words: ["overdue"] },
        callbacks: { label: "Call-backs", words: ["call-backs", "callbacks", "call backs"] },
        first_visit: { label: "Done at the first visit", words: ["first visit"] },
        readings: { label: "Readings", words: ["readings", "measured"] },
        on_site: { label: "Time on site", words: ["time on site", "hours"] },
        lapses: { label: "Lapsing", words: ["lapses", "lapsing"] },
        parts: { label: "Parts used", words: ["parts", "parts used"] },
      },
    },
    csv: { label: "Sheet (CSV)", question: "As a sheet?", words: ["csv", "sheet", "spreadsheet"] },
  },
  results: {
    finished: "Finished jobs",
    open_items: "Open items",
    overdue: "Of these overdue",
    callbacks: "Call-backs",
    opened: "Opened jobs",
    cancelled: "Cancelled jobs",
    first_visit: "Done at the first visit",
    not_accepted: "Readings not accepted",
    on_site: "Time on site",
    lapses_30: "Lapse within 30 days",
    lapses_60: "Lapse within 60 days",
    lapses_90: "Lapse within 90 days",
  },
  findings: {
    ...digestWords,
    of_day: ({ day, finished, items, callbacks }) => `${day}: ${counts(finished, items, callbacks)}`,
    of_days: ({ from, to, finished, items, callbacks }) => `${when(from, to)}: ${counts(finished, items, callbacks)}`,
    jobs_finished: ({ from, to, jobs }: Jobs) => `Finished, ${when(from, to)}. Jobs: ${jobs}.`,
    jobs_opened: ({ from, to, jobs }: Jobs) => `Opened, ${when(from, to)}. Jobs: ${jobs}.`,
    jobs_cancelled: ({ from, to, jobs }: Jobs) => `Cancelled, ${when(from, to)}. Jobs: ${jobs}.`,
    jobs_open_items: ({ from, to, jobs }: Jobs) => `Open items, ${when(from, to)}. Jobs: ${jobs}.`,
    jobs_overdue: ({ from, to, jobs }: Jobs) => `Overdue items, ${when(from, to)}. Jobs: ${jobs}.`,
    jobs_callbacks: ({ from, to, jobs }: Jobs) => `Call-backs, ${when(from, to)}. Jobs: ${jobs}.`,
    jobs_first_visit: ({ from, to, jobs }: Jobs) => `Closed for the first time, ${when(from, to)}. Jobs: ${jobs}.`,
    jobs_readings: ({ from, to, jobs }: Jobs) => `Readings taken, ${when(from, to)}. Jobs: ${jobs}.`,
    jobs_on_site: ({ from, to, jobs }: Jobs) => `Time on site, ${when(from, to)}. Jobs: ${jobs}.`,
    jobs_parts: ({ from, to, jobs }: Jobs) => `Parts used, ${when(from, to)}. Jobs: ${jobs}.`,
    jobs_lapses: ({ day, lapses }) => `What lapses within 90 days of ${day}: ${lapses}.`,
    for_the_office: () =>
      "The digest is for the manager and the owner; a dispatcher sees jobs, open items and what lapses.",
    not_this_figure: () => "The manager and the owner see this figure. Say “digest” for those that you may see.",
    your_own_jobs: () => "Your own jobs: say “today”.",
    running: ({ today }) => `It is not over: counted up to ${today}.`,
    lies_ahead: ({ today }) => `This lies ahead; today is ${today}. Say “digest last week” or write an earlier date.`,
    first_visits: ({ some, all }) =>
      `Closed for the first time: ${all}. Complete at the first visit: ${some} of ${all}.`,
    came_back_rate: ({ some, all, days }) =>
      `Of the jobs first closed in the last ${days} days (${all}), these came back: ${some}.`,
    share_is: ({ share, low, high }) => `That is ${share}; chance alone would allow ${low} to ${high} (95 %).`,
    few_for_share: ({ enough }) => `A small number: no percentage below ${enough} jobs.`,
    sheet_made: ({ rows }) => `A sheet with a row for each job. Rows: ${rows}.`,
    from_after_to: () => "The last day is before the first. Write from= with the earlier day.",
    from_missing: () => "The first day is missing. Write from= and to=, such as from=2026-11-16 to=2026-11-22.",
    too_long: ({ most }) => `That is too long. Write a span of at most ${most} days.`,
    how_finished: () =>
      "Finished: the crew closed the job in these days, with or without open items. Each job counts once.",
    how_items: () => "Open items: not seen to at the end of these days. Overdue: the agreed day is before that end.",
    how_callbacks: () =>
      "Call-backs: counted on the day the customer called. Jobs closed lately have had less time to come back.",
    how_first_visit: () =>
      "First visit: of the jobs closed for the first time, those closed complete after the work began once.",
    how_on_site: () =>
      "Time on site: from the first to the last entry of a day, per job. A lower bound, not a time sheet.",
    how_measured: ({ enough }) =>
      `Measured less expected, as a share; temperatures in degrees. The last reading of each job counts; no middle below ${enough}.`,
    how_nobody_ranked: () => "From the company's own records. No figure is set against a person.",
    step_finished: () => "Finished jobs",
    step_open_items: () => "Open items",
    step_overdue: () => "Overdue items",
    step_callbacks: () => "Call-backs",
    step_opened: () => "Opened jobs",
    step_first_visit: () => "First visits",
    step_readings: () => "Readings",
    step_on_site: () => "Time on site",
    step_lapses: () => "What lapses",
    step_parts: () => "Parts used",
    step_csv: () => "Sheet (CSV)",
    step_whole: () => "The whole digest",
    step_today: () => "My jobs today",
  },
  tables: {
    items: { title: "Open items", columns: { job: "Job", what: "What", owner: "Who", due: "When" } },
    callbacks: {
      title: "Call-backs",
      columns: { job: "Job", place: "Place", unit: "Unit", why: "Called", cause: "Cause" },
    },
    by_model: {
      title: "Call-backs by unit",
      columns: {
        unit: "Unit",
        callbacks: "Call-backs",
        finished: "First closed in 90 days",
        came_back: "Of these came back",
      },
    },
    by_cause: { title: "Call-backs by cause", columns: { cause: "Cause", callbacks: "Call-backs" } },
    measured: {
      title: "Measured against expected",
      columns: {
        step: "Step",
        taken: "Jobs",
        compared: "With expected",
        middle: "Median deviation",
        farthest: "Farthest",
        not_accepted: "Not accepted",
      },
    },
    parts: { title: "Parts used most", columns: { part: "Part", amount: "How much", jobs: "Jobs" } },
    lapses_soon: {
      title: "What lapses",
      columns: { who: "Who", what: "What", on: "Good through", within: "When" },
    },
    lapses: { title: "What lapses", columns: { who: "Who", what: "What", on: "Good through", within: "When" } },
    jobs: {
      title: "Jobs",
      columns: { job: "Job", customer: "Customer", place: "Place", day: "Day", unit: "Unit", about: "About" },
    },
  },
};
