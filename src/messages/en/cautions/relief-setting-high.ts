import type { caution } from "../../../cautions/pressure/relief-setting-high.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ setting, limit }) =>
    `A relief valve set at ${setting} is over ${limit} and may be over the tank's rating. Do not run the heater: replace the valve, never adjust it.`,
  show: "Photograph the valve's tag and the tank's rated working pressure.",
};
