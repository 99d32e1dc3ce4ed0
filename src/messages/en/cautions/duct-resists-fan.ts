import type { caution } from "../../../cautions/air/duct-resists-fan.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ drop, allowed }) =>
    `The ducts take ${drop} and the fan has ${allowed}: less air, frost and noise. Go up a size, straighten the flex, cut elbows.`,
  show: "Measure static pressure at both collars; photograph the stretched duct.",
};
