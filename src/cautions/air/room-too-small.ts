import { q } from "../../declaration/answer.ts";
import { toBase } from "../../units/convert.ts";
import { declareCaution } from "../caution.ts";
import { isUnder } from "../compare.ts";

/** Where the sheet does not say: the upper end of what sheets ask for. */
const USUAL_m3 = toBase(700, "ft3");
/** Net free area that stands in for a larger room. */
const OPENINGS_m2 = toBase(240, "in2");

export const caution = declareCaution({
  id: "room_too_small",
  severity: "should",
  cites: [
    {
      basis: "published",
      document: "ENERGY STAR heat pump water heater guide, FAQ",
      edition: "2024",
      section: "450 to 700 ft³ as the unit states; followed here, the upper end where the sheet is silent",
      checkedOn: "2026-11-25",
    },
    {
      basis: "published",
      document: "ENERGY STAR, Considerations for heat pump water heaters",
      section: "older page: over 1,000 ft³",
      checkedOn: "2026-11-25",
    },
    {
      basis: "published",
      document: "NEEA small space study",
      section: "700 to 450 ft³ costs 8 to 14 % of the efficiency",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "manufacturer",
  data: { volume: "room_volume", needed: "room_volume", openings: "opening_area" },
  check: ({ roomVolume_m3, roomVolumeNeeded_m3, netFreeArea_m2, netFreeAreaNeeded_m2, isDucted }) => {
    const needed_m3 = roomVolumeNeeded_m3 ?? USUAL_m3;
    const openings_m2 = netFreeAreaNeeded_m2 ?? OPENINGS_m2;
    return roomVolume_m3 !== undefined &&
      isDucted !== true &&
      isUnder(roomVolume_m3, needed_m3) &&
      (netFreeArea_m2 === undefined || isUnder(netFreeArea_m2, openings_m2))
      ? {
          volume: q("room_volume", roomVolume_m3),
          needed: q("room_volume", needed_m3),
          openings: q("opening_area", openings_m2),
        }
      : undefined;
  },
  examples: {
    fires: [
      { name: "closet of 150 ft³", site: { roomVolume_m3: toBase(150, "ft3") } },
      {
        name: "500 ft³ where the sheet asks 600",
        site: { roomVolume_m3: toBase(500, "ft3"), roomVolumeNeeded_m3: toBase(600, "ft3") },
      },
    ],
    silent: [
      { name: "700 ft³", site: { roomVolume_m3: toBase(700, "ft3") } },
      {
        name: "150 ft³ with 240 in² open",
        site: { roomVolume_m3: toBase(150, "ft3"), netFreeArea_m2: toBase(240, "in2") },
      },
      { name: "150 ft³ with ducts", site: { roomVolume_m3: toBase(150, "ft3"), isDucted: true } },
      { name: "room not measured", site: { room: "closet" } },
    ],
  },
});
