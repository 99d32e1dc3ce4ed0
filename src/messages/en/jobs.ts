import type { JobTexts } from "../job-texts.ts";

export const jobs: JobTexts = {
  statuses: {
    planned: "planned",
    surveyed: "surveyed",
    under_way: "under way",
    open_items: "closed with open items",
    complete: "complete",
    called_back: "called back",
    cancelled: "cancelled",
  },
  roles: { technician: "technician", dispatcher: "dispatcher", manager: "manager", owner: "owner" },
  changes: {
    opened: "open a job",
    planned: "plan day and people",
    unit: "change the unit",
    permit: "write down the permit",
    status: "change the status",
    facts: "write down facts",
    reading: "write down a reading",
    item_opened: "add an open item",
    item_closed: "close an item",
    file: "add a file",
    parts: "write down parts used",
    note: "add a note",
    trail: "add to the fault trail",
    withdrawn: "take something back",
  },
  refusals: {
    unknown_job: (job) => `There is no job ${job}. Check the number.`,
    number_taken: (job) => `Job ${job} is there already. Take another number.`,
    customer_too_much:
      "Name the customer by initials or a nickname only, such as T. M.: two short words at most, and no numbers.",
    not_in_this_status: (status, change) => `The job is ${status}: you cannot ${change} now. Change its status first.`,
    not_your_role: (roles) => `This is for: ${roles}. Ask one of them.`,
    no_such_step: (from, to, next) =>
      next === ""
        ? `The job is ${from} and cannot become ${to}. You cannot move it on from here; ask the office.`
        : `The job is ${from} and cannot become ${to}. From here it can be: ${next}.`,
    says_why: (to) => `Say why the job is ${to}, in a few words.`,
    items_left: (items) => `Still open: ${items}. Close them first, or close the job with open items.`,
    no_item_left: "Nothing is left open. Set the job to complete, or add the open item first.",
    reading_unexplained: (readings) =>
      `Not accepted, and without a reason: ${readings}. Read again, or say why it stands.`,
    unknown_item: (item, open) =>
      open === "" ? `There is no open item ${item}; nothing is open.` : `There is no open item ${item}. Open: ${open}.`,
    unknown_event: (event) => `There is no entry ${event} in this job. Look at its history for the number.`,
    other_kind: (event) => `Entry ${event} is about something else. Put it right with an entry of the same kind.`,
    not_your_event: (by) => `${by} wrote this. Ask them, or a manager, to put it right.`,
  },
  files: {
    empty: "The file is empty. Send it again.",
    too_large: (most_MB) => `The file is larger than ${most_MB} MB. Send a smaller picture or fewer pages.`,
    heic: "I cannot keep HEIC or AVIF pictures. Send it as JPEG: set the camera to “most compatible”, or send a screenshot of it.",
    unknown_type: "I keep pictures (JPEG, PNG, WebP) and PDF files only. Send it as one of these.",
    damaged: "The file is damaged or cut off, and I could not take the location out of it. Send it again.",
  },
  mayRepeat: "This may be a repeat: I could not learn whether it had arrived before.",
  lostPostsTitle: "Not delivered",
  lostPost: (title, channel, because) => `“${title}” did not reach ${channel}: ${because}`,
};
