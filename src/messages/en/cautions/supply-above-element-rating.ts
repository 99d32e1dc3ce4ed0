import type { caution } from "../../../cautions/electrical/supply-above-element-rating.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ supply, rated, share }) =>
    `Do not energize: ${supply} on a ${rated} element gives ${share} of its power. Wires and thermostats are not built for it.`,
  show: "Photograph the element's rating; measure volts at the disconnect before connecting.",
};
