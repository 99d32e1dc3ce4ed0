import type { FactSpecs, FactsOf } from "../declaration/facts.ts";
import { PASSED_OVER } from "../declaration/topic.ts";
import { ROLES } from "../ports/store.ts";
import { CREDENTIAL_KINDS, isCredentialKind } from "./credential-kinds-table.ts";
import { WEEKDAYS } from "./crew.ts";

/** What may be done with the crew's record. */
export const CREW_TASKS = [
  "show",
  "off",
  "works",
  "hours",
  "truck",
  "credential",
  "training",
  "tool",
  "stock",
  "role",
  "add",
  "remove",
  "history",
  "withdraw",
] as const;
export type CrewTask = (typeof CREW_TASKS)[number];

const ASKED = { optional: true, unlisted: true } as const;
const BY_NAME = { ...ASKED, byNameOnly: true } as const;

/** Everything that can be told about people, trucks and stock; which of it is asked for depends on the task. */
export const CREW_FACTS = {
  person: { type: "name", of: "anybody", optional: true },
  task: { type: "choice", options: CREW_TASKS, optional: true },
  from: { type: "day", ...ASKED },
  until: { type: "day", ...BY_NAME },
  weekday: { type: "choice", options: [...WEEKDAYS, "workdays"], ...BY_NAME },
  hours: { type: "text", isShort: true, ...BY_NAME },
  truck: { type: "name", of: "truck", ...ASKED },
  credential: { type: "choice", options: Object.keys(CREDENTIAL_KINDS).filter(isCredentialKind), ...ASKED },
  card_number: { type: "text", ...BY_NAME },
  issuer: { type: "text", ...BY_NAME },
  expires: { type: "day", ...BY_NAME },
  checked: { type: "day", ...BY_NAME },
  subject: { type: "text", ...BY_NAME },
  done: { type: "day", ...BY_NAME },
  tool: { type: "text", isShort: true, ...BY_NAME },
  serial: { type: "text", isShort: true, ...BY_NAME },
  part: { type: "name", of: "part", ...ASKED },
  amount: { type: "text", amountOf: "part", isShort: true, ...BY_NAME },
  role: { type: "choice", options: ROLES, ...BY_NAME },
  entry: { type: "quantity", quantity: "count", min: 1, max: 1_000_000, whole: true, ...BY_NAME },
  /** Takes away what else would be added: a license, a tool, a truck. */
  gone: { type: "flag", ...BY_NAME },
  [PASSED_OVER]: { type: "text", ...BY_NAME },
} as const satisfies FactSpecs;
export type CrewFacts = FactsOf<typeof CREW_FACTS>;
export type CrewFactId = keyof typeof CREW_FACTS;
