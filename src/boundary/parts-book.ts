import { z } from "zod";
import type { Part } from "../crew/crew.ts";
import { type BookRead, file, oneOf, read, say, words } from "./book-schema.ts";
import { listOf, shortName } from "./crew-fields.ts";

/** One part or tool as it stands in parts.yaml, or in one line of parts.csv. */
export const partEntry = file({
  id: shortName("ball_valve"),
  group: oneOf(["part", "tool"]),
  measure: oneOf(["each", "length"]),
  name: file({ en: words("Ball valve"), es: words("Válvula de bola") }),
});
const partsFile = file({
  invented: z.boolean({ error: say("write true when everything in this file is invented, else false") }),
  parts: listOf(partEntry, "parts and tools, each starting with a dash")
    .min(1, "name at least one part")
    .superRefine((parts, context) => {
      const seen = new Set<string>();
      for (const [row, { id }] of parts.entries()) {
        if (seen.has(id))
          context.addIssue({ code: "custom", path: [row, "id"], message: `${id} stands above already` });
        seen.add(id);
      }
    }),
});

/** Reads what stands in parts.yaml: the names of what is loaded and carried. */
export function readParts(contents: unknown): BookRead<{ isInvented: boolean; parts: readonly Part[] }> {
  return read(partsFile, contents, ({ invented, parts }) => ({ isInvented: invented, parts }));
}
