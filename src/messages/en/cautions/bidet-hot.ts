import type { caution } from "../../../cautions/scald/bidet-hot.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ tap, limit }) =>
    `${tap} at the bidet is over ${limit}. Set its limiting device lower, or fit one listed to ASSE 1070.`,
  show: "Measure at the bidet, fully hot; photograph the thermometer.",
};
