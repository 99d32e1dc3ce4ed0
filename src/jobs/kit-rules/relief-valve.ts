import { type KitRule, some } from "../kit-rule.ts";

export const rule: KitRule = {
  id: "relief_valve",
  asks: ["relief"],
  parts: ({ relief }) => (relief === "missing" || relief === "plugged" ? [some("relief-valve")] : undefined),
  source: { basis: "from_memory", document: "ANSI Z21.22", section: "210 F, at most 150 psi" },
  cases: {
    fires: [
      { name: "none on the unit", site: { relief: "missing" }, brings: [some("relief-valve")] },
      { name: "one that cannot open", site: { relief: "plugged" }, brings: [some("relief-valve")] },
    ],
    silent: [{ name: "fitted by the factory", site: { relief: "fitted" } }],
  },
};
