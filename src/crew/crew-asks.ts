import type { Books } from "../books/books.ts";
import type { KnownFacts } from "../declaration/facts.ts";
import { PASSED_OVER } from "../declaration/topic.ts";
import type { Role } from "../ports/store.ts";
import type { CrewFactId, CrewTask } from "./crew-facts.ts";
import { CREW_TASKS } from "./crew-facts.ts";
import { LEAD_ROLES, OFFICE_ROLES } from "./crew-rules.ts";

/** What is asked for each task, in order; what stands in `MAY_STAY_OPEN` may be passed over. */
const ASKS: Readonly<Record<CrewTask, readonly CrewFactId[]>> = {
  show: [],
  history: [],
  // One day is one day; for more, the question says how both ends are told at once.
  off: ["person", "from"],
  works: ["person", "from"],
  hours: ["person", "weekday", "hours"],
  truck: ["person", "truck"],
  credential: ["person", "credential", "card_number", "issuer", "expires", "checked"],
  training: ["person", "subject", "until"],
  tool: ["person", "tool", "until"],
  stock: ["truck", "part", "amount"],
  role: ["person", "role"],
  add: ["person"],
  remove: ["person"],
  withdraw: ["entry"],
};

/** Which facts say by themselves what is wanted, the surest first. */
const TELLS: readonly (readonly [CrewFactId, CrewTask])[] = [
  ["entry", "withdraw"],
  ["credential", "credential"],
  ["subject", "training"],
  ["tool", "tool"],
  ["amount", "stock"],
  ["part", "stock"],
  ["hours", "hours"],
  ["role", "role"],
  ["from", "off"],
];

/** Who may do what is asked; the rules of each change have the last word. */
export const TASK_ROLES: Readonly<Partial<Record<CrewTask, readonly Role[]>>> = {
  off: OFFICE_ROLES,
  works: OFFICE_ROLES,
  hours: OFFICE_ROLES,
  truck: OFFICE_ROLES,
  credential: LEAD_ROLES,
  training: OFFICE_ROLES,
  stock: OFFICE_ROLES,
  role: LEAD_ROLES,
  add: LEAD_ROLES,
  remove: LEAD_ROLES,
  withdraw: OFFICE_ROLES,
};

/** What is wanted: as it was said, else as the rest tells. */
export function taskOf(has: (fact: CrewFactId) => boolean, said: unknown): CrewTask {
  const task = CREW_TASKS.find((one) => one === said);
  if (task !== undefined && task !== "show") return task;
  const told = TELLS.find(([fact]) => has(fact));
  if (told !== undefined) return told[1];
  if (has("truck")) return has("person") ? "truck" : "stock";
  return "show";
}

/** The next thing to ask; nothing where all is told, or whoever asks may not do it anyway. */
export function nextCrewFact(known: KnownFacts, books: Books): CrewFactId | undefined {
  const has = (fact: CrewFactId) => known[fact] !== undefined;
  const task = taskOf(has, known["task"]?.value);
  const roles = TASK_ROLES[task];
  const { asker } = books;
  const isLook = task === "stock" && !has("part") && !has("amount");
  if (asker !== undefined && roles !== undefined && !roles.includes(asker.role) && !isLook) return undefined;
  // A technician says no more of a tool than how long its calibration counts.
  const isNewTool = task === "tool" && (has("serial") || has("gone"));
  if (isNewTool && asker?.role === "technician") return undefined;
  const passed = String(known[PASSED_OVER]?.value ?? "").split(",");
  const asks = ASKS[task].filter((fact) => !isNeedless(task, fact, known, books));
  return asks.find((fact) => !has(fact) && !passed.includes(fact));
}

function isNeedless(task: CrewTask, fact: CrewFactId, known: KnownFacts, { asker, crew }: Books): boolean {
  const told = (id: CrewFactId) => String(known[id]?.value ?? "");
  if (known["gone"]?.value === true) return fact !== "person" && fact !== "credential" && fact !== "tool";
  // A look at what a truck holds names no part.
  if (task === "stock") return fact !== "truck" && known["part"] === undefined && known["amount"] === undefined;
  if (task === "tool" && fact === "person") return asker?.role === "technician";
  if (task !== "credential" || fact === "person" || fact === "credential") return false;
  const member = crew.members.find(({ person }) => person === told("person"));
  const held = member?.credentials.some(({ kind }) => kind === told("credential")) === true;
  // A renewal keeps its number and issuer unless somebody says otherwise.
  return held ? fact !== "expires" : false;
}
