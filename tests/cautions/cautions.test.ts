import { readdirSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { loadLibrary } from "../../adapters/library/load-library.ts";
import { readCaution, readCautionTexts } from "../../src/boundary/library-files.ts";
import type { AnyCaution } from "../../src/cautions/caution.ts";
import type { Code } from "../../src/cautions/code.ts";
import { LANGUAGES } from "../../src/messages/language.ts";
import { longestSentence } from "../support/count-words.ts";
import { fixtureBooks } from "../support/fixture-books.ts";

const SOURCES = new URL("../../src/", import.meta.url).pathname;
/** No sentence may sound as if Oldhand passed the job. */
const VERDICT_ON_CODE = /complian|comply|complies|approved by code|cumple|conforme al código|aprobado por/i;
const LONGEST_SENTENCE = 25;
const { code: CODE } = fixtureBooks;

const FILES = readdirSync(`${SOURCES}cautions`, { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .flatMap(({ name: area }) => readdirSync(`${SOURCES}cautions/${area}`).map((file) => ({ area, file })));

const CAUTIONS = await Promise.all(
  FILES.map(async ({ area, file }) => {
    const name = file.replace(/\.ts$/, "");
    const exported: { readonly caution?: unknown } = await import(`${SOURCES}cautions/${area}/${file}`);
    const read = readCaution(exported.caution);
    if (!read.ok) throw new Error(`${file}: ${read.reason}`);
    const texts = await Promise.all(
      LANGUAGES.map(async (language) => {
        const module: { readonly texts?: unknown } = await import(`${SOURCES}messages/${language}/cautions/${file}`);
        const words = readCautionTexts(module.texts);
        if (!words.ok) throw new Error(`${language}/${file}: ${words.reason}`);
        return { language, ask: words.value.ask as (data: object) => string, show: words.value.show };
      }),
    );
    return { name, caution: read.value, texts };
  }),
);

/** Values that stand more than once in a list. */
function duplicates(values: readonly string[]): readonly string[] {
  return values.filter((value, index) => values.indexOf(value) !== index);
}

/** The code of the books, or the same numbers where another family of plumbing code is adopted. */
function under(family: string | undefined): Code {
  if (family === undefined) return CODE;
  return { ...CODE, adopted: { ...CODE.adopted, plumbing: { ...CODE.adopted.plumbing, family } } };
}

/** Plain words in place of the data of a caution. */
function blanks(caution: AnyCaution): Readonly<Record<string, string>> {
  return Object.fromEntries(Object.keys(caution.data).map((field) => [field, "1"]));
}

test("there are at least 64 cautions, none of them twice", () => {
  expect(CAUTIONS.length).toBeGreaterThanOrEqual(64);
  expect(duplicates(CAUTIONS.map(({ caution }) => caution.id))).toEqual([]);
  expect(duplicates(CAUTIONS.map(({ name }) => name))).toEqual([]);
});

test("the library holds them sorted by id", async () => {
  const ids = (await loadLibrary()).cautions.map(({ id }) => id);
  expect(ids).toHaveLength(CAUTIONS.length);
  expect(ids).toEqual([...ids].sort());
});

test("a second caution of the same id would be found", () => {
  const [first] = CAUTIONS;
  expect(duplicates([...CAUTIONS, ...(first ? [first] : [])].map(({ caution }) => caution.id))).toEqual([
    first?.caution.id,
  ]);
});

describe.each(CAUTIONS)("$name", ({ name, caution, texts }) => {
  test("has its file's name as its id", () => {
    expect(caution.id).toBe(name.replaceAll("-", "_"));
    expect(caution.id).toMatch(/^[a-z][a-z_]*$/);
  });

  test("cites a document, with the day somebody looked", () => {
    expect(caution.cites.length).toBeGreaterThanOrEqual(1);
    for (const { document, basis, checkedOn } of caution.cites) {
      expect(document.length).toBeGreaterThan(2);
      expect(["published", "from_memory", "computed", "common_practice"]).toContain(basis);
      expect(checkedOn).toMatch(/^20\d\d-\d\d-\d\d$/);
    }
  });

  test("gives no example twice", () => {
    const examples = [...caution.examples.fires, ...caution.examples.silent];
    expect(duplicates(examples.map((example) => example.name))).toEqual([]);
    expect(duplicates(examples.map(({ site, plumbing }) => JSON.stringify({ plumbing, site })))).toEqual([]);
  });

  test.each(caution.examples.fires)("fires: $name", ({ site, plumbing }) => {
    const data = caution.check(site, under(plumbing));
    expect(Object.keys(data ?? { missing: true })).toEqual(Object.keys(caution.data));
    for (const [field, datum] of Object.entries(data ?? {})) {
      if (typeof datum === "string") continue;
      expect(datum.kind).toBe(caution.data[field]);
      expect(Number.isFinite(datum.value)).toBe(true);
    }
  });

  test.each(caution.examples.silent)("silent: $name", ({ site, plumbing }) =>
    expect(caution.check(site, under(plumbing))).toBeUndefined(),
  );

  test("silent: nothing is known", () => expect(caution.check({}, CODE)).toBeUndefined());

  test.each(texts)(
    "speaks $language in short sentences, with every number it has, and leaves the code to others",
    ({ ask, show }) => {
      const text = ask(blanks(caution));
      for (const sentence of [text, show]) {
        expect(longestSentence(sentence)).toBeLessThanOrEqual(LONGEST_SENTENCE);
        expect(sentence).not.toMatch(VERDICT_ON_CODE);
        expect(sentence).not.toContain("undefined");
      }
      for (const field of Object.keys(caution.data))
        expect(ask({ ...blanks(caution), [field]: `<${field}>` })).toContain(`<${field}>`);
    },
  );

  test("says different things in English and Spanish", () => {
    const [en, es] = texts.map(({ ask }) => ask(blanks(caution)));
    expect(en).not.toBe(es);
  });
});
