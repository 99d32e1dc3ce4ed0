import { cp, mkdir, mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { loadLibrary } from "../../adapters/library/load-library.ts";
import { addFixtureTopic, copySources, emptyLibrary } from "../support/library-tree.ts";

const ROOT = new URL("../..", import.meta.url).pathname;
const EN = "src/messages/en/topics/bucket.ts";
const ES = "src/messages/es/topics/bucket.ts";
const TOPIC = "src/topics/bucket.ts";
const CAUTION = "src/cautions/yard/wet-floor.ts";

const CAUTION_TEXT = `export const caution = {
  id: "wet_floor",
  severity: "note",
  cites: [{ basis: "invented", document: "Test bench notes", checkedOn: "2026-01-01" }],
  decides: "household",
  data: {},
  check: () => undefined,
  examples: { fires: [{ name: "wet", site: {} }], silent: [{ name: "dry", site: {} }] },
};\n`;
const CAUTION_SENTENCES = `export const texts = { ask: () => "Mop it.", show: "Look at it." };\n`;

/** A copy of the sources that holds one topic and one caution. */
let sound = "";
const copies: string[] = [];
beforeAll(async () => {
  sound = await copySources(["src/declaration", "src/cautions", "src/units"]);
  await emptyLibrary(sound);
  await addFixtureTopic(sound);
  await write(sound, CAUTION, CAUTION_TEXT);
  for (const language of ["en", "es"])
    await write(sound, `src/messages/${language}/cautions/wet-floor.ts`, CAUTION_SENTENCES);
});
afterAll(() => Promise.all([sound, ...copies].map((copy) => rm(copy, { recursive: true }))));

async function write(copy: string, file: string, text: string): Promise<void> {
  await mkdir(dirname(join(copy, file)), { recursive: true });
  await writeFile(join(copy, file), text);
}

/** What the loader says about a copy in which one file was changed: `undefined` takes it away. */
async function faultsAfter(file: string, change: (text: string) => string | undefined): Promise<readonly string[]> {
  const copy = await mkdtemp(join(tmpdir(), "oldhand-faulty-"));
  copies.push(copy);
  await cp(sound, copy, { recursive: true });
  const text = change(await readFile(join(copy, file), "utf8").catch(() => ""));
  if (text === undefined) await rm(join(copy, file));
  else await write(copy, file, text);
  const error: unknown = await loadLibrary(join(copy, "src")).catch((fault: unknown) => fault);
  return error instanceof Error ? error.message.split("\n") : [];
}
const swap = (from: string, to: string) => (text: string) => text.replace(from, to);

test("a sound folder is loaded, topics by name, cautions from their areas, sentences by id", async () => {
  const library = await loadLibrary(join(sound, "src"));
  expect([...library.topics.keys()]).toEqual(["bucket"]);
  expect(library.cautions.map(({ id }) => id)).toEqual(["wet_floor"]);
  for (const language of ["en", "es"] as const) {
    expect([...library.texts[language].topics.keys()]).toEqual(["bucket"]);
    expect([...library.texts[language].cautions.keys()]).toEqual(["wet_floor"]);
  }
});

test("what is loaded is frozen, down to the ranges of a fact", async () => {
  const library = await loadLibrary(join(sound, "src"));
  const topic = library.topics.get("bucket");
  expect([library, topic, topic?.facts, topic?.facts["size"], library.texts.en].every(Object.isFrozen)).toBe(true);
  const map = library.topics as Map<string, unknown>;
  expect(() => map.set("other", topic)).toThrow("this map is frozen");
  expect(() => map.delete("bucket")).toThrow("this map is frozen");
  expect(() => map.clear()).toThrow("this map is frozen");
});

test("the topics and cautions of this repository are sound", async () => {
  const library = await loadLibrary(join(ROOT, "src"));
  expect(library.topics.size).toBeGreaterThan(3);
  expect(library.cautions.length).toBeGreaterThan(10);
});

const FAULTS: readonly {
  readonly name: string;
  readonly file: string;
  readonly change: (text: string) => string | undefined;
  readonly says: readonly string[];
}[] = [
  {
    name: "an id that is not the file's name",
    file: TOPIC,
    change: swap('id: "bucket"', 'id: "pail"'),
    says: [`${TOPIC}: its id is "pail", but the file is called bucket`],
  },
  {
    name: "an export under another name",
    file: TOPIC,
    change: swap("export const bucket", "export const pail"),
    says: [`${TOPIC}: does not export "bucket"`],
  },
  {
    name: "a topic without Spanish",
    file: ES,
    change: () => undefined,
    says: [`${ES}: is missing; bucket needs its sentences there`],
  },
  {
    name: "sentences without a topic",
    file: "src/messages/en/topics/ladle.ts",
    change: () => 'export { texts } from "./bucket.ts";\n',
    says: ["src/messages/en/topics/ladle.ts: there is no topic ladle"],
  },
  {
    name: "a fact without words",
    file: ES,
    change: (text) => text.replace(/ flow: \{.*\},\n/, "\n"),
    says: [`${ES}: the words for fact "flow" are missing`],
  },
  {
    name: "words for a result that is not declared",
    file: EN,
    change: swap("fill_time:", 'spill: "Spilt", fill_time:'),
    says: [`${EN}: there are words for result "spill", not declared`],
  },
  {
    name: "a finding under another code",
    file: EN,
    change: swap("fills:", "filled:"),
    says: [
      `${EN}: the words for finding "fills" are missing`,
      `${EN}: there are words for finding "filled", not declared`,
    ],
  },
  {
    name: "an option without words",
    file: ES,
    change: swap(', grey: { label: "Gris", words: ["gris"] }', ""),
    says: [`${ES}: the words for option of fact colour "grey" are missing`],
  },
  {
    name: "a table without words",
    file: TOPIC,
    change: swap('results: ["fill_time"],', 'results: ["fill_time"], tables: { steps: ["step"] },'),
    says: [EN, ES].flatMap((file) => [
      `${file}: the words for table "steps" are missing`,
      `${file}: the words for column of table steps "step" are missing`,
    ]),
  },
  {
    name: "a word in capitals",
    file: EN,
    change: swap('"bucketful"', '"Bucketful"'),
    says: [`${EN}: fact size: "Bucketful" is not in small letters`],
  },
  {
    name: "an id in camel case",
    file: TOPIC,
    change: (text) => text.replaceAll("fill_time", "fillTime"),
    says: [
      `${TOPIC}: result fillTime is not written in small letters, digits and underscores`,
      ...[EN, ES].flatMap((file) => [
        `${file}: the words for result "fillTime" are missing`,
        `${file}: there are words for result "fill_time", not declared`,
      ]),
    ],
  },
  {
    name: "a range upside down",
    file: TOPIC,
    change: swap("min: 1, max: 100", "min: 100, max: 1"),
    says: [`${TOPIC}: fact size has a range from 100 to 1`],
  },
  {
    name: "a usual value outside the range",
    file: TOPIC,
    change: swap("max: 100", "max: 100, usual: [5, 101]"),
    says: [`${TOPIC}: fact size offers 101, outside its own range`],
  },
  {
    name: "a file that does not compile",
    file: TOPIC,
    change: () => "export const = ;\n",
    says: [expect.stringMatching(/^src\/topics\/bucket\.ts: cannot be loaded: /) as unknown as string],
  },
  {
    name: "a topic without compute",
    file: TOPIC,
    change: swap("compute:", "calculate:"),
    says: [`${TOPIC}: compute: no function`],
  },
  {
    name: "a caution under another id",
    file: CAUTION,
    change: swap('id: "wet_floor"', 'id: "wet_roof"'),
    says: [`${CAUTION}: its id is "wet_roof", but the file is called wet-floor`],
  },
  {
    name: "a caution without a source",
    file: CAUTION,
    change: (text) => text.replace(/cites: \[.*\],/, "cites: [],"),
    says: [expect.stringMatching(/^src\/cautions\/yard\/wet-floor\.ts: cites: /) as unknown as string],
  },
  {
    name: "one caution in two areas",
    file: "src/cautions/roof/wet-floor.ts",
    change: () => CAUTION_TEXT,
    says: ["src/cautions/yard/wet-floor.ts: there is a caution wet-floor in another area"],
  },
  {
    name: "a caution without English",
    file: "src/messages/en/cautions/wet-floor.ts",
    change: () => undefined,
    says: ["src/messages/en/cautions/wet-floor.ts: is missing; wet-floor needs its sentences there"],
  },
];

test.each(FAULTS)("refuses $name in lines that name the file", async ({ file, change, says }) => {
  const faults = await faultsAfter(file, change);
  expect(faults.toSorted()).toEqual([...says].toSorted());
});
