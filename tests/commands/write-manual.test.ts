import { expect, test } from "vitest";
import { writeManual } from "../../adapters/commands/write-manual.ts";
import { loadLibrary } from "../../adapters/library/load-library.ts";
import { listedFacts } from "../../src/declaration/run-topic.ts";
import { LANGUAGES } from "../../src/messages/language.ts";
import { fixtureBooks } from "../support/fixture-books.ts";

test.each(LANGUAGES)("the manual in %s names every id that a script may read, with words", async (language) => {
  const library = await loadLibrary();
  const manual = writeManual(library, fixtureBooks.code, { language, units: "us" });
  const ids = [...library.topics.values()].flatMap((topic) => [topic.id, ...listedFacts(topic), ...topic.results]);
  expect(ids.length).toBeGreaterThan(30);
  for (const id of [...ids, ...library.cautions.map((caution) => caution.id)]) expect(manual).toContain(`\`${id}\``);
  for (const { title, examples } of library.texts[language].topics.values())
    for (const words of [title, ...examples]) expect(manual).toContain(words);
  expect(manual).not.toMatch(/undefined|NaN|\[object/);
});

test("ranges are written in the reader's units", async () => {
  const library = await loadLibrary();
  expect(writeManual(library, fixtureBooks.code, { language: "en", units: "us" })).toMatch(/\| `setpoint` \|.* °F/);
  expect(writeManual(library, fixtureBooks.code, { language: "en", units: "si" })).toMatch(/\| `setpoint` \|.* °C/);
});

test("every row of a table has as many cells as its head, whatever the words hold", async () => {
  const manual = writeManual(await loadLibrary(), fixtureBooks.code, { language: "en", units: "us" });
  const cells = (line: string) => line.split(/(?<!\\)\|/).length;
  const lines = manual.split("\n");
  const tables = lines.flatMap((line, index) => (/^\| ---/.test(line) ? [index] : []));
  expect(tables.length).toBeGreaterThan(7);
  for (const start of tables)
    for (let row = start; lines[row]?.startsWith("|"); row += 1)
      expect({ row: lines[row], cells: cells(lines[row] ?? "") }).toEqual({
        row: lines[row],
        cells: cells(lines[start] ?? ""),
      });
});
