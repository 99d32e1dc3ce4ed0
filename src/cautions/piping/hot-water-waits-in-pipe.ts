import { q } from "../../declaration/answer.ts";
import { toBase } from "../../units/convert.ts";
import { declareCaution } from "../caution.ts";
import { isOver } from "../compare.ts";

const LIMIT_L = toBase(0.5, "gal");

export const caution = declareCaution({
  id: "hot_water_waits_in_pipe",
  severity: "note",
  cites: [
    {
      basis: "published",
      document: "EPA WaterSense New Home Specification",
      edition: "1.2, 2014",
      section: "3.3: 0.5 gal between heater and fixture",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "household",
  data: { contents: "volume", limit: "volume" },
  check: ({ hotPipeContents_L, hasCirculationLoop }) =>
    hotPipeContents_L !== undefined && hasCirculationLoop !== true && isOver(hotPipeContents_L, LIMIT_L)
      ? { contents: q("volume", hotPipeContents_L), limit: q("volume", LIMIT_L) }
      : undefined,
  examples: {
    fires: [{ name: "1.26 gal without a loop", site: { hotPipeContents_L: toBase(1.26, "gal") } }],
    silent: [
      { name: "exactly half a gallon", site: { hotPipeContents_L: toBase(0.5, "gal") } },
      { name: "1.26 gal on a loop", site: { hotPipeContents_L: toBase(1.26, "gal"), hasCirculationLoop: true } },
      { name: "contents not known", site: {} },
    ],
  },
});
