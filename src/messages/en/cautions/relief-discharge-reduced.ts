import type { caution } from "../../../cautions/pressure/relief-discharge-reduced.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ pipe, outlet }) =>
    `The discharge pipe narrows to ${pipe}; the valve's outlet is ${outlet}. Keep the full size to the open end.`,
  show: "Photograph the pipe's print and the valve's outlet together.",
};
