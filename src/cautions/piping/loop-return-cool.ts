import { q } from "../../declaration/answer.ts";
import { toBase } from "../../units/convert.ts";
import { declareCaution } from "../caution.ts";
import { isUnder } from "../compare.ts";

const RETURN_C = toBase(124, "F");

export const caution = declareCaution({
  id: "loop_return_cool",
  severity: "should",
  cites: [
    {
      basis: "published",
      document: "ASHRAE Guideline 12",
      edition: "2000",
      section: "4.1.6: return at 124 °F or more; quoted on another page; written for care buildings",
      checkedOn: "2026-11-25",
    },
    {
      basis: "published",
      document: "Rhoads et al., Microbiome",
      edition: "2015",
      section: "51 °C in the loop cut Legionella against 39 °C",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "health",
  data: { loop: "temperature", advised: "temperature" },
  check: ({ hasCirculationLoop, loopReturn_C }) =>
    hasCirculationLoop !== false && loopReturn_C !== undefined && isUnder(loopReturn_C, RETURN_C)
      ? { loop: q("temperature", loopReturn_C), advised: q("temperature", RETURN_C) }
      : undefined,
  examples: {
    fires: [{ name: "return at 108 °F", site: { hasCirculationLoop: true, loopReturn_C: toBase(108, "F") } }],
    silent: [
      { name: "return at 125 °F", site: { hasCirculationLoop: true, loopReturn_C: toBase(125, "F") } },
      { name: "return not measured", site: { hasCirculationLoop: true } },
    ],
  },
});
