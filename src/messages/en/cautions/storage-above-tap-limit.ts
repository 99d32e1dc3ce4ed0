import type { caution } from "../../../cautions/scald/storage-above-tap-limit.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ storage, limit, time }) =>
    `Water stored at ${storage} burns adult skin within ${time}. Tubs and showers are limited to ${limit}: show the mixing valve or the limit stops.`,
  show: "Measure tub and shower with the handle fully hot; write down the reading.",
};
