import { type KitRule, some } from "../kit-rule.ts";

export const rule: KitRule = {
  id: "gas_cap",
  asks: ["replaces"],
  parts: ({ replaces }) => (replaces === "gas" ? [some("gas-cap"), some("leak-solution")] : undefined),
  source: { basis: "from_memory", document: "IFGC", section: "404, 406" },
  cases: {
    fires: [
      { name: "a gas tank comes out", site: { replaces: "gas" }, brings: [some("gas-cap"), some("leak-solution")] },
    ],
    silent: [{ name: "an electric tank comes out", site: { replaces: "electric" } }],
  },
};
