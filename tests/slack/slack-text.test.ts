import fc from "fast-check";
import { expect, test } from "vitest";
import { cleanText, escapeText, fitEscaped, fitRaw, splitText, unescapeText } from "../../adapters/slack/slack-text.ts";
import { anyText } from "./random-cards.ts";

const ESCAPED: readonly (readonly [text: string, escaped: string])[] = [
  ["5 < 6 & 7 > 3", "5 &lt; 6 &amp; 7 &gt; 3"],
  ["<!channel>", "&lt;!channel&gt;"],
  ["<@U1> and <https://a.test|b>", "&lt;@U1&gt; and &lt;https://a.test|b&gt;"],
  ["&lt;", "&amp;lt;"],
  ["*bold* `code`", "*bold* `code`"],
];
test.each(ESCAPED)("%s is escaped once, to %s", (text, escaped) => {
  expect(fitEscaped(text, 100)).toBe(escaped);
  expect(unescapeText(escaped)).toBe(text);
});

const FITTED: readonly (readonly [name: string, text: string, most: number, fitted: string])[] = [
  ["a text of exactly 5 stays", "abcde", 5, "abcde"],
  ["a text of 6 is cut to 5", "abcdef", 5, "abcd…"],
  ["an entity is kept whole or left out", "ab&cd", 6, "ab…"],
  ["an entity that just fits is kept", "ab&cd", 8, "ab&amp;…"],
  ["a pair of surrogates is not halved", "a\u{1F525}\u{1F525}", 3, "a…"],
  ["an accent stays on its letter", "ae\u0301o", 3, "a…"],
  ["a joined emoji is kept whole or left out", "a\u{1F469}\u200D\u{1F527}b", 5, "a…"],
  ["nothing becomes a dash", " \n ", 5, "–"],
];
test.each(FITTED)("%s", (_, text, most, fitted) => {
  expect(fitEscaped(text, most)).toBe(fitted);
});

const CLEANED: readonly (readonly [name: string, text: string, clean: string])[] = [
  ["control characters go", "a\u0000b\u0007c\u001B[31m", "abc[31m"],
  ["a tab becomes a space", "a\tb", "a b"],
  ["line ends of all systems become one", "a\r\nb\rc\n", "a\nb\nc\n"],
  ["half a character becomes a mark", "a\uD83Db", "a\uFFFDb"],
  ["direction overrides go", "a\u202Eb\u2067c\u2069d", "abcd"],
  ["a right-to-left mark and a joiner stay", "a\u200Fb\u200Dc", "a\u200Fb\u200Dc"],
];
test.each(CLEANED)("%s", (_, text, clean) => {
  expect(cleanText(text)).toBe(clean);
});

test("a joined emoji of 10,000 characters is cut too", () => {
  const chain = "\u{1F469}\u200D".repeat(3_334);
  expect(fitRaw(chain, 50).length).toBeLessThanOrEqual(50);
});

test("no text is longer than asked, and what is kept is the beginning of it", () => {
  fc.assert(
    fc.property(anyText, fc.integer({ min: 2, max: 400 }), (text, most) => {
      const fitted = fitEscaped(text, most);
      expect(fitted.length).toBeLessThanOrEqual(most);
      const kept = unescapeText(fitted.replace(/…$/, ""));
      const clean = cleanText(text);
      expect(clean.startsWith(kept) || clean.trim() === "" || clean.startsWith(unescapeText(fitted))).toBe(true);
    }),
  );
});

test("pieces of a split text hold all of its characters but the spaces between them", () => {
  fc.assert(
    fc.property(anyText, fc.integer({ min: 5, max: 300 }), fc.boolean(), (text, most, isEscapedLater) => {
      const pieces = splitText(text, most, isEscapedLater);
      for (const piece of pieces) {
        // One character of up to 64 joined parts is not cut, so a piece of it alone may be longer than a tiny limit.
        const length = isEscapedLater ? escapeText(piece).length : piece.length;
        expect(length).toBeLessThanOrEqual(Math.max(most, 64));
      }
      const solid = (said: string) => said.replace(/\s+/g, "");
      const clean = solid(cleanText(text));
      expect(solid(pieces.join(""))).toBe(clean === "" ? "–" : clean);
    }),
  );
});

test("a text of 3,001 words' characters is split at a space", () => {
  const [first, second] = splitText(`${"a".repeat(2_000)} ${"b".repeat(1_000)}`, 3_000, false);
  expect([first?.length, second?.length]).toEqual([2_000, 1_000]);
});
