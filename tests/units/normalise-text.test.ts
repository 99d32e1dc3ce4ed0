import fc from "fast-check";
import { expect, test } from "vitest";
import { foldText } from "../../src/units/fold-text.ts";
import { normaliseText } from "../../src/units/normalise-text.ts";

test.each([
  { name: "curly apostrophe of a phone", typed: "6’3”", plain: `6'3"` },
  { name: "primes", typed: "6′ 3″", plain: `6' 3"` },
  { name: "two apostrophes for inches", typed: "3''", plain: '3"' },
  { name: "two curly apostrophes for inches", typed: "3’’", plain: '3"' },
  { name: "low quotes", typed: "„HX 50“", plain: '"HX 50"' },
  { name: "angle quotes", typed: "«HX 50»", plain: '"HX 50"' },
  { name: "non-breaking space", typed: "80\u00a0gal", plain: "80 gal" },
  { name: "narrow non-breaking space", typed: "80\u202fgal", plain: "80 gal" },
  { name: "thin space", typed: "80\u2009gal", plain: "80 gal" },
  { name: "tab", typed: "80\tgal", plain: "80 gal" },
  { name: "several spaces", typed: "  80    gal ", plain: "80 gal" },
  { name: "half sign", typed: "½ in", plain: "1/2 in" },
  { name: "quarter sign behind a number", typed: "1¼", plain: "1 1/4" },
  { name: "three quarters behind a space", typed: "1 ¾", plain: "1 3/4" },
  { name: "eighths", typed: "⅝", plain: "5/8" },
  { name: "fraction slash", typed: "3⁄4", plain: "3/4" },
  { name: "masculine ordinal for degrees", typed: "140ºF", plain: "140°F" },
  { name: "ring above for degrees", typed: "140˚F", plain: "140°F" },
  { name: "one-character °F", typed: "140℉", plain: "140°F" },
  { name: "times sign", typed: "7×10×10", plain: "7x10x10" },
  { name: "cubic foot sign", typed: "700 ft³", plain: "700 ft3" },
  { name: "square of a number stays a power", typed: "7²", plain: "7^2" },
  { name: "en dash", typed: "120–140", plain: "120-140" },
  { name: "minus sign", typed: "−5", plain: "-5" },
  { name: "ohm sign", typed: "12 \u2126", plain: "12 Ω" },
  { name: "full-width digits", typed: "８０ gal", plain: "80 gal" },
  { name: "zero-width joiner inside a word", typed: "ga\u200dl", plain: "gal" },
  { name: "right-to-left mark", typed: "80\u200f gal", plain: "80 gal" },
  { name: "soft hyphen", typed: "gal\u00adlons", plain: "gallons" },
  { name: "byte order mark", typed: "\ufeff80 gal", plain: "80 gal" },
  { name: "bell and escape", typed: "80\u0007 gal\u001b", plain: "80 gal" },
  { name: "half of an emoji", typed: "80 gal \ud83d", plain: "80 gal" },
  { name: "line ends of every kind", typed: "a\r\nb\rc\u2028d\n\ne", plain: "a\nb\nc\nd\ne" },
  { name: "accents stay", typed: "agua fría", plain: "agua fría" },
  { name: "accent written as a mark of its own", typed: "fri\u0301a", plain: "fría" },
])("$name", ({ typed, plain }) => {
  expect(normaliseText(typed)).toBe(plain);
});

test("a plain text stays as it is", () => {
  fc.assert(
    fc.property(fc.string({ unit: "binary", maxLength: 60 }), (text) => {
      const once = normaliseText(text);
      expect(normaliseText(once)).toBe(once);
    }),
    { numRuns: 3000 },
  );
});

test("folding keeps every place of the text", () => {
  fc.assert(
    fc.property(fc.string({ unit: "binary", maxLength: 60 }), (text) => {
      expect(foldText(text)).toHaveLength(text.length);
    }),
    { numRuns: 3000 },
  );
});

test.each([
  { typed: "Agua FRÍA", folded: "agua fria" },
  { typed: "pequeño", folded: "pequeno" },
  { typed: "12 Ω", folded: "12 ω" },
  { typed: "İ", folded: "i" },
  { typed: "ﬁ", folded: "ﬁ" },
])("$typed folds to $folded", ({ typed, folded }) => {
  expect(foldText(typed)).toBe(folded);
});
