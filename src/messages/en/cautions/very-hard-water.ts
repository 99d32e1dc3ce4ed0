import type { caution } from "../../../cautions/water/very-hard-water.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "Very hard water scales elements, relief valve and mixing valve, more so when stored hot. Offer treatment and date a flush every year.",
  show: "Photograph the test strip beside its chart; write the flush date on the tank.",
};
