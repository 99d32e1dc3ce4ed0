import { z } from "zod";
import type { BookPerson, Books, Company } from "../books/books.ts";
import { WEEKDAYS } from "../crew/crew.ts";
import type { DigestSchedule } from "../jobs/digest/due.ts";
import { LANGUAGES } from "../messages/language.ts";
import { type Channel, MANAGER_CHANNEL } from "../ports/outbox.ts";
import { DOORS, ROLES } from "../ports/store.ts";
import { type BookRead, file, oneOf, read, say, words } from "./book-schema.ts";

const MINUTES_AN_HOUR = 60;
const invented = z.boolean({ error: say("write true when everything in this file is invented, else false") });
const language = oneOf(LANGUAGES);
const units = oneOf(["us", "si"]);
const platformUser = words("the platform's own id of the person").exactOptional();
const clockTime = z
  .string({ error: say('write a time of day in quotes, such as "06:30"') })
  .regex(/^([01]\d|2[0-3]):[0-5]\d$/, 'write a time of day from "00:00" to "23:59", such as "06:30"')
  .transform((written) => {
    const [hours = 0, minutes = 0] = written.split(":").map(Number);
    return hours * MINUTES_AN_HOUR + minutes;
  });
const channel = z.strictObject({ door: oneOf(DOORS), id: words("the platform's own id of the channel") });
const digestSchedule = file({
  daily: clockTime.exactOptional(),
  weekly: file({ day: oneOf(WEEKDAYS), at: clockTime }).exactOptional(),
  channel: channel.exactOptional(),
}).refine(
  ({ daily, weekly }) => daily !== undefined || weekly !== undefined,
  'write daily: "06:30", or weekly: { day: monday, at: "06:30" }, or leave digest out',
);
const companyFile = file({
  invented,
  name: words("Ostrowick Pipe & Heat"),
  town: words("Ostrowick"),
  time_zone: z
    .string({ error: say("write an IANA time zone, such as America/Chicago") })
    .refine(isTimeZone, "is no IANA time zone; write one such as America/Chicago"),
  language,
  units,
  team_channel: channel.exactOptional(),
  digest: digestSchedule.exactOptional(),
  keep_photo_place: z.boolean({ error: say("write true or false") }).exactOptional(),
});

/** One person as they stand in people.yaml, or in one line of people.csv. */
export const personEntry = file({
  id: z
    .string({ error: say("write a short name to sign in with, such as marisol") })
    .regex(/^[a-z][a-z0-9-]{0,39}$/, "use small letters, digits and hyphens, starting with a letter"),
  name: words("Marisol Vantreaux"),
  role: oneOf(ROLES),
  language,
  units,
  slack: platformUser,
  teams: platformUser,
});

const peopleFile = file({
  invented,
  people: z
    .array(personEntry, { error: say("write a list of people, each starting with a dash") })
    .min(1, "name at least one person")
    .superRefine((people, context) => {
      for (const field of ["id", "slack", "teams"] as const) refuseTwice(people, field, context);
    }),
});

/** Reads what stands in company.yaml. */
export function readCompany(contents: unknown): BookRead<Company> {
  return read(
    companyFile,
    contents,
    ({ invented, time_zone: timeZone, keep_photo_place, team_channel, digest, ...rest }) => ({
      ...rest,
      isInvented: invented,
      timeZone,
      ...(keep_photo_place !== undefined && { keepsPhotoPlace: keep_photo_place }),
      ...(team_channel !== undefined && { teamChannel: clean(team_channel) }),
      ...(digest !== undefined && { digest: shapeSchedule(digest) }),
    }),
  );
}

function shapeSchedule({
  daily,
  weekly,
  channel: to = MANAGER_CHANNEL,
}: z.infer<typeof digestSchedule>): DigestSchedule {
  return {
    channel: clean(to),
    ...(daily !== undefined && { daily_min: daily }),
    ...(weekly !== undefined && { weekly: { day: weekly.day, at_min: weekly.at } }),
  };
}

function clean({ door, id }: Channel): Channel {
  return { door, id: withoutUnseen(id) };
}

/** A chat puts places where a phone may break into long ids, and who copies one copies them too. */
function withoutUnseen(id: string): string {
  return id.replace(/[\u00AD\u200B-\u200D\u2060\uFEFF]/g, "");
}

/** Reads what stands in people.yaml. */
export function readPeople(contents: unknown): BookRead<{ isInvented: boolean; people: Books["people"] }> {
  return read(peopleFile, contents, ({ invented: isInvented, people }) => ({
    isInvented,
    people: people.map(shapePerson),
  }));
}

function shapePerson({ slack, teams, ...rest }: Person): BookPerson {
  return {
    ...rest,
    ...(slack !== undefined && { slackUser: slack }),
    ...(teams !== undefined && { teamsUser: teams }),
  };
}

type Person = z.infer<typeof peopleFile>["people"][number];

function refuseTwice(people: readonly Person[], field: "id" | "slack" | "teams", context: z.RefinementCtx): void {
  const seen = new Set<string>();
  for (const [index, person] of people.entries()) {
    const value = person[field];
    if (value === undefined) continue;
    if (seen.has(value))
      context.addIssue({ code: "custom", path: [index, field], message: `${value} is taken by somebody above` });
    seen.add(value);
  }
}

function isTimeZone(name: string): boolean {
  try {
    new Intl.DateTimeFormat("en", { timeZone: name });
    return true;
  } catch {
    return false;
  }
}
