import fc from "fast-check";
import type { Block, Button, Card, TableBlock } from "../../src/messages/card.ts";
import { NASTY_TEXTS } from "../support/sample-cards.ts";

/** Any text: words, every character there is, lone surrogates, texts that try to break out, and very long ones. */
const anyText: fc.Arbitrary<string> = fc.oneof(
  { weight: 4, arbitrary: fc.string({ unit: "grapheme", maxLength: 60 }) },
  { weight: 2, arbitrary: fc.string({ unit: "binary", maxLength: 60 }) },
  { weight: 3, arbitrary: fc.constantFrom(...Object.values(NASTY_TEXTS)) },
  {
    weight: 2,
    arbitrary: fc
      .tuple(
        fc.constantFrom("&", "<", "a ", "\u{1F525}", "e\u0301", "\u{1F469}\u200D\u{1F527}", '\\"', "\n"),
        fc.nat(10_000),
      )
      .map(([part, length]) => part.repeat(Math.ceil(length / part.length)).slice(0, length)),
  },
);
const anyList = <T>(item: fc.Arbitrary<T>, maxLength: number) => fc.array(item, { maxLength });

/** What stands in a field: any text, and what fields for days and numbers may hold or not. */
const anyValue: fc.Arbitrary<string> = fc.oneof(
  anyText,
  fc.constantFrom(
    "2026-02-28",
    "2026-02-29",
    "2024-02-29",
    "2026-13-01",
    "tomorrow",
    "7",
    "-7",
    "7.5",
    "1e3",
    "07",
    "",
  ),
);

const anyButton: fc.Arbitrary<Button> = fc.record(
  {
    label: anyText,
    say: anyText,
    aim: fc.record({ walk: fc.string(), fact: fc.string() }),
    style: fc.constantFrom("primary" as const, "danger" as const),
  },
  { requiredKeys: ["label", "say"] },
);
const anyTable: fc.Arbitrary<TableBlock> = fc.record({
  kind: fc.constant("table" as const),
  caption: anyText,
  columns: anyList(anyText, 25),
  rows: fc.oneof(anyList(anyList(anyText, 25), 8), anyList(fc.constant(["1", "2", "3"]), 250)),
});

const anyBlock: fc.Arbitrary<Block> = fc.oneof(
  fc.record({ kind: fc.constant("headline" as const), text: anyText }),
  fc.record({
    kind: fc.constant("text" as const),
    tone: fc.constantFrom("plain" as const, "quiet" as const, "heading" as const, "problem" as const),
    text: anyText,
  }),
  fc.record({
    kind: fc.constant("rows" as const),
    heading: anyText,
    rows: anyList(
      fc.record({ label: anyText, value: anyText, note: anyText }, { requiredKeys: ["label", "value"] }),
      60,
    ),
  }),
  anyTable,
  fc.record(
    {
      kind: fc.constant("caution" as const),
      severity: fc.constantFrom("stop" as const, "must" as const, "should" as const, "note" as const),
      word: anyText,
      text: anyText,
      show: anyText,
      cites: anyText,
    },
    { requiredKeys: ["kind", "severity", "word", "text", "cites"] },
  ),
  fc.record(
    {
      kind: fc.constant("question" as const),
      prompt: anyText,
      help: anyText,
      progress: anyText,
      day: fc.record(
        { aim: fc.record({ walk: fc.uuid(), fact: fc.string() }), value: anyText },
        { requiredKeys: ["aim"] },
      ),
    },
    { requiredKeys: ["kind", "prompt"] },
  ),
  fc.record({ kind: fc.constant("buttons" as const), buttons: anyList(anyButton, 60) }),
  fc.record({
    kind: fc.constant("form" as const),
    topic: fc.constantFrom("expansion", "circuit"),
    title: anyText,
    submit: anyText,
    fields: anyFields(),
  }),
  fc.record({
    kind: fc.constant("chart" as const),
    units: fc.constant("us" as const),
    title: anyText,
    alt: anyText,
    labels: fc.constant({}),
    chart: fc.constant({ id: "c", xKind: "time" as const, series: [] }),
    table: anyTable,
  }),
  fc.record({ kind: fc.constant("progress" as const), text: anyText, done: fc.integer(), total: fc.integer() }),
);

function anyFields() {
  const input = fc.oneof(
    fc.record({ type: fc.constant("text" as const), placeholder: anyText }),
    fc.record({ type: fc.constant("day" as const) }),
    fc.record(
      {
        type: fc.constant("number" as const),
        min: fc.integer({ min: -20, max: 20 }),
        max: fc.integer({ min: -20, max: 20 }),
        whole: fc.constant(true as const),
      },
      { requiredKeys: ["type"] },
    ),
    fc.record({
      type: fc.constant("choice" as const),
      options: fc.uniqueArray(fc.record({ value: fc.string({ minLength: 1, maxLength: 90 }), label: anyText }), {
        maxLength: 120,
        selector: (option) => option.value,
      }),
    }),
  );
  return fc
    .array(
      fc.record(
        { label: anyText, help: anyText, required: fc.boolean(), value: anyValue, problem: anyText, input },
        { requiredKeys: ["label", "required", "input"] },
      ),
      { maxLength: 12 },
    )
    .map((fields) => fields.map((field, index) => ({ ...field, fact: `fact_${index}` })));
}

/** Any card that the type allows. */
export const anyCard: fc.Arbitrary<Card> = fc.record(
  {
    verdict: fc.record({
      kind: fc.constantFrom("good" as const, "caution" as const, "no" as const, "info" as const),
      word: anyText,
    }),
    title: anyText,
    summary: anyText,
    blocks: anyList(anyBlock, 14),
    isPrivate: fc.boolean(),
  },
  { requiredKeys: ["title", "summary", "blocks"] },
);
export { anyText };
