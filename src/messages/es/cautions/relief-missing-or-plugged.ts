import type { caution } from "../../../cautions/pressure/relief-missing-or-plugged.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "Baje el breaker y aléjese. Un tanque sin válvula de alivio que trabaje puede reventar. Ponga o cambie la válvula antes de calentar.",
  show: "Foto de la válvula, su etiqueta y la punta abierta de su tubo.",
};
