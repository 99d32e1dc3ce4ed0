import type { caution } from "../../../cautions/pressure/closed-without-expansion-control.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "The system is closed and nothing takes up the growth of the water. Model codes ask for expansion control after the check valve or regulator.",
  show: "Photograph the expansion tank in place and its air charge on a gauge.",
};
