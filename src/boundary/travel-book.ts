import { z } from "zod";
import type { TravelBook } from "../crew/crew.ts";
import { type BookRead, file, read, say } from "./book-schema.ts";
import { listOf, shortName } from "./crew-fields.ts";
import { sheetQuantity } from "./sheet-fields.ts";

/** A plan for a day has no use for longer drives. */
const LONGEST_s = 12 * 3600;
const drive = sheetQuantity("time").refine((time_s) => time_s >= 0 && time_s <= LONGEST_s, "is over 12 hours");
const legEntry = file({ from: shortName("ostrowick"), to: shortName("saltmere"), time: drive });

const travelFile = file({
  invented: z.boolean({ error: say("write true when everything in this file is invented, else false") }),
  yard: shortName("ostrowick"),
  within: drive,
  otherwise: drive,
  legs: listOf(legEntry, "drives, each starting with a dash").superRefine((legs, context) => {
    const seen = new Set<string>();
    for (const [row, { from, to }] of legs.entries()) {
      const pair = [from, to].sort().join(" ");
      if (seen.has(pair))
        context.addIssue({ code: "custom", path: [row], message: `${from} to ${to} stands above already` });
      seen.add(pair);
    }
  }),
});

/** Reads what stands in travel.yaml: how long it takes to drive between places. */
export function readTravel(contents: unknown): BookRead<{ isInvented: boolean } & TravelBook> {
  return read(travelFile, contents, ({ invented, yard, within, otherwise, legs }) => ({
    isInvented: invented,
    yard,
    within_s: within,
    otherwise_s: otherwise,
    legs: legs.map(({ from, to, time }) => ({ from, to, time_s: time })),
  }));
}
