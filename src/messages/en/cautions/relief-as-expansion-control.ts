import type { caution } from "../../../cautions/pressure/relief-as-expansion-control.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "The relief valve is a last safety, not expansion control. Dripping scales it shut. Fit expansion control, then replace the valve.",
  show: "No drip through one full heating; photograph the dry end of the discharge pipe.",
};
