import { declareCaution } from "../caution.ts";

export const caution = declareCaution({
  id: "bedroom_wall",
  severity: "should",
  cites: [
    {
      basis: "published",
      document: "ENERGY STAR heat pump water heater guide, FAQ",
      edition: "2024",
      section: "keep away from bedrooms; 45 to 55 dBA",
      checkedOn: "2026-11-25",
    },
    {
      basis: "published",
      document: "Efficiency Maine, heat pump water heaters",
      section: "sound suits basements rather than living space",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "household",
  data: {},
  check: ({ isOnBedroomWall }) => (isOnBedroomWall === true ? {} : undefined),
  examples: {
    fires: [{ name: "shares a wall with a bedroom", site: { isOnBedroomWall: true } }],
    silent: [
      { name: "away from bedrooms", site: { isOnBedroomWall: false } },
      { name: "not known", site: { room: "closet" } },
    ],
  },
});
