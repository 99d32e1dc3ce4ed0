import { z } from "zod";
import type { Place } from "../books/places.ts";
import { type BookRead, file, read, say, words } from "./book-schema.ts";
import { sheetNumber, sheetQuantity } from "./sheet-fields.ts";

const MONTHS = 12;
/** One place as it stands in places.yaml, or in one line of places.csv. */
export const placeEntry = file({
  id: z.string({ error: say("write a short name") }).regex(/^[a-z][a-z0-9-]{0,39}$/, "use small letters and hyphens"),
  name: words("Ostrowick"),
  year_mean: sheetQuantity("temperature"),
  monthly_span: sheetQuantity("temperature_difference"),
  heater_room: z
    .array(sheetQuantity("temperature"), { error: say("write twelve temperatures, January first") })
    .length(MONTHS, "write twelve temperatures, January first"),
  humidity: sheetNumber("write a share, such as 0.5").min(0.05, "is below 0.05").max(1, "is above 1"),
});
const placesFile = file({
  invented: z.boolean({ error: "write true when everything in this file is invented, else false" }),
  places: z
    .array(placeEntry, { error: say("write a list of places, each starting with a dash") })
    .min(1, "name at least one place"),
});

/** Reads what stands in places.yaml; the first place is the company's own. */
export function readPlaces(contents: unknown): BookRead<{ isInvented: boolean; places: readonly Place[] }> {
  return read(placesFile, contents, ({ invented, places }) => ({
    isInvented: invented,
    places: places.map(({ id, name, year_mean, monthly_span, heater_room, humidity }) => ({
      id,
      name,
      yearMean_C: year_mean,
      monthlySpan_K: monthly_span,
      heaterRoom_C: heater_room,
      heaterRoomHumidity: humidity,
    })),
  }));
}
