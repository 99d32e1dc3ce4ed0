import { q } from "../../declaration/answer.ts";
import { toBase } from "../../units/convert.ts";
import { declareCaution } from "../caution.ts";
import { isOver } from "../compare.ts";

const ADVISED_C = toBase(110, "F");

export const caution = declareCaution({
  id: "occupants_burn_sooner",
  severity: "should",
  cites: [
    {
      basis: "published",
      document: "CPSC news release on tap water scalds",
      edition: "1979",
      section: "116 of 159 deaths under five or over 65",
      checkedOn: "2026-11-25",
    },
    {
      basis: "from_memory",
      document: "Rules of care homes in several states",
      section: "110 °F at the tap of residents",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "household",
  data: { tap: "temperature", advised: "temperature" },
  check: ({ hasVulnerableOccupants, tap_C }) =>
    hasVulnerableOccupants === true && tap_C !== undefined && isOver(tap_C, ADVISED_C)
      ? { tap: q("temperature", tap_C), advised: q("temperature", ADVISED_C) }
      : undefined,
  examples: {
    fires: [
      { name: "120 °F at the tap, small children", site: { hasVulnerableOccupants: true, tap_C: toBase(120, "F") } },
    ],
    silent: [
      { name: "110 °F at the tap, small children", site: { hasVulnerableOccupants: true, tap_C: toBase(110, "F") } },
      { name: "120 °F, nobody frail", site: { hasVulnerableOccupants: false, tap_C: toBase(120, "F") } },
      { name: "tap not measured", site: { hasVulnerableOccupants: true } },
    ],
  },
});
