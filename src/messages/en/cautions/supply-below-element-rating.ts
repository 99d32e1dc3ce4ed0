import type { caution } from "../../../cautions/electrical/supply-below-element-rating.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ supply, rated, share }) =>
    `${supply} on a ${rated} element gives ${share} of its power. It is safe but slow: count recovery with that, or order elements for the supply.`,
  show: "Measure volts at the heater under load; photograph the element's rating.",
};
