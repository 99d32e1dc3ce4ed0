import type { caution } from "../../../cautions/job/owner-not-shown.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "Show the household modes, temperature, filter, condensate, relief pipe, breaker and shut-off. If the relief pipe runs, breaker off and call.",
  show: "Let them do it once; photograph the label with the numbers to call.",
};
