import { type KitRule, some, TRADE } from "../kit-rule.ts";

export const rule: KitRule = {
  id: "quiet_feet",
  asks: ["floor", "bedroom_wall"],
  parts: ({ floor, bedroom_wall }) => (floor === "wood" || bedroom_wall === true ? [some("isolation-pad")] : undefined),
  source: TRADE,
  cases: {
    fires: [
      { name: "on a wood floor", site: { floor: "wood" }, brings: [some("isolation-pad")] },
      { name: "a bedroom behind the wall", site: { floor: "concrete", bedroom_wall: true } },
    ],
    silent: [{ name: "on concrete, far from beds", site: { floor: "concrete", bedroom_wall: false } }],
  },
};
