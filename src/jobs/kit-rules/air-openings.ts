import { toBase } from "../../units/convert.ts";
import { type KitRule, some } from "../kit-rule.ts";

/** What a room must hold where the unit's sheet is not known. */
const USUAL_ROOM_m3 = toBase(700, "ft3");

export const rule: KitRule = {
  id: "air_openings",
  asks: ["air_way", "room_volume"],
  parts: ({ unit, air_way, room_volume_m3 }) => {
    if (air_way === "ducts" || unit?.kind === "split" || unit?.kind === "resistance") return undefined;
    const needed_m3 = unit?.smallestRoom_m3 ?? USUAL_ROOM_m3;
    const isSmall = room_volume_m3 !== undefined && room_volume_m3 < needed_m3;
    return air_way === "grilles" || (air_way === undefined && isSmall) ? [some("air-grille", 2)] : undefined;
  },
  source: {
    basis: "published",
    document: "ENERGY STAR heat pump water heater guide",
    section: "450 to 700 ft3, else 240 sq in. net free",
  },
  cases: {
    fires: [
      { name: "grilles were chosen", site: { air_way: "grilles" }, brings: [some("air-grille", 2)] },
      { name: "a room of 160 cu ft", site: { room_volume_m3: toBase(160, "ft3") } },
    ],
    silent: [
      { name: "ducts in a small room", site: { air_way: "ducts", room_volume_m3: toBase(160, "ft3") } },
      { name: "a room of 1000 cu ft", site: { room_volume_m3: toBase(1000, "ft3") } },
    ],
  },
};
