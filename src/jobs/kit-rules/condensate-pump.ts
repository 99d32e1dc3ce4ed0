import { type KitRule, some } from "../kit-rule.ts";

export const rule: KitRule = {
  id: "condensate_pump",
  asks: ["condensate"],
  parts: ({ condensate }) =>
    condensate === "pump" || condensate === "nowhere" ? [some("condensate-pump"), some("condensate-tube")] : undefined,
  source: { basis: "published", document: "IMC", edition: "2021", section: "307.2" },
  cases: {
    fires: [
      {
        name: "it must be lifted",
        site: { condensate: "pump" },
        brings: [some("condensate-pump"), some("condensate-tube")],
      },
      { name: "nowhere to run by itself", site: { condensate: "nowhere" } },
    ],
    silent: [{ name: "it falls to a drain", site: { condensate: "drain_with_air_gap" } }],
  },
};
