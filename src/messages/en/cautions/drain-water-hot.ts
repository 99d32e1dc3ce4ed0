import type { caution } from "../../../cautions/scald/drain-water-hot.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ storage, safe }) =>
    `The tank to be drained holds ${storage}. Power off, run hot taps until it cools under ${safe}, then drain with the hose end tied down.`,
  show: "Measure the water at the drain valve; photograph the thermometer.",
};
