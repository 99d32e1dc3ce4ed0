import { type KitRule, some } from "../kit-rule.ts";

export const rule: KitRule = {
  id: "open_flue",
  asks: ["replaces", "shared_flue"],
  parts: ({ replaces, shared_flue }) => (replaces === "gas" || shared_flue === true ? [some("flue-cap")] : undefined),
  source: { basis: "published", document: "Standard Work Specifications", section: "7.8102.8b" },
  cases: {
    fires: [
      { name: "a boiler stays on the flue", site: { shared_flue: true }, brings: [some("flue-cap")] },
      { name: "the gas tank was alone on it", site: { replaces: "gas", shared_flue: false } },
    ],
    silent: [{ name: "nothing burned there", site: { replaces: "electric", shared_flue: false } }],
  },
};
