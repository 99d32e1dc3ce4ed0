import type { done } from "../../../topics/done.ts";
import { nameSteps } from "../../startup-texts.ts";
import type { TopicTexts } from "../../topic-texts.ts";
import { startupSteps } from "../startup-steps.ts";

export const texts: TopicTexts<typeof done> = {
  title: "Close-out",
  names: ["close out", "close the job"],
  summary: "Closes the open job: complete, or with open items that somebody owns; the team reads a summary.",
  examples: ["close out"],
  facts: {
    kit_used: {
      label: "Parts used as in the kit",
      question: "Were the parts of the kit list used as listed?",
      help: "Yes writes the kit list down as the parts used.",
      words: ["kit used", "parts used"],
    },
    owner: {
      label: "Owner of what is left",
      question: "Who sees to what is left?",
      words: ["owner", "who"],
    },
    due: {
      label: "Left until",
      question: "By which day?",
      help: "Year, month and day: 2026-11-30.",
      words: ["due", "by", "until"],
    },
    passed_over: { label: "Passed over", question: "Passed over?", words: [] },
  },
  results: { items_left: "Open items", readings_taken: "Readings taken" },
  findings: {
    ...nameSteps(startupSteps),
    complete: ({ job }) => `Job ${job} is complete.`,
    with_items: ({ job, items }) => `Job ${job} is closed with open items: ${items}.`,
    closed_before: ({ job }) => `Job ${job} is closed already.`,
    no_job: () => "No job is open here. Type “job” and its number first.",
    needs_owner: ({ items }) =>
      `Not closed. Without a reading or a reason: ${items}. Take them, or name who sees to them and by when.`,
    day_passed: ({ due }) => `${due} has passed. Write a day from today on.`,
    unknown_owner: ({ typed, nearest }) => `There is nobody “${typed}” in the books. Close: ${nearest}.`,
    blocks: ({ items }) =>
      `Somebody can be hurt by what is left: ${items}. Take these steps with “startup”, or name an owner and a day.`,
    still_left: ({ items }) => `Until they are seen to, the job is not complete. Open items: ${items}.`,
    kit_not_counted: () => "No parts are written down for this job.",
    step_startup: () => "Take the open steps",
    step_jobs: () => "Jobs",
  },
  tables: { left: { title: "What is left", columns: { step: "Step" } } },
};
