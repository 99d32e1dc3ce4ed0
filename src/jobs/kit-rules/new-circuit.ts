import { toBase } from "../../units/convert.ts";
import { type KitRule, STICK_m, some, withCutting_m } from "../kit-rule.ts";

export const rule: KitRule = {
  id: "new_circuit",
  asks: ["circuit_right"],
  parts: ({ unit, circuit_right, circuit_length_m }) => {
    if (circuit_right !== false || unit?.kind === "plug_in") return undefined;
    const cable_m = circuit_length_m === undefined ? STICK_m : withCutting_m(circuit_length_m);
    return [some("cable-10-awg", cable_m), some("breaker-30-a"), some("disconnect"), some("whip")];
  },
  source: { basis: "published", document: "NEC", edition: "2023", section: "422.13; the circuit topic sizes it" },
  cases: {
    fires: [
      {
        name: "sixty feet from the panel",
        site: { circuit_right: false, circuit_length_m: toBase(60, "ft") },
        brings: [some("cable-10-awg", toBase(66, "ft")), some("breaker-30-a"), some("disconnect"), some("whip")],
      },
    ],
    silent: [{ name: "the circuit is right", site: { circuit_right: true } }],
  },
};
