import { cp, mkdtemp, readdir, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, test } from "vitest";
import { parse } from "yaml";
import { loadFaults } from "../../adapters/library/load-faults.ts";
import { readPlainYaml } from "../../adapters/library/read-plain-yaml.ts";
import { HAZARDS, LEVELS } from "../../src/faults/knowledge.ts";
import { hazards as en } from "../../src/messages/en/hazards.ts";
import { hazards as es } from "../../src/messages/es/hazards.ts";

const SOURCES = new URL("../../src", import.meta.url).pathname;
const knowledge = await loadFaults(SOURCES);
const { symptoms, causes, checks, groups } = knowledge;

const copies: string[] = [];
afterAll(() => Promise.all(copies.map((copy) => rm(copy, { recursive: true }))));

/** What the loader says after one file of the knowledge was changed; nothing left of it takes it away. */
async function faultsAfter(file: string, change: (text: string) => string | undefined): Promise<readonly string[]> {
  const root = await mkdtemp(join(tmpdir(), "oldhand-faults-"));
  copies.push(root);
  await cp(join(SOURCES, "faults/knowledge"), join(root, "faults/knowledge"), { recursive: true });
  const path = join(root, "faults/knowledge", file);
  const text = change(await readFile(path, "utf8").catch(() => ""));
  await (text === undefined ? rm(path) : writeFile(path, text));
  const error: unknown = await loadFaults(root).catch((fault: unknown) => fault);
  return error instanceof Error ? error.message.replaceAll("src/faults/knowledge/", "").split("\n") : [];
}

describe("the knowledge that ships", () => {
  test("holds together", () => {
    expect([symptoms.length, causes.length, checks.length]).toEqual([40, 74, 65]);
    expect(groups.length).toBeGreaterThan(5);
  });

  test("no id stands for two things: a display code names causes and symptoms alike", () => {
    const ids = [...symptoms, ...causes].map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
  });

  test("every likelihood and weight says that it is judgement", () => {
    const said = [
      ...causes.flatMap(({ basis, likelihoods }) => [basis, likelihoods]),
      ...checks.map((one) => one.likelihoods),
    ];
    expect(new Set(said)).toEqual(new Set(["judgement"]));
  });

  test("rows name every outcome, so that nothing is taken from the usual row by accident", () => {
    for (const { outcomes, usual, byCause } of checks)
      for (const row of [usual, ...Object.values(byCause)])
        expect(Object.keys(row).toSorted()).toEqual(outcomes.map(({ id }) => id).toSorted());
  });

  test("danger to life stops everything first, in both languages", () => {
    const stops = symptoms.filter(({ urgency }) => urgency === "stop");
    expect(stops.map(({ id }) => id)).toEqual(["burning_smell", "co_alarm", "electric_tingle"]);
    for (const { words } of stops)
      expect([words.en.stop, words.es.stop].every((line) => line !== undefined)).toBe(true);
  });

  test("Spanish is written, not copied: sentences differ, and nobody is called usted", () => {
    const pairs = [
      ...symptoms.flatMap(({ words: { en: a, es: b } }) => [[a.ask, b.ask] as const, [a.label, b.label] as const]),
      ...causes.flatMap(({ words: { en: a, es: b } }) => [[a.why, b.why] as const, [a.tell, b.tell] as const]),
      ...checks.flatMap(({ words: { en: a, es: b } }) => [[a.how, b.how] as const, [a.label, b.label] as const]),
    ];
    expect(pairs.filter(([a, b]) => a === b)).toEqual([]);
    expect(pairs.filter(([, b]) => /\busted(es)?\b/i.test(b))).toEqual([]);
  });

  test("sealed refrigerant work is for certified people alone", () => {
    const opened = causes.filter(({ id }) => ["low_charge", "metering_restricted"].includes(id));
    expect(opened.map(({ repairBy, hazards }) => [repairBy, hazards.includes("refrigerant")])).toEqual([
      [["refrigerant"], true],
      [["refrigerant"], true],
    ]);
  });

  test("measuring inside the unit is preceded by locking out, or by the rules for live work", () => {
    const inside = checks.filter(({ tools }) => tools.includes("multimeter") || tools.includes("insulation_tester"));
    expect(inside.length).toBeGreaterThan(8);
    expect(inside.filter(({ hazards }) => !hazards.includes("lockout") && !hazards.includes("live"))).toEqual([]);
  });
});

describe("precautions", () => {
  test("lockout is done in the order that proves the tester before and after", () => {
    // Source of the order: OSHA 29 CFR 1910.333(b)(2)(iv)(B), from memory.
    for (const [tester, dead] of [
      [/tester/, /dead/],
      [/probador/, /muerto/],
    ] as const) {
      const steps = (tester.source === "tester" ? en : es).lockout.steps;
      const proofs = steps.flatMap((step, place) => (tester.test(step) ? [place] : []));
      const isDead = steps.findIndex((step) => dead.test(step));
      expect(proofs).toEqual([isDead - 1, isDead + 1]);
    }
  });
  test.each(HAZARDS)("%s has as many lines in Spanish as in English", (hazard) => {
    expect(es[hazard].steps.length).toBe(en[hazard].steps.length);
  });
});

describe("files are read", () => {
  test("quickly, and just as the whole of YAML would read them", async () => {
    const folder = join(SOURCES, "faults/knowledge");
    const files = (await readdir(folder, { recursive: true })).filter((file) => file.endsWith(".yaml"));
    expect(files.length).toBe(180);
    for (const file of files) {
      const text = await readFile(join(folder, file), "utf8");
      expect(readPlainYaml(text), file).toEqual(parse(text));
    }
  });

  test.each([
    ["a remark behind a value", "a: words # remark"],
    ["text that YAML takes for a truth value", "a: yes"],
    ["a block of text", "a: |\n  words"],
    ["an anchor", "a: &x words"],
    ["a key twice", "a: one\na: two"],
    ["a colon in plain words", "a: one: two"],
    ["an empty value", "a:\nb: one"],
    ["indentation that does not fit", "a:\n  b: one\n    c: two"],
    ["an open quote", 'a: "one'],
    ["a list in a list", "a: [[one], two]"],
  ])("%s is left to the whole of YAML", (_, text) => {
    expect(readPlainYaml(text)).toBeUndefined();
  });

  test("a file that is not plain is read all the same", async () => {
    expect(
      await faultsAfter("causes/supply_off.yaml", (text) => `${text}# end\n`.replace("mid: 4", "mid: 4.0e0")),
    ).toEqual([]);
  });

  test("no folder, no knowledge", async () => {
    expect(await loadFaults(join(SOURCES, "units"))).toEqual({ symptoms: [], causes: [], checks: [], groups: [] });
  });
});

describe("a fault names file, line and reason", () => {
  test.each([
    [
      "a level nobody knows",
      "causes/supply_off.yaml",
      (text: string) => text.replace("no_hot_water: very_likely", "no_hot_water: surely"),
      `causes/supply_off.yaml line 7: symptoms.no_hot_water: write one of ${Object.keys(LEVELS).join(", ")}`,
    ],
    [
      "a symptom nobody knows",
      "causes/supply_off.yaml",
      (text: string) => text.replace("no_hot_water:", "no_water:"),
      "causes/supply_off.yaml line 7: symptoms.no_water: there is no such symptom",
    ],
    [
      "Spanish left out",
      "symptoms/puddle.yaml",
      (text: string) => text.slice(0, text.indexOf("\nes:") + 1),
      "symptoms/puddle.yaml line 1: es: is not a list of names and values",
    ],
    [
      "a misspelt field",
      "checks/air_split.yaml",
      (text: string) => text.replace("minutes:", "minuts:"),
      "checks/air_split.yaml line 4: minuts: is not known here; check the spelling",
    ],
    [
      "a gap in a reading",
      "checks/air_split.yaml",
      (text: string) => text.replace("{ from: 0.55, to: 1.5 }", "{ from: 0.6, to: 1.5 }"),
      "checks/air_split.yaml line 23: outcomes.2: leaves a gap from 0.55 to 0.6",
    ],
    [
      "no YAML at all",
      "checks/air_split.yaml",
      () => 'minutes: "5\n',
      'checks/air_split.yaml line 2: Missing closing "quote',
    ],
    [
      "a group with a check that is not there",
      "groups.yaml",
      (text: string) => `${text}- [air_split, moon_phase]\n`,
      "groups.yaml line 11: 9.1: moon_phase is no check of its own here",
    ],
    ["a missing list of groups", "groups.yaml", () => undefined, "groups.yaml: is missing"],
  ])("%s", async (_, file, change, line) => {
    expect(await faultsAfter(file, change)).toContain(line);
  });

  test("a file whose name is no id", async () => {
    expect(await faultsAfter("symptoms/Big-Puddle.yaml", () => "urgency: low\n")).toEqual([
      "symptoms/Big-Puddle.yaml: its name is its id: small letters, digits and underscores",
    ]);
  });
});
