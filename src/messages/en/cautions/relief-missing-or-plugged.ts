import type { caution } from "../../../cautions/pressure/relief-missing-or-plugged.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "Breaker off and keep clear. A tank without a working relief valve can burst. Fit or replace the valve before any heat.",
  show: "Photograph the valve, its tag and the open end of its pipe.",
};
