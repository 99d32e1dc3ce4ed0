import type { caution } from "../../../cautions/drainage/condensate-into-pan.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "Condensate runs into the safety pan: it trips leak sensors and hides a real leak. Give it a line of its own.",
  show: "Photograph the dry pan after an hour of running.",
};
