import fc from "fast-check";
import type { Block, Card, FormField } from "../../src/messages/card.ts";
import { NASTY_TEXTS } from "../support/sample-cards.ts";

/** Texts short and long, plain and odd. */
const text: fc.Arbitrary<string> = fc.oneof(
  { weight: 6, arbitrary: fc.lorem({ maxCount: 12 }) },
  { weight: 2, arbitrary: fc.string({ unit: "grapheme", maxLength: 60 }) },
  { weight: 2, arbitrary: fc.constantFrom(...Object.values(NASTY_TEXTS).filter((one) => one.length < 1_000)) },
  { weight: 1, arbitrary: fc.string({ unit: "binary", maxLength: 400 }) },
  { weight: 1, arbitrary: fc.constantFrom("", " ", "\n", "°".repeat(8_000), "🔥".repeat(4_000), "w ".repeat(9_000)) },
);
const short: fc.Arbitrary<string> = fc.oneof(fc.lorem({ maxCount: 2 }), fc.string({ unit: "grapheme", maxLength: 20 }));
const aim = fc.record({ walk: short, fact: short });
const button = fc.record(
  { label: text, say: text, aim, style: fc.constantFrom("primary" as const, "danger" as const) },
  { requiredKeys: ["label", "say"] },
);
const input: fc.Arbitrary<FormField["input"]> = fc.oneof(
  fc.record({ type: fc.constant("text" as const), placeholder: text }, { requiredKeys: ["type"] }),
  fc.record({
    type: fc.constant("choice" as const),
    options: fc.array(fc.record({ value: short, label: text }), { maxLength: 9 }),
  }),
);
const field = fc.record(
  {
    fact: fc.stringMatching(/^[a-z_]{1,12}$/),
    label: text,
    help: text,
    required: fc.boolean(),
    value: text,
    input,
    problem: text,
  },
  { requiredKeys: ["fact", "label", "required", "input"] },
);
const fields = fc.uniqueArray(field, { selector: ({ fact }) => fact, maxLength: 8 });
const table = fc
  .tuple(text, fc.array(text, { minLength: 1, maxLength: 6 }), fc.nat(12))
  .chain(([caption, columns, count]) =>
    fc
      .array(fc.array(text, { minLength: columns.length, maxLength: columns.length }), {
        minLength: count,
        maxLength: count,
      })
      .map((rows) => ({ kind: "table" as const, caption, columns, rows })),
  );
const row = fc.record({ label: text, value: text, note: text }, { requiredKeys: ["label", "value"] });

const block: fc.Arbitrary<Block> = fc.oneof(
  fc.record({ kind: fc.constant("headline" as const), text }),
  fc.record({
    kind: fc.constant("text" as const),
    tone: fc.constantFrom("plain", "quiet", "heading", "problem"),
    text,
  }),
  fc.record(
    { kind: fc.constant("rows" as const), heading: text, rows: fc.array(row, { maxLength: 30 }) },
    { requiredKeys: ["kind", "rows"] },
  ),
  table,
  fc.record(
    {
      kind: fc.constant("caution" as const),
      severity: fc.constantFrom("stop", "must", "should", "note"),
      word: text,
      text,
      show: text,
      cites: text,
    },
    { requiredKeys: ["kind", "severity", "word", "text", "cites"] },
  ),
  fc.record(
    { kind: fc.constant("question" as const), prompt: text, help: text, progress: text },
    { requiredKeys: ["kind", "prompt"] },
  ),
  fc.record({ kind: fc.constant("buttons" as const), buttons: fc.array(button, { maxLength: 14 }) }),
  fc.record({ kind: fc.constant("form" as const), topic: short, title: text, submit: text, fields }),
  fc.record({
    kind: fc.constant("chart" as const),
    title: text,
    alt: text,
    labels: fc.constant({}),
    units: fc.constantFrom("us" as const, "si" as const),
    chart: fc.constant({ id: "c", xKind: "time" as const, series: [] }),
    table,
  }),
  fc.record({ kind: fc.constant("progress" as const), text, done: fc.nat(500), total: fc.nat(300) }),
);

/** Any card that could be made, and some that should not be. */
export const anyCard: fc.Arbitrary<Card> = fc.record(
  {
    verdict: fc.record({ kind: fc.constantFrom("good", "caution", "no", "info"), word: text }),
    title: text,
    blocks: fc.array(block, { maxLength: 9 }),
    summary: text,
    isPrivate: fc.boolean(),
  },
  { requiredKeys: ["title", "blocks", "summary"] },
);
