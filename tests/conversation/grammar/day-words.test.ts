import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { findDayWords } from "../../../src/conversation/grammar/day-words.ts";
import { parseRequest } from "../../../src/conversation/grammar/parse-request.ts";
import { library } from "../../support/ask-library.ts";
import { fixtureBooks } from "../../support/fixture-books.ts";
import { openJobDesk, sayAll } from "../../support/job-desk.ts";
import { promptOf } from "../../support/talk.ts";

/** A Wednesday and a Friday. */
const WEDNESDAY = "2026-11-25";
const FRIDAY = "2026-11-27";

const cases: readonly (readonly [string, string, string, string?])[] = [
  ["today", WEDNESDAY, "2026-11-25"],
  ["hoy", WEDNESDAY, "2026-11-25"],
  ["Tomorrow", WEDNESDAY, "2026-11-26"],
  ["mañana", WEDNESDAY, "2026-11-26"],
  ["manana", WEDNESDAY, "2026-11-26"],
  ["pasado mañana", WEDNESDAY, "2026-11-27"],
  ["the day after tomorrow", WEDNESDAY, "2026-11-27"],
  ["yesterday", WEDNESDAY, "2026-11-24"],
  ["anteayer", WEDNESDAY, "2026-11-23"],
  ["friday", WEDNESDAY, "2026-11-27"],
  ["Fri", WEDNESDAY, "2026-11-27"],
  ["viernes", WEDNESDAY, "2026-11-27"],
  ["el miércoles", WEDNESDAY, "2026-11-25", "2026-12-02"],
  ["sábado", WEDNESDAY, "2026-11-28"],
  ["friday", FRIDAY, "2026-11-27", "2026-12-04"],
  ["this friday", FRIDAY, "2026-11-27"],
  ["next monday", WEDNESDAY, "2026-11-30"],
  ["next friday", WEDNESDAY, "2026-12-04", "2026-11-27"],
  ["el próximo viernes", WEDNESDAY, "2026-11-27", "2026-12-04"],
  ["el lunes que viene", WEDNESDAY, "2026-11-30"],
  ["last friday", FRIDAY, "2026-11-20"],
  ["el viernes pasado", WEDNESDAY, "2026-11-20"],
];

describe("a day in words", () => {
  test.each(cases)("%s, said on %s, is %s", (typed = "", today = "", day = "", other) => {
    expect(findDayWords(typed, today)).toMatchObject({ day, ...(other !== undefined && { other }) });
    expect(findDayWords(typed, today)?.other).toBe(other);
  });

  test.each(["por la mañana", "esta mañana", "mondays", "sunshine", "fridge", "", "12"])("“%s” is none", (typed) => {
    expect(findDayWords(typed, WEDNESDAY)).toBeUndefined();
  });

  test("a weekday is that weekday by the calendar of the language, from today on and within a week", () => {
    const names = ["sunday", "monday", "tuesday", "wednesday", "thursday", "friday", "saturday"] as const;
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 40_000 }), fc.constantFrom(...names), (days, name) => {
        const day_ms = 86_400_000;
        const today = new Date(days * day_ms).toISOString().slice(0, 10);
        const day_at = Date.parse(`${findDayWords(name, today)?.day}T00:00:00Z`);
        expect(new Date(day_at).getUTCDay()).toBe(names.indexOf(name));
        expect(day_at - days * day_ms).toBeGreaterThanOrEqual(0);
        expect(day_at - days * day_ms).toBeLessThan(7 * day_ms);
      }),
    );
  });
});

describe("in a request", () => {
  const parse = (text: string, today = WEDNESDAY) =>
    parseRequest(text, library, { language: "en", units: "us", ...(today !== "none" && { today }) });
  const asked: readonly (readonly [string, string])[] = [
    ["ready tomorrow", "2026-11-26"],
    ["plan mañana", "2026-11-26"],
    ["ready friday", "2026-11-27"],
    ["ready day=friday", "2026-11-27"],
    ["plan day=next monday", "2026-11-30"],
    ["ready el lunes que viene", "2026-11-30"],
    ["ready today", "2026-11-25"],
    ["digest yesterday", "2026-11-24"],
    ["ready 2026-12-01", "2026-12-01"],
  ];
  test.each(asked)("%s is for %s", (text, day) => {
    const { facts, problems } = parse(text);
    expect(problems).toEqual([]);
    expect(facts["day"]?.value).toBe(day);
  });

  test("“today” alone is the day's first page; in a complaint it opens nothing", () => {
    expect(parse("today").topic).toBe("today");
    expect(parse("hoy").topic).toBe("today");
    expect(parse("no hot water today").topic).toBeUndefined();
    expect(parse("ready today").topic).toBe("ready");
  });

  test("without a today only dates are days", () => {
    expect(parse("ready tomorrow", "none").facts["day"]).toBeUndefined();
  });
});

describe("in a conversation", () => {
  test("a question for a day takes words and says which day was taken", async () => {
    const desk = openJobDesk(fixtureBooks);
    const asked = await sayAll(desk, "job new", "T. M.", "Ostrowick");
    expect(promptOf(asked)).toMatch(/day/i);
    await desk.say("tomorrow");
    const job = await (
      await desk.store.openWorkspace({ door: "slack", organisation: "acme", user: "U1", name: "Ana" })
    ).findJob("1001");
    expect(job?.day).toBe("2026-11-26");
  });

  test("what was taken stands in the answer, with the other day that may have been meant", async () => {
    const desk = openJobDesk(fixtureBooks);
    const card = await desk.say("ready wednesday");
    expect(JSON.stringify(card)).toContain(
      "“wednesday” read as Wednesday, November 25, 2026. If you meant Wednesday, December 2, 2026, write the date.",
    );
  });
});
