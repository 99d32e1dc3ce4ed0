import { nameSteps } from "../startup-texts.ts";
import { crewWords } from "./crew-words.ts";
import { startupSteps } from "./startup-steps.ts";

type Words<K extends string> = Readonly<Record<K, string>>;

/** What stands in the tables of a digest and of the day's first page. */
export const digestWords = {
  ...crewWords,
  ...nameSteps(startupSteps),
  calibration_of: ({ en, id }: Words<"en" | "id">) => `Calibration: ${en} (${id})`,
  within: ({ horizon }: Words<"horizon">) => `Within ${horizon} days`,
  no_unit: () => "No unit yet",
  no_day: () => "No day yet",
  cause: ({ en }: Words<"en">) => en,
  no_cause_yet: () => "Not found yet",
  too_few: () => "Too few",
  overdue_since: ({ due }: Words<"due">) => `Overdue since ${due}`,
  due_on: ({ due }: Words<"due">) => `By ${due}`,
  closed_complete: ({ on }: Words<"on">) => `Complete, ${on}`,
  closed_with_items: ({ on }: Words<"on">) => `Closed with open items, ${on}`,
  opened_on: ({ on }: Words<"on">) => `Opened ${on}`,
  came_back: ({ on, because }: Words<"on" | "because">) => `${on}: ${because}`,
  came_back_silent: ({ on }: Words<"on">) => on,
  visits: ({ visits }: Words<"visits">) => `Visits: ${visits}`,
  item: ({ what, owner }: Words<"what" | "owner">) => `${what} (${owner}).`,
  step_open: ({ job }: Words<"job">) => `Job ${job}`,
};
