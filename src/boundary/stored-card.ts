import { z } from "zod";
import type { Block, Card } from "../messages/card.ts";
import { quantityKind } from "./quantity-kind.ts";
import { parseStored, type Stored } from "./stored-json.ts";

const text = z.string();
const numbers = z.array(z.number());
const aim = z.strictObject({ walk: text, fact: text });
const chart = z.strictObject({
  id: text,
  xKind: z.union([quantityKind, z.enum(["hour_of_day", "month"])]),
  series: z.array(
    z.strictObject({
      id: text,
      mark: z.enum(["line", "area", "bar", "band", "dots", "layer", "strip"]),
      kind: quantityKind,
      x: numbers,
      y: numbers,
      y0: numbers.exactOptional(),
    }),
  ),
  marks: z.array(z.strictObject({ id: text, kind: quantityKind, value: z.number() })).exactOptional(),
});
/** Blocks that a door may fold carry this mark. */
const foldable = { isDetail: z.literal(true).exactOptional() };
const table = z.strictObject({
  ...foldable,
  kind: z.literal("table"),
  caption: text,
  columns: z.array(text),
  rows: z.array(z.array(text)),
});
/** A kept file, as it is stored wherever it is shown. */
export const storedFile = z.strictObject({ hash: text, name: text, type: text, size_B: z.number() });
const field = z.strictObject({
  fact: text,
  label: text,
  help: text.exactOptional(),
  required: z.boolean(),
  value: text.exactOptional(),
  input: z.discriminatedUnion("type", [
    z.strictObject({ type: z.literal("text"), placeholder: text.exactOptional() }),
    z.strictObject({ type: z.literal("day") }),
    z.strictObject({
      type: z.literal("number"),
      min: z.number().exactOptional(),
      max: z.number().exactOptional(),
      whole: z.literal(true).exactOptional(),
    }),
    z.strictObject({ type: z.literal("choice"), options: z.array(z.strictObject({ value: text, label: text })) }),
  ]),
  problem: text.exactOptional(),
});
const button = z.strictObject({
  label: text,
  say: text,
  aim: aim.exactOptional(),
  style: z.enum(["primary", "danger"]).exactOptional(),
});

/** One schema a kind of block: a new kind does not compile until it has one. */
const BLOCKS = {
  headline: z.strictObject({ kind: z.literal("headline"), text }),
  text: z.strictObject({
    ...foldable,
    kind: z.literal("text"),
    tone: z.enum(["plain", "quiet", "heading", "problem"]),
    text,
  }),
  rows: z.strictObject({
    ...foldable,
    kind: z.literal("rows"),
    heading: text.exactOptional(),
    rows: z.array(z.strictObject({ label: text, value: text, note: text.exactOptional() })),
  }),
  table,
  caution: z.strictObject({
    kind: z.literal("caution"),
    severity: z.enum(["stop", "must", "should", "note"]),
    word: text,
    text,
    show: text.exactOptional(),
    cites: text,
  }),
  question: z.strictObject({
    kind: z.literal("question"),
    prompt: text,
    help: text.exactOptional(),
    progress: text.exactOptional(),
    day: z.strictObject({ aim, value: text.exactOptional() }).exactOptional(),
  }),
  buttons: z.strictObject({ ...foldable, kind: z.literal("buttons"), buttons: z.array(button) }),
  form: z.strictObject({ kind: z.literal("form"), topic: text, title: text, submit: text, fields: z.array(field) }),
  chart: z.strictObject({
    kind: z.literal("chart"),
    chart,
    title: text,
    alt: text,
    labels: z.record(z.string(), text),
    units: z.enum(["us", "si"]),
    table,
  }),
  progress: z.strictObject({ kind: z.literal("progress"), text, done: z.number(), total: z.number() }),
  file: z.strictObject({
    ...foldable,
    kind: z.literal("file"),
    file: storedFile,
    text,
  }),
} satisfies { readonly [K in Block["kind"]]: z.ZodType<Extract<Block, { kind: K }>> };

type AnyBlock = (typeof BLOCKS)[keyof typeof BLOCKS];

/** A card, as it is stored. */
export const storedCard = z.strictObject({
  verdict: z.strictObject({ kind: z.enum(["good", "caution", "no", "info"]), word: text }).exactOptional(),
  title: text,
  blocks: z.array(z.discriminatedUnion("kind", Object.values(BLOCKS) as [AnyBlock, ...AnyBlock[]])),
  summary: text,
  isPrivate: z.boolean().exactOptional(),
});

/** Reads back the card that a delivery was answered with. */
export function parseCard(json: string): Stored<Card> {
  return parseStored(storedCard, json);
}
