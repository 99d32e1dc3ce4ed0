import type { caution } from "../../../cautions/air/air-too-cold-for-heat-pump.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ low, lowest }) =>
    `The room falls to ${low}; under ${lowest} the heat pump rests and the elements heat. Agree on that bill, or on a warmer spot.`,
  show: "Read a minimum thermometer for a week; write down what was agreed.",
};
