import type { caution } from "../../../cautions/refrigerant/recover-before-scrap.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "The old unit holds refrigerant: do not cut or crush it. A certified person recovers it first, unless its plate says carbon dioxide.",
  show: "Keep the recovery record and the scrap yard's receipt.",
};
