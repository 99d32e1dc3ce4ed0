import { toBase } from "../../units/convert.ts";
import { type KitRule, STICK_m, some, withCutting_m } from "../kit-rule.ts";

export const rule: KitRule = {
  id: "air_ducts",
  asks: ["air_way"],
  parts: ({ air_way, duct_length_m }) => {
    if (air_way !== "ducts") return undefined;
    const run_m = duct_length_m === undefined ? STICK_m : withCutting_m(duct_length_m);
    return [some("duct-8-in", run_m), some("duct-insulation", run_m), some("duct-adapter"), some("duct-terminal")];
  },
  source: {
    basis: "published",
    document: "Building America attic study",
    section: "ducts of 8 in. at least, insulated",
  },
  cases: {
    fires: [
      {
        name: "ten feet of duct",
        site: { air_way: "ducts", duct_length_m: toBase(10, "ft") },
        brings: [
          some("duct-8-in", toBase(11, "ft")),
          some("duct-insulation", toBase(11, "ft")),
          some("duct-adapter"),
          some("duct-terminal"),
        ],
      },
    ],
    silent: [{ name: "it breathes from the room", site: { air_way: "room", duct_length_m: 3 } }],
  },
};
