import fc from "fast-check";
import { parseHTML } from "linkedom";
import { expect, test } from "vitest";
import { html } from "../../adapters/web/html.ts";
import { NASTY_TEXTS } from "../support/sample-cards.ts";

/** What a reader can be shown of a text: no control characters, no half characters, and lines end in newlines. */
function showable(text: string): string {
  return text
    .replace(/\p{Cc}/gu, (character) => (character === "\t" || character === "\n" ? character : ""))
    .replace(/\p{Surrogate}/gu, "\uFFFD");
}

/** Reads the page with a parser that is not ours. */
function readBack(page: string): {
  readonly content: string;
  readonly attribute: string | null;
  readonly elements: number;
} {
  const { document } = parseHTML(`<!doctype html><html><body>${page}</body></html>`);
  const element = document.querySelector("i");
  return {
    content: element?.textContent ?? "",
    attribute: element?.getAttribute("title") ?? null,
    elements: document.querySelectorAll("body *").length,
  };
}

const write = (text: string) => html`<i title="${text}">${text}</i>`.toString();

test.each(Object.entries(NASTY_TEXTS))("a parser reads back the text and nothing else: %s", (_, text) => {
  expect(readBack(write(text))).toEqual({ content: showable(text), attribute: showable(text), elements: 1 });
});

test("a parser reads back any text, in content and in a quoted attribute", () => {
  const texts = fc.string({ unit: "binary", maxLength: 200 });
  fc.assert(
    fc.property(texts, (text) => {
      expect(readBack(write(text))).toEqual({ content: showable(text), attribute: showable(text), elements: 1 });
    }),
    { numRuns: 500 },
  );
});

const WRITTEN: readonly { readonly name: string; readonly got: { toString(): string }; readonly written: string }[] = [
  { name: "escapes the five characters", got: html`${`&<>"'`}`, written: "&amp;&lt;&gt;&quot;&#39;" },
  { name: "escapes an entity that a person typed", got: html`${"&lt;"}`, written: "&amp;lt;" },
  { name: "leaves written html alone", got: html`<b>${html`<i>1</i>`}</b>`, written: "<b><i>1</i></b>" },
  { name: "puts a list on lines", got: html`${[html`<i>1</i>`, html`<i>2</i>`]}`, written: "<i>1</i>\n<i>2</i>" },
  { name: "writes nothing for undefined", got: html`<b>${undefined}</b>`, written: "<b></b>" },
  { name: "writes numbers", got: html`${0} ${1.5}`, written: "0 1.5" },
];
test.each(WRITTEN)("$name", ({ got, written }) => {
  expect(got.toString()).toBe(written);
});
