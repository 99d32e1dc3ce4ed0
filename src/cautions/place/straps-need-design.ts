import { q } from "../../declaration/answer.ts";
import { toBase } from "../../units/convert.ts";
import { declareCaution } from "../caution.ts";
import { isOver } from "../compare.ts";

export const caution = declareCaution({
  id: "straps_need_design",
  severity: "must",
  cites: [
    {
      basis: "published",
      document: "California DSA bracing guideline",
      edition: "2005",
      section: "over 75 gal: a design of its own",
      checkedOn: "2026-11-25",
    },
    {
      basis: "from_memory",
      document: "IPC",
      edition: "2021",
      section: "502.4: supports by the building code",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "authority",
  data: { tank: "volume", limit: "volume" },
  check: ({ tank_L, isSeismicArea }, code) =>
    isSeismicArea === true && tank_L !== undefined && isOver(tank_L, code.limits.three_strap_tank.value)
      ? { tank: q("volume", tank_L), limit: q("volume", code.limits.three_strap_tank.value) }
      : undefined,
  examples: {
    fires: [{ name: "80 gal in earthquake country", site: { isSeismicArea: true, tank_L: toBase(80, "gal") } }],
    silent: [
      { name: "75 gal in earthquake country", site: { isSeismicArea: true, tank_L: toBase(75, "gal") } },
      { name: "80 gal where the ground keeps still", site: { isSeismicArea: false, tank_L: toBase(80, "gal") } },
      { name: "tank not known", site: { isSeismicArea: true } },
    ],
  },
});
