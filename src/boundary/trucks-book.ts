import { z } from "zod";
import type { TruckBook } from "../crew/crew.ts";
import { parseQuantity } from "../units/parse-quantity.ts";
import { type BookRead, file, read, say, words } from "./book-schema.ts";
import { type KnownIds, listOf, refuseUnknown, shortName } from "./crew-fields.ts";

const ADVICE = "write how many there are, such as 4, or how much of a roll or stick, such as 60 ft";
/** A bare number counts pieces; a length with its unit is read into metres. */
const stockAmount = z.union([z.number(), z.string()], { error: say(ADVICE) }).transform((written, context): number => {
  if (typeof written === "number" && written >= 0) return written;
  const parsed = parseQuantity(String(written), "length", { units: "us", decimal: "point" });
  if (typeof written === "string" && parsed.ok && parsed.readAs === undefined && parsed.value >= 0) return parsed.value;
  context.addIssue({ code: "custom", message: `"${written}": ${ADVICE}` });
  return z.NEVER;
});
const stock = z.record(shortName("ball_valve"), stockAmount, {
  error: say("write the parts with how many there are, such as ball_valve: 4"),
});
const truckEntry = file({ id: shortName("truck-1"), name: words("Truck 1"), stock });

const trucksFile = (known: KnownIds) =>
  file({
    invented: z.boolean({ error: say("write true when everything in this file is invented, else false") }),
    shop: stock,
    trucks: listOf(truckEntry, "trucks, each starting with a dash"),
  }).superRefine(({ shop, trucks }, context) => {
    refuseStock(shop, ["shop"], known, context);
    const seen = new Set<string>();
    for (const [row, truck] of trucks.entries()) {
      if (seen.has(truck.id))
        context.addIssue({ code: "custom", path: ["trucks", row, "id"], message: `${truck.id} stands above already` });
      seen.add(truck.id);
      refuseStock(truck.stock, ["trucks", row, "stock"], known, context);
    }
  });

/** Reads what stands in trucks.yaml: what lies in the shop and in each truck. */
export function readTrucks(contents: unknown, known: KnownIds = {}): BookRead<{ isInvented: boolean } & TruckBook> {
  return read(trucksFile(known), contents, ({ invented, ...rest }) => ({ isInvented: invented, ...rest }));
}

function refuseStock(
  held: Readonly<Record<string, number>>,
  path: (string | number)[],
  known: KnownIds,
  context: z.RefinementCtx,
): void {
  const ids = Object.keys(held);
  refuseUnknown(known.parts, ids, (place) => [...path, ids[place] ?? ""], "parts.yaml as a part", context);
}
