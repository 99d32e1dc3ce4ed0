import type { caution } from "../../../cautions/job/inspection-open.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "The inspection is still open. Leave relief pipe, straps and wiring where they can be seen until the inspector signs.",
  show: "Photograph the signed card; write the closing date in the job.",
};
