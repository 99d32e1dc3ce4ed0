import { describe, expect, test } from "vitest";
import { kit } from "../../src/topics/kit.ts";
import { toBase } from "../../src/units/convert.ts";
import { answerWithSeeds, refusalWithSeeds } from "../support/ask-with-seeds.ts";

const rowsOf = (facts: Parameters<typeof answerWithSeeds>[1]) => answerWithSeeds(kit, facts).tables?.[0]?.rows ?? [];
const parts = (facts: Parameters<typeof answerWithSeeds>[1]) =>
  rowsOf(facts).map(([part]) => (typeof part === "object" && "data" in part ? part.data["en"] : part));

describe("from what a survey tells", () => {
  test("gas that is replaced brings cap and leak solution, and the gas comes first", () => {
    expect(parts({ replaces: "gas" })).toEqual(expect.arrayContaining(["Gas cap", "Leak solution", "Flue cap"]));
    expect(answerWithSeeds(kit, { replaces: "gas" }).findings[0]).toEqual({ code: "gas_first", data: {} });
    expect(parts({ replaces: "electric" })).not.toContain("Gas cap");
  });

  test("a split unit outdoors needs no condensate line, and where it freezes a stand", () => {
    const split = parts({ model: "fenmoor-80", freezes: true });
    expect(split).not.toContain("Condensate pipe, 3/4 in");
    expect(split).toContain("Stand above the snow");
  });

  test("without a truck nothing is said to be on one", () => {
    const answer = answerWithSeeds(kit, { closed: true });
    expect(answer).toMatchObject({ verdict: "info", headline: { code: "kit_listed" } });
    expect(answer.results.map(({ id }) => id)).toEqual(["part_kinds"]);
    expect(answer.findings.map(({ code }) => code)).toContain("no_truck");
  });
});

describe("for a job of the record", () => {
  test("1006 is closed at 92 psi: it brings regulator and expansion tank, against the truck of who is named", () => {
    expect(parts({ job: "1006" })).toEqual(expect.arrayContaining(["Pressure regulator", "Expansion tank, 4.4 gal"]));
    const row = rowsOf({ job: "1006", person: "ebbe" }).find(([, , , , why]) =>
      JSON.stringify(why).includes("shut_off"),
    );
    expect(row?.slice(1, 4)).toEqual([
      { kind: "count", value: 1 },
      { kind: "count", value: 1 },
      { kind: "count", value: 0 },
    ]);
  });

  test("what is told now counts more than what the job knows", () => {
    expect(parts({ job: "1006", line_pressure: toBase(60, "psi") })).not.toContain("Pressure regulator");
  });
});

test.each([
  ["model", "hollin-81"],
  ["job", "9999"],
  ["person", "ebba"],
])("an unknown %s is refused with near names", (fact, typed) => {
  expect(refusalWithSeeds(kit, { [fact]: typed })).toMatchObject({ fact, reason: { code: `unknown_${fact}` } });
});
