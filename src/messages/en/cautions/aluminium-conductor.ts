import type { caution } from "../../../cautions/electrical/aluminium-conductor.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "Aluminum wire needs terminals and splices marked for it, joint compound and the right torque. Never twist it to copper under a plain wire nut.",
  show: "Photograph the AL marking on terminals and splices; write down the torque.",
};
