import type { caution } from "../../../cautions/place/laid-on-its-side.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "The unit came lying down, and oil may have left the compressor. Stand it up and wait as long as its sheet says before the heat pump runs.",
  show: "Write down the hour it was stood up and the hour of the first start.",
};
