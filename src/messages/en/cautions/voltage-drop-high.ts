import type { caution } from "../../../cautions/electrical/voltage-drop-high.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ drop, advised }) =>
    `${drop} of the voltage is lost on the branch; the advice is ${advised} or less. It is advice, not a rule: thicker wire helps.`,
  show: "Measure volts at panel and heater with the element on.",
};
