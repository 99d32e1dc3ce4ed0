import type { caution } from "../../../cautions/pressure/precharge-off.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ precharge, line }) =>
    `The expansion tank holds ${precharge} of air; the line has ${line}. Set the air to the line pressure with the water side open.`,
  show: "Measure the air with the tank drained of pressure; write down both readings.",
};
