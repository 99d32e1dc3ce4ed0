import { z } from "zod";
import type { PostPaper } from "../ports/outbox.ts";
import type { PaperBlock } from "../ports/papers.ts";
import { storedFile } from "./stored-card.ts";
import { parseStored, type Stored } from "./stored-json.ts";

const text = z.string();
const gauge = z.strictObject({
  label: text,
  value: z.number(),
  low: z.number(),
  high: z.number(),
  valueText: text,
  lowText: text,
  highText: text,
});

/** One schema a kind of block: a new kind does not compile until it has one. */
const BLOCKS = {
  heading: z.strictObject({ kind: z.literal("heading"), text }),
  text: z.strictObject({ kind: z.literal("text"), tone: z.enum(["plain", "quiet", "strong"]), text }),
  table: z.strictObject({
    kind: z.literal("table"),
    widths: z.array(z.number()),
    columns: z.array(text),
    rows: z.array(z.array(text)),
  }),
  pairs: z.strictObject({ kind: z.literal("pairs"), pairs: z.array(z.tuple([text, text])) }),
  gauges: z.strictObject({ kind: z.literal("gauges"), alt: text, legend: text, gauges: z.array(gauge) }),
  photos: z.strictObject({
    kind: z.literal("photos"),
    photos: z.array(z.strictObject({ file: storedFile, caption: text, missing: text, elsewhere: text })),
  }),
  signatures: z.strictObject({
    kind: z.literal("signatures"),
    lines: z.array(z.strictObject({ who: text, date: text })),
  }),
} satisfies { readonly [K in PaperBlock["kind"]]: z.ZodType<Extract<PaperBlock, { kind: K }>> };

type AnyBlock = (typeof BLOCKS)[keyof typeof BLOCKS];

const storedPaper = z.strictObject({
  name: text,
  text,
  record: z.strictObject({
    language: z.enum(["en", "es"]),
    sheet: z.enum(["letter", "a4"]),
    title: text,
    subject: text,
    company: text,
    warning: text.exactOptional(),
    mark: text,
    foot: text,
    leftOut: text,
    page: text,
    of: text,
    at_ms: z.number(),
    blocks: z.array(z.discriminatedUnion("kind", Object.values(BLOCKS) as [AnyBlock, ...AnyBlock[]])),
  }),
});

/** Reads back the paper that a post waits with. */
export function parsePostPaper(json: string): Stored<PostPaper> {
  return parseStored(storedPaper, json);
}
