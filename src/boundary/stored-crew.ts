import { z } from "zod";
import { CREDENTIAL_KINDS, isCredentialKind } from "../crew/credential-kinds-table.ts";
import { LAPSE_RULES, WEEKDAYS } from "../crew/crew.ts";
import type { CrewChange } from "../crew/crew-event.ts";
import { ROLES } from "../ports/store.ts";
import { parseStored, type Stored } from "./stored-json.ts";

const text = z.string();
const amounts = z.record(text, z.number());
const kind = z.enum(Object.keys(CREDENTIAL_KINDS).filter(isCredentialKind));
const credential = z.strictObject({
  kind,
  number: text,
  issuer: text,
  expires: text.exactOptional(),
  lapse: z.enum(LAPSE_RULES).exactOptional(),
  grace_days: z.number().exactOptional(),
  checked: text.exactOptional(),
});
const training = z.strictObject({ subject: text, done: text, until: text.exactOptional() });
const tool = z.strictObject({ tool: text, id: text, calibratedUntil: text.exactOptional() });
const shifts = z.array(z.strictObject({ from_min: z.number(), to_min: z.number() }));
const days = { person: text, from: text, to: text };

/** One schema a kind of change: a new kind does not compile until it has one. */
const CHANGES = {
  joined: z.strictObject({ kind: z.literal("joined"), person: text, name: text }),
  left: z.strictObject({ kind: z.literal("left"), person: text }),
  role: z.strictObject({ kind: z.literal("role"), person: text, role: z.enum(ROLES) }),
  credential: z.strictObject({ kind: z.literal("credential"), person: text, credential }),
  credential_gone: z.strictObject({ kind: z.literal("credential_gone"), person: text, credential: kind }),
  training: z.strictObject({ kind: z.literal("training"), person: text, training }),
  tool: z.strictObject({ kind: z.literal("tool"), person: text, tool }),
  tool_gone: z.strictObject({ kind: z.literal("tool_gone"), person: text, id: text }),
  calibrated: z.strictObject({ kind: z.literal("calibrated"), person: text, id: text, until: text }),
  hours: z.strictObject({ kind: z.literal("hours"), person: text, weekdays: z.array(z.enum(WEEKDAYS)), shifts }),
  off: z.strictObject({ kind: z.literal("off"), ...days }),
  works: z.strictObject({ kind: z.literal("works"), ...days }),
  truck: z.strictObject({ kind: z.literal("truck"), person: text, truck: text.exactOptional() }),
  stock: z.strictObject({
    kind: z.literal("stock"),
    truck: text,
    part: text,
    how: z.enum(["add", "count"]),
    amount: z.number(),
  }),
  used: z.strictObject({ kind: z.literal("used"), truck: text, job: text, entry: z.number(), parts: amounts }),
  withdrawn: z.strictObject({ kind: z.literal("withdrawn") }),
} satisfies { readonly [K in CrewChange["kind"]]: z.ZodType<Extract<CrewChange, { kind: K }>> };

type AnyChange = (typeof CHANGES)[keyof typeof CHANGES];
const storedChange = z.discriminatedUnion("kind", Object.values(CHANGES) as [AnyChange, ...AnyChange[]]);

/** Reads back what was said of people, trucks and stock. */
export function parseCrewChange(json: string): Stored<CrewChange> {
  return parseStored(storedChange, json);
}
