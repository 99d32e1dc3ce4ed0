import { toBase } from "../../units/convert.ts";
import { type KitRule, some } from "../kit-rule.ts";

const TWO_STRAPS_L = toBase(52, "gal");
const ENGINEERED_L = toBase(75, "gal");

export const rule: KitRule = {
  id: "seismic_straps",
  asks: ["seismic"],
  parts: ({ unit, seismic, tank_L }) => {
    if (seismic !== true) return undefined;
    const size_L = tank_L ?? unit?.nominal_L ?? 0;
    if (size_L > ENGINEERED_L) return [some("seismic-strap", 3), some("engineered-restraint")];
    return [some("seismic-strap", size_L > TWO_STRAPS_L ? 3 : 2)];
  },
  source: {
    basis: "published",
    document: "California DSA water heater bracing guide",
    section: "two straps to 52 gal, three to 75, engineered above",
  },
  cases: {
    fires: [
      { name: "50 gal", site: { seismic: true, tank_L: toBase(50, "gal") }, brings: [some("seismic-strap", 2)] },
      { name: "66 gal", site: { seismic: true, tank_L: toBase(66, "gal") }, brings: [some("seismic-strap", 3)] },
      {
        name: "80 gal",
        site: { seismic: true, tank_L: toBase(80, "gal") },
        brings: [some("seismic-strap", 3), some("engineered-restraint")],
      },
    ],
    silent: [{ name: "the ground stays still", site: { seismic: false, tank_L: toBase(80, "gal") } }],
  },
};
