import { z } from "zod";
import { CREDENTIAL_KINDS, isCredentialKind } from "../crew/credential-kinds-table.ts";
import {
  type Credential,
  type CrewMember,
  type DaysOff,
  LAPSE_RULES,
  type Shift,
  type Tool,
  type Training,
  WEEKDAYS,
} from "../crew/crew.ts";
import { daysBetween } from "../crew/days.ts";
import { type BookRead, file, oneOf, read, say, words } from "./book-schema.ts";
import { bookDay, type KnownIds, listOf, nameKnown, refuseUnknown, shortName } from "./crew-fields.ts";

const KINDS = Object.keys(CREDENTIAL_KINDS).filter(isCredentialKind);
const [firstKind = "driver", ...otherKinds] = KINDS;
const DAY_min = 1440;
const SHIFT = /^(\d{1,2}):([0-5]\d) ?(?:-|to) ?(\d{1,2}):([0-5]\d)$/;

const shift = z
  .string({ error: say("write hours by the clock, such as 07:00-15:30") })
  .transform((text, context): Shift => {
    const [, fromHour, fromMinute, toHour, toMinute] = SHIFT.exec(text.trim()) ?? [];
    const from_min = Number(fromHour) * 60 + Number(fromMinute);
    const to_min = Number(toHour) * 60 + Number(toMinute);
    if (from_min < DAY_min && to_min <= DAY_min && from_min !== to_min)
      // A shift that ends before it begins ends on the next day.
      return { from_min, to_min: to_min > from_min ? to_min : to_min + DAY_min };
    context.addIssue({ code: "custom", message: `"${text}": write hours by the clock, such as 07:00-15:30` });
    return z.NEVER;
  });

const credential = file({
  kind: oneOf([firstKind, ...otherKinds]),
  number: words("OW-10277"),
  issuer: words("Ostrowick Board of Plumbing"),
  expires: bookDay.exactOptional(),
  lapse: oneOf(LAPSE_RULES).exactOptional(),
  grace_days: z
    .number({ error: "write whole days, such as 30" })
    .int("write whole days")
    .min(1)
    .max(365)
    .exactOptional(),
  checked: bookDay.exactOptional(),
}).superRefine(({ lapse, grace_days }, context) => {
  if ((lapse === "grace") === (grace_days !== undefined)) return;
  const message = "lapse: grace and grace_days stand together; write both or neither";
  context.addIssue({ code: "custom", path: [lapse === "grace" ? "lapse" : "grace_days"], message });
});
const training = file({ subject: words("Lifting"), done: bookDay, until: bookDay.exactOptional() });
const tool = file({ tool: shortName("clamp_meter"), id: words("CM-3"), calibrated_until: bookDay.exactOptional() });
const daysOff = file({ from: bookDay, to: bookDay }).refine(({ from, to }) => daysBetween(from, to) >= 0, {
  message: "ends before it begins",
  path: ["to"],
});
const hours = z.partialRecord(oneOf(WEEKDAYS), listOf(shift, "hours, such as [07:00-15:30]"), {
  error: say("write the weekdays with their hours, such as monday: [07:00-15:30]"),
});

const memberEntry = file({
  person: shortName("ebbe"),
  truck: shortName("truck-1").exactOptional(),
  credentials: listOf(credential, "credentials, each starting with a dash").default([]),
  training: listOf(training, "trainings, each starting with a dash").default([]),
  tools: listOf(tool, "tools, each starting with a dash").default([]),
  hours,
  days_off: listOf(daysOff, "days off, each starting with a dash").default([]),
});
type Entry = z.infer<typeof memberEntry>;

const crewFile = (known: KnownIds) =>
  file({
    invented: z.boolean({ error: say("write true when everything in this file is invented, else false") }),
    crew: listOf(memberEntry, "people, each starting with a dash").superRefine((members, context) => {
      const seen = new Set<string>();
      for (const [row, { person, truck, tools }] of members.entries()) {
        if (seen.has(person))
          context.addIssue({ code: "custom", path: [row, "person"], message: `${person} stands above already` });
        seen.add(person);
        nameKnown(known.people, person, [row, "person"], "people.yaml", context);
        if (truck !== undefined) nameKnown(known.trucks, truck, [row, "truck"], "trucks.yaml", context);
        const ids = tools.map((one) => one.tool);
        refuseUnknown(known.tools, ids, (place) => [row, "tools", place, "tool"], "parts.yaml as a tool", context);
      }
    }),
  });

/**
 * Reads what stands in crew.yaml.
 * @param known ids of the other books, which this one must keep to; what is left out is not looked at
 */
export function readCrew(
  contents: unknown,
  known: KnownIds = {},
): BookRead<{ isInvented: boolean; members: readonly CrewMember[] }> {
  return read(crewFile(known), contents, ({ invented, crew }) => ({
    isInvented: invented,
    members: crew.map(shapeMember),
  }));
}

function shapeMember({ tools, days_off, credentials, training: taught, ...rest }: Entry): CrewMember {
  const shapedTools = tools.map(
    ({ calibrated_until, ...one }): Tool => ({
      ...one,
      ...(calibrated_until !== undefined && { calibratedUntil: calibrated_until }),
    }),
  );
  return {
    ...rest,
    credentials: credentials satisfies readonly Credential[],
    training: taught satisfies readonly Training[],
    tools: shapedTools,
    daysOff: days_off satisfies readonly DaysOff[],
  };
}
