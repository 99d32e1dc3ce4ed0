import type { caution } from "../../../cautions/pressure/relief-discharge-missing.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "The relief valve has no discharge pipe: it can throw steam and scalding water at a person. Breaker off until the pipe is on.",
  show: "Photograph the pipe from the valve to its open end near the floor.",
};
