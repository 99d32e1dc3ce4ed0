import { CREW_WORDS } from "../../crew/crew-words.ts";
import type { FindingOf, FindingSpecs } from "../../declaration/answer.ts";
import { STEP_NAMES } from "../startup-step-names.ts";

/** What stands in the cells of the tables of a digest, and of the day's first page. */
export const DIGEST_CELLS = {
  ...CREW_WORDS,
  ...STEP_NAMES,
  calibration_of: { en: "word", es: "word", id: "word" },
  within: { horizon: "count" },
  no_unit: {},
  no_day: {},
  /** The name of a cause in both languages; each catalogue says its own. */
  cause: { en: "word", es: "word" },
  no_cause_yet: {},
  too_few: {},
  overdue_since: { due: "word" },
  due_on: { due: "word" },
  closed_complete: { on: "word" },
  closed_with_items: { on: "word" },
  opened_on: { on: "word" },
  came_back: { on: "word", because: "word" },
  came_back_silent: { on: "word" },
  visits: { visits: "count" },
  item: { what: "word", owner: "word" },
  step_open: { job: "word" },
} as const satisfies FindingSpecs;
export type DigestCell = FindingOf<typeof DIGEST_CELLS>;
