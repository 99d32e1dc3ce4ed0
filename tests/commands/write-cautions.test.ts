import { expect, test } from "vitest";
import { loadBooks } from "../../adapters/books/load-books.ts";
import { writeCautionsPage } from "../../adapters/commands/write-cautions.ts";
import { loadLibrary } from "../../adapters/library/load-library.ts";
import { citeSource } from "../../src/declaration/source.ts";
import { LANGUAGES } from "../../src/messages/language.ts";
import { COMMON } from "../../src/messages/voice.ts";

const library = await loadLibrary();
const { code } = await loadBooks(new URL("../../seeds", import.meta.url).pathname, library.cautions);

/** The part of the page that stands under the heading of one caution. */
function chapterOf(page: string, id: string): string {
  return page.split("\n### ").find((part) => part.split("\n")[0]?.endsWith(`\`${id}\``)) ?? "";
}

test.each(LANGUAGES)(
  "the page in %s lists every caution with severity, citations, basis, day, decider and cases",
  (language) => {
    const page = writeCautionsPage(library, code, { language, units: "us" });
    const common = COMMON[language];
    expect(library.cautions.length).toBeGreaterThanOrEqual(64);
    for (const { id, cites, decides, examples } of library.cautions) {
      const chapter = chapterOf(page, id);
      expect(chapter, id).not.toBe("");
      for (const one of cites)
        expect(chapter, id).toContain(`| ${citeSource(one)} | ${common.basis[one.basis]} | ${one.checkedOn} |`);
      expect(chapter).toContain(common.deciders[decides]);
      for (const { name } of [...examples.fires, ...examples.silent]) expect(chapter).toContain(name);
    }
    expect(page).not.toMatch(/undefined|NaN|\[object/);
  },
);

test("the worst stand first", () => {
  const page = writeCautionsPage(library, code, { language: "en", units: "us" });
  const words = [...page.matchAll(/^### (Stop|Must|Should|Note): /gm)].map(([, word]) => word ?? "");
  const order = ["Stop", "Must", "Should", "Note"];
  expect(words).toHaveLength(library.cautions.length);
  expect(words).toEqual([...words].sort((a, b) => order.indexOf(a) - order.indexOf(b)));
});

test("what the company has silenced is listed all the same, with why", () => {
  const page = writeCautionsPage(library, code, { language: "en", units: "us" });
  const [silenced] = code.amendments.filter(({ action }) => action === "silence");
  if (silenced === undefined) throw new Error("the demo company silences nothing");
  expect(chapterOf(page, silenced.caution)).toContain(silenced.because.en);
});
