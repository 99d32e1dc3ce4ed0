import { z } from "zod";
import type { SeenAs } from "../ports/store.ts";
import { quantityKind } from "./quantity-kind.ts";
import { parseStored, type Stored } from "./stored-json.ts";

const text = z.string();
const localText = z.strictObject({ en: text, es: text });
const local = z.strictObject({
  action: z.enum(["tighten", "replace", "silence"]),
  asks: localText.exactOptional(),
  because: localText,
  by: z.strictObject({
    basis: z.enum(["published", "computed", "common_practice", "from_memory", "invented"]),
    document: text,
    section: text.exactOptional(),
    edition: text.exactOptional(),
  }),
});

/** How a caution was shown, as it is stored. */
export const seenAs = {
  severity: z.enum(["stop", "must", "should", "note"]),
  data: z.record(text, z.union([z.strictObject({ kind: quantityKind, value: z.number() }), text])),
  local: local.exactOptional(),
};
const storedSeenAs = z.strictObject(seenAs);

/** Reads back how a caution was shown to whoever saw to it. */
export function parseSeenAs(json: string): Stored<SeenAs> {
  return parseStored(storedSeenAs, json);
}
