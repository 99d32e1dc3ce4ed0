import type { caution } from "../../../cautions/job/permit-missing.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () => "There is no permit for this job. Pull it before work starts; plumbing and electrical may need one each.",
  show: "Photograph the permit; write its number in the job.",
};
