import type { job } from "../../../topics/job.ts";
import type { TopicTexts } from "../../topic-texts.ts";
import { commonFacts } from "../common-facts.ts";

export const texts: TopicTexts<typeof job> = {
  title: "Job",
  names: ["jobs"],
  summary: "Opens a job by its number, begins a new one, and shows what is known of it.",
  examples: ["job", "job number=1001"],
  facts: {
    number: { label: "Job number", question: "Which job?", words: ["number", "job number"] },
    task: {
      label: "What to do",
      question: "Show a job, begin a new one, or leave the open one?",
      words: ["task"],
      options: {
        show: { label: "Show", words: ["show", "open"] },
        new: { label: "New", words: ["new", "begin"] },
        leave: { label: "Leave", words: ["leave", "close", "none"] },
      },
    },
    customer: {
      label: "Customer",
      question: "For whom? Initials or a nickname only?",
      help: "Such as T. M. or Aunt Birdie. No full names, phones or streets.",
      words: ["customer", "for"],
    },
    town: { ...commonFacts.place, help: "A place of the company's books. It says which code holds." },
    day: { label: "Day", question: "For which day?", help: "Year, month and day: 2026-11-30.", words: ["day", "date"] },
    passed_over: { label: "Passed over", question: "Passed over?", words: [] },
  },
  results: {
    jobs_open: "Jobs ahead",
    facts_known: "Facts known",
    readings_taken: "Readings taken",
    items_open: "Open items",
  },
  findings: {
    shown: ({ job, customer, place }) => `Job ${job}: ${customer}, ${place}.`,
    opened: ({ job, customer, place }) => `Job ${job} is begun: ${customer}, ${place}.`,
    left: ({ job }) => `Job ${job} is left. What you ask now is kept nowhere.`,
    none_open: ({ jobs }) => `No job is open here. Jobs ahead: ${jobs}.`,
    unknown_job: ({ typed }) => `There is no job “${typed}”. Check the number, or begin a new one.`,
    facts_travel: () => "What you tell any walk from now on is kept with this job and not asked again.",
    say_number: () => "Type “job” and its number to open one.",
    customer_too_much: () => "Initials or a nickname only, such as T. M.: two short words at most, and no numbers.",
    unknown_place: ({ typed, nearest }) => `There is no place “${typed}” in the books. Close: ${nearest}.`,
    no_record: () => "Jobs are only begun in a chat. Ask there.",
    step_survey: () => "Site survey",
    step_startup: () => "Start-up",
    step_done: () => "Close out",
    step_leave: () => "Leave this job",
    step_new: () => "New job",
    step_open: ({ job }) => `Job ${job}`,
  },
  tables: {
    jobs: { title: "Jobs ahead", columns: { job: "Job", customer: "Customer", place: "Place", day: "Day" } },
  },
};
