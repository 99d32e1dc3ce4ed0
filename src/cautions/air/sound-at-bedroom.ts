import { q } from "../../declaration/answer.ts";
import { declareCaution } from "../caution.ts";
import { isOver } from "../compare.ts";

const QUIET_dBA = 30;

export const caution = declareCaution({
  id: "sound_at_bedroom",
  severity: "should",
  cites: [
    {
      basis: "published",
      document: "WHO, Guidelines for community noise",
      edition: "1999",
      section: "30 dB(A) in bedrooms at night",
      checkedOn: "2026-11-25",
    },
    {
      basis: "published",
      document: "ENERGY STAR water heaters",
      edition: "5.0",
      section: "55 dBA at the unit",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "household",
  data: { sound: "sound", quiet: "sound" },
  check: ({ soundAtBedroom_dBA }) =>
    soundAtBedroom_dBA !== undefined && isOver(soundAtBedroom_dBA, QUIET_dBA)
      ? { sound: q("sound", soundAtBedroom_dBA), quiet: q("sound", QUIET_dBA) }
      : undefined,
  examples: {
    fires: [{ name: "38 dBA", site: { soundAtBedroom_dBA: 38 } }],
    silent: [
      { name: "exactly 30 dBA", site: { soundAtBedroom_dBA: 30 } },
      { name: "not known", site: { room: "closet" } },
    ],
  },
});
