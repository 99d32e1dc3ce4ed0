import type { ready } from "../../../topics/ready.ts";
import type { TopicTexts } from "../../topic-texts.ts";
import { crewWords } from "../crew-words.ts";

export const texts: TopicTexts<typeof ready> = {
  title: "Ready",
  summary: "Whether a person, a job or a day is ready: licenses, tools, hours, stock, papers, and what lapses soon.",
  examples: ["ready 2026-11-30", "ready person=marisol day=2026-12-01"],
  facts: {
    day: {
      label: "Day",
      question: "For which day?",
      help: "Year, month and day: 2026-11-30.",
      words: ["day", "date"],
    },
    person: { label: "Person", question: "For whom?", words: ["person", "who", "technician"] },
    job: { label: "Job", question: "For which job?", words: ["job", "job number"] },
  },
  results: {
    ready_count: "Ready",
    stops: "Stop the work",
    cares: "To see to",
    lapses_30: "Lapse within 30 days",
    lapses_60: "Lapse within 60 days",
    lapses_90: "Lapse within 90 days",
  },
  findings: {
    ...crewWords,
    person_ready: ({ name, day }) => `${name} is ready for ${day}.`,
    person_with_care: ({ name, day, cares }) => `${name} can work on ${day}. To see to: ${cares}.`,
    person_not_ready: ({ name, day, stops }) => `${name} is not ready for ${day}. In the way: ${stops}.`,
    job_ready: ({ job, day }) => `Job ${job} is ready for ${day}.`,
    job_with_care: ({ job, day, cares }) => `Job ${job} can be done on ${day}. To see to: ${cares}.`,
    job_not_ready: ({ job, day, stops }) => `Job ${job} is not ready for ${day}. In the way: ${stops}.`,
    day_ready: ({ day, crew, jobs }) => `${day} can go ahead. At work: ${crew}; jobs: ${jobs}.`,
    day_not_ready: ({ day, stops }) => `${day} is not ready. In the way: ${stops}.`,
    registers_decide: () =>
      "This is what the crew book says. The issuer's register and local rules decide who may do what.",
    nobody_assigned: () => "Nobody is down for this job yet.",
    no_crew_book: () => "The books name nobody who goes to site. Fill in crew.yaml first.",
    unknown_person: ({ typed, nearest }) => `Nobody in the crew book is called “${typed}”. Close: ${nearest}.`,
    unknown_job: ({ typed, nearest }) =>
      nearest === "" ? "The record holds no jobs yet." : `There is no job “${typed}”. Close: ${nearest}.`,
    why_none: () => "Missing",
    why_lapsed: ({ until }) => `Lapsed after ${until}`,
    why_grace: ({ until }) => `Lapsed; work may go on through ${until}`,
    why_warns: ({ until }) => `Lapsed after ${until}; stops nothing`,
    why_unchecked: () => "Not looked up in the register for 90 days",
    why_calibration: ({ until }) => `Calibration was good through ${until}`,
    why_short: ({ short }) => `Short by ${short}, and not in the shop`,
    why_short_length: ({ short }) => `Short by ${short}, and not in the shop`,
    why_load: ({ short }) => `Load ${short} from the shop`,
    why_load_length: ({ short }) => `Load ${short} from the shop`,
    why_hours: ({ needed, free }) => `Takes ${needed} with the drive; works ${free}`,
    why_off: () => "Day off",
    why_no_hours: () => "Does not work that day",
    why_helpers: ({ needed, given }) => `Takes ${needed}, has ${given}`,
    why_not_in_crew_book: () => "Not in the crew book",
    calibration_of: ({ en, id }) => `Calibration: ${en} (${id})`,
    within: ({ horizon }) => `Within ${horizon} days`,
    step_plan: ({ day }) => `Plan ${day}`,
    step_kit: ({ job }) => `Kit for job ${job}`,
  },
  tables: {
    missing: {
      title: "What is missing",
      columns: { who: "Who or job", what: "What", why: "Why", others: "Who else could" },
    },
    lapses: { title: "What lapses soon", columns: { who: "Who", what: "What", on: "Good through", within: "When" } },
  },
};
