import { q } from "../../declaration/answer.ts";
import { toBase } from "../../units/convert.ts";
import { declareCaution } from "../caution.ts";
import { isUnder } from "../compare.ts";

const STORED_C = toBase(140, "F");

export const caution = declareCaution({
  id: "storage_low_for_the_frail",
  severity: "should",
  cites: [
    {
      basis: "published",
      document: "City of Napa residential Legionella FAQ, citing CDC and ASHRAE 188",
      section: "store at 140 °F or more, with mixing valves",
      checkedOn: "2026-11-25",
    },
    {
      basis: "published",
      document: "OSHA, Legionnaires' disease eTool",
      edition: "archived",
      section: "store at 140 °F",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "health",
  data: { storage: "temperature", stored: "temperature" },
  check: ({ hasVulnerableOccupants, storage_C }) =>
    hasVulnerableOccupants === true && storage_C !== undefined && isUnder(storage_C, STORED_C)
      ? { storage: q("temperature", storage_C), stored: q("temperature", STORED_C) }
      : undefined,
  examples: {
    fires: [{ name: "125 °F, somebody ill", site: { hasVulnerableOccupants: true, storage_C: toBase(125, "F") } }],
    silent: [
      { name: "140 °F, somebody ill", site: { hasVulnerableOccupants: true, storage_C: toBase(140, "F") } },
      { name: "125 °F, nobody frail", site: { hasVulnerableOccupants: false, storage_C: toBase(125, "F") } },
      { name: "storage not known", site: { hasVulnerableOccupants: true } },
    ],
  },
});
