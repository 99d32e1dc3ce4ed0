import type { caution } from "../../../cautions/pressure/line-pressure-high.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ pressure, limit }) =>
    `${pressure} is over the ${limit} that model codes allow in a house. Fit a regulator; that closes the system and calls for an expansion tank.`,
  show: "Photograph the gauge near the heater, no water running, at a quiet hour of the night if you can.",
};
