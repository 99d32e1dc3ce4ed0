import type { caution } from "../../../cautions/scald/tap-above-limit.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ tap, limit }) =>
    `${tap} at the tap is over ${limit}, the most that model codes ask for at tubs and showers. Set the valve lower.`,
  show: "Measure at tub and shower after the valve is set; photograph the thermometer.",
};
