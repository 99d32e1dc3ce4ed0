import { q } from "../../declaration/answer.ts";
import { toBase } from "../../units/convert.ts";
import { declareCaution } from "../caution.ts";
import { isOver } from "../compare.ts";

export const caution = declareCaution({
  id: "straps_too_few",
  severity: "must",
  cites: [
    {
      basis: "published",
      document: "UPC",
      edition: "1994 and city copies",
      section: "507.2 (older 510.5): upper and lower third",
      checkedOn: "2026-11-25",
    },
    {
      basis: "published",
      document: "California DSA bracing guideline",
      edition: "2005",
      section: "two sets to 52 gal, a third to 75 gal; followed here over a local page that has two to 75 gal",
      checkedOn: "2026-11-25",
    },
    {
      basis: "from_memory",
      document: "IRC",
      edition: "2021",
      section: "P2801.8: seismic categories",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "authority",
  data: { straps: "count", needed: "count" },
  check: ({ tank_L, isSeismicArea, straps }, code) => {
    if (isSeismicArea !== true || tank_L === undefined || straps === undefined) return undefined;
    const needed = isOver(tank_L, code.limits.two_strap_tank.value) ? 3 : 2;
    return straps < needed ? { straps: q("count", straps), needed: q("count", needed) } : undefined;
  },
  examples: {
    fires: [
      { name: "one strap on 50 gal", site: { isSeismicArea: true, tank_L: toBase(50, "gal"), straps: 1 } },
      { name: "two straps on 65 gal", site: { isSeismicArea: true, tank_L: toBase(65, "gal"), straps: 2 } },
    ],
    silent: [
      { name: "two straps on 50 gal", site: { isSeismicArea: true, tank_L: toBase(50, "gal"), straps: 2 } },
      {
        name: "no strap where the ground keeps still",
        site: { isSeismicArea: false, tank_L: toBase(50, "gal"), straps: 0 },
      },
      { name: "straps not counted", site: { isSeismicArea: true, tank_L: toBase(50, "gal") } },
    ],
  },
});
