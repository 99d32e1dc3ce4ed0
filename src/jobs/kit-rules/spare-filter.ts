import { type KitRule, some } from "../kit-rule.ts";

export const rule: KitRule = {
  id: "spare_filter",
  asks: [],
  parts: ({ unit }) => (unit?.kind === "resistance" || unit?.kind === "split" ? undefined : [some("air-filter")]),
  source: { basis: "published", document: "ENERGY STAR heat pump water heater guide", section: "installation" },
  cases: { fires: [{ name: "every unit that breathes indoors", site: {}, brings: [some("air-filter")] }], silent: [] },
};
