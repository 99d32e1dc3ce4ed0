import { z } from "zod";
import type { AnyCaution } from "../cautions/caution.ts";
import type { Topic } from "../declaration/topic.ts";
import type { AnyCautionTexts, AnyTopicTexts } from "../messages/topic-texts.ts";

/** What a file exports under one name, or why it cannot be used. */
export type FileRead<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly reason: string };

const text = z.string().min(1);
const someFunction = z.custom<(...parameters: never) => unknown>((value) => typeof value === "function", "no function");
const texts = z.record(z.string(), text);
const lists = z.record(z.string(), z.array(text));
const titled = z.record(z.string(), z.looseObject({ title: text, columns: texts }));

const topic = z.looseObject({
  id: text,
  work: z.enum(["short", "long"]),
  facts: z.record(
    z.string(),
    z.looseObject({
      type: z.enum(["quantity", "choice", "flag", "name", "day", "text"]),
      options: z.array(text).optional(),
    }),
  ),
  results: z.array(text),
  findings: z.record(z.string(), texts),
  tables: lists.optional(),
  charts: lists.optional(),
  compute: someFunction,
  site: someFunction.optional(),
});

const topicTexts = z.looseObject({
  title: text,
  summary: text,
  examples: z.array(text).min(1),
  facts: z.record(
    z.string(),
    z.looseObject({
      label: text,
      question: text,
      words: z.array(text),
      options: z.record(z.string(), z.looseObject({ label: text, words: z.array(text) })).optional(),
    }),
  ),
  results: texts,
  findings: z.record(z.string(), someFunction),
  tables: titled.optional(),
  charts: titled.optional(),
});

const caution = z.looseObject({
  id: text,
  severity: z.enum(["stop", "must", "should", "note"]),
  cites: z.array(z.looseObject({ document: text, checkedOn: z.iso.date() })).min(1),
  decides: text,
  data: texts,
  check: someFunction,
  examples: z.looseObject({
    fires: z.array(z.looseObject({ name: text })).min(1),
    silent: z.array(z.looseObject({ name: text })).min(1),
  }),
});

const cautionTexts = z.looseObject({ ask: someFunction, show: text });

/** Reads the declaration of a topic. The object itself is kept: its functions and its types belong together. */
export function readTopic(exported: unknown): FileRead<Topic> {
  return keep(topic, exported) as FileRead<Topic>;
}

/** Reads the sentences of a topic in one language. */
export function readTopicTexts(exported: unknown): FileRead<AnyTopicTexts> {
  return keep(topicTexts, exported) as FileRead<AnyTopicTexts>;
}

/** Reads the declaration of a caution. */
export function readCaution(exported: unknown): FileRead<AnyCaution> {
  return keep(caution, exported) as FileRead<AnyCaution>;
}

/** Reads the sentences of a caution in one language. */
export function readCautionTexts(exported: unknown): FileRead<AnyCautionTexts> {
  return keep(cautionTexts, exported) as FileRead<AnyCautionTexts>;
}

function keep(schema: z.ZodType, exported: unknown): FileRead<unknown> {
  const checked = schema.safeParse(exported);
  if (checked.success) return { ok: true, value: exported };
  const [issue] = checked.error.issues;
  return {
    ok: false,
    reason: `${issue?.path.map(String).join(".") || "the export"}: ${issue?.message ?? "not valid"}`,
  };
}
