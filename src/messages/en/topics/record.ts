import type { record } from "../../../topics/record.ts";
import type { TopicTexts } from "../../topic-texts.ts";

export const texts: TopicTexts<typeof record> = {
  title: "Record",
  names: ["records"],
  summary: "Shows all that is kept of a job, and hands it over as a PDF to print and as JSON.",
  examples: ["record", "record number=1001"],
  facts: {
    number: { label: "Job number", question: "Which job's record?", words: ["number", "job number", "of job"] },
  },
  results: {
    readings_taken: "Readings taken",
    items_open: "Open items",
    files_kept: "Photos and papers",
    entries: "Entries",
  },
  findings: {
    shown: ({ job, customer, place }) => `Record of job ${job}: ${customer}, ${place}.`,
    unknown_job: ({ typed }) => `There is no job “${typed}”. Check the number.`,
    none_open: () => "No job is open here. Say which, such as “record 1001”.",
    no_record: () => "The papers are made in a chat only. Ask there.",
    step_open: ({ job }) => `Job ${job}`,
    step_jobs: () => "Jobs ahead",
  },
};
