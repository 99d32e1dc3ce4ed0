import type { caution } from "../../../cautions/scald/hot-storage-without-mixing-valve.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ storage, time }) =>
    `Stored at ${storage} without a mixing valve: tap water burns adult skin within ${time}. Fit a mixing valve before use, or turn the tank down.`,
  show: "Photograph the valve and its listing mark; measure the nearest tap after two minutes.",
};
