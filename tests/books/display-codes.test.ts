import { cp, mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { checkBooks } from "../../adapters/books/check-books.ts";
import { loadBooks } from "../../adapters/books/load-books.ts";
import { loadFaults } from "../../adapters/library/load-faults.ts";
import { findEvidence } from "../../src/books/code-evidence.ts";
import { findDisplayCodes } from "../../src/books/display-codes.ts";

const SEEDS = new URL("../../seeds", import.meta.url).pathname;
const HEAD = "invented: true\ncodes:\n";
const faults = await loadFaults(new URL("../../src", import.meta.url).pathname);
const demo = await loadBooks(SEEDS, undefined, faults);

let folder = "";
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), "oldhand-codes-"));
  await cp(SEEDS, folder, { recursive: true });
});
afterEach(() => rm(folder, { recursive: true }));

async function loadWith(text: string | undefined, ending = "yaml") {
  await rm(join(folder, "display-codes.yaml"));
  if (text !== undefined) await writeFile(join(folder, `display-codes.${ending}`), text);
  return await loadBooks(folder, undefined, faults);
}
async function faultOf(text: string, ending?: string): Promise<string> {
  const error: unknown = await loadWith(text, ending).catch((fault: unknown) => fault);
  return error instanceof Error ? error.message.replaceAll(`${folder}/`, "") : "no fault";
}
const codeLine = (more: string) => `${HEAD}  - { model: hollin-50, code: Q9, meaning: "Something", ${more} }\n`;

describe("the demo book", () => {
  test("is invented, and every code of the catalogue stands in it and brings evidence", () => {
    expect(demo.company.isInvented).toBe(true);
    const missing = demo.catalogue.flatMap(({ id, displayCodes }) =>
      displayCodes.filter(
        ({ code }) => findEvidence(findDisplayCodes(demo, code, id)[0]?.pointsTo ?? [], faults).length === 0,
      ),
    );
    expect(missing).toEqual([]);
  });

  test("a code says what it speaks for, and how strongly", () => {
    const [found] = findDisplayCodes(demo, "c-6", "hollin-50");
    expect(findEvidence(found?.pointsTo ?? [], faults)).toEqual([
      { kind: "symptom", symptom: "compressor_no_start", level: "very_likely" },
      { kind: "cause", cause: "capacitor_or_relay", level: "likely" },
      { kind: "cause", cause: "compressor_failed", level: "possible" },
      { kind: "outcome", check: "heat_pump_current", outcome: "none", level: "likely" },
    ]);
  });
});

describe("a code is looked up", () => {
  test("however it is written", () => {
    for (const typed of ["A1", "a1", "A-1", " a 1 "])
      expect(findDisplayCodes(demo, typed, "hollin-50")).toHaveLength(1);
  });
  test("in one model, or in all that have it", () => {
    expect(findDisplayCodes(demo, "P3").map(({ model }) => model)).toEqual(["tarnley-40", "tarnley-50", "tarnley-66"]);
    expect(findDisplayCodes(demo, "P3", "hollin-50")).toEqual([]);
  });
  test("in the catalogue where the company has no book of codes", async () => {
    const books = await loadWith(undefined);
    expect(books.displayCodes).toEqual([]);
    expect(findDisplayCodes(books, "W1", "sedge-50")).toEqual([
      { model: "sedge-50", code: "W1", meaning: "Water was detected in the pan", pointsTo: [] },
    ]);
  });
});

describe("a company's own book", () => {
  test("may be a table", async () => {
    const text = "model,code,meaning,points_to\nhollin-50,Q9,Odd,tank_sensor very_likely; sensor_resistance.open\n";
    const { displayCodes, company } = await loadWith(text, "csv");
    expect(company.isInvented).toBe(false);
    expect(displayCodes).toEqual([
      {
        model: "hollin-50",
        code: "Q9",
        meaning: "Odd",
        pointsTo: [
          { id: "tank_sensor", level: "very_likely" },
          { id: "sensor_resistance", outcome: "open", level: "likely" },
        ],
      },
    ]);
  });

  test.each([
    [
      "a model that is not in the catalogue",
      codeLine("").replace("hollin-50", "hollin-5"),
      "model: hollin-5 is no model of the catalogue",
    ],
    [
      "a cause nobody knows",
      codeLine("points_to: [gremlin]"),
      "points_to.0: gremlin is no cause and no symptom; an outcome is written check.outcome",
    ],
    ["a check nobody knows", codeLine("points_to: [moon.full]"), "points_to.0: moon is no check"],
    [
      "an outcome nobody knows",
      codeLine("points_to: [dirty_filter, filter_and_coil.wet]"),
      "points_to.1: filter_and_coil has the outcomes clean, matted, coil_dirty, missing",
    ],
    [
      "a level nobody knows",
      codeLine("points_to: [dirty_filter surely]"),
      'points_to.0: "surely": write one of very_likely, likely, possible, unlikely, impossible',
    ],
    [
      "a meaning left out",
      `${HEAD}  - { model: hollin-50, code: Q9 }\n`,
      "meaning: is missing: write words, such as The air filter is blocked",
    ],
  ])("%s is told with its line", async (_, text, said) => {
    expect(await faultOf(text)).toBe(`display-codes.yaml line 3: codes.0.${said}`);
  });

  test("a code that stands there twice, written another way", async () => {
    const text = codeLine("").replace(", }", " }");
    const twice = `${text}${text.slice(HEAD.length).replace("Q9", "q-9")}`;
    expect(await faultOf(twice)).toBe("display-codes.yaml line 4: codes.1.code: q-9 of hollin-50 stands above already");
  });

  test("in a table names line and column", async () => {
    expect(await faultOf("model,code,meaning,points_to\nhollin-50,Q9,Odd,gremlin\n", "csv")).toBe(
      "display-codes.csv line 2, column points_to.0: gremlin is no cause and no symptom; an outcome is written check.outcome",
    );
  });

  test("is no book that must be there", async () => {
    await rm(join(folder, "display-codes.yaml"));
    const says = (await checkBooks(folder, [])).map((check) => check.says).join("\n");
    expect(says).not.toContain("display-codes");
    expect(says).toContain("people.yaml: good");
  });
});
