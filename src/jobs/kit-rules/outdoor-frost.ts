import { type KitRule, some, TRADE } from "../kit-rule.ts";

export const rule: KitRule = {
  id: "outdoor_frost",
  asks: ["freezes"],
  parts: ({ unit, freezes, outdoor_lines }) => {
    const isOutdoors = unit?.kind === "split" || outdoor_lines === "bare";
    return freezes === true && isOutdoors ? [some("snow-stand"), some("heat-trace")] : undefined;
  },
  source: TRADE,
  cases: {
    fires: [
      {
        name: "water lines outdoors where it freezes",
        site: { freezes: true, outdoor_lines: "bare" },
        brings: [some("snow-stand"), some("heat-trace")],
      },
    ],
    silent: [
      { name: "no lines outdoors", site: { freezes: true, outdoor_lines: "none" } },
      { name: "it never freezes", site: { freezes: false, outdoor_lines: "bare" } },
    ],
  },
};
