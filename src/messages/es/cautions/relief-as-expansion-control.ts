import type { caution } from "../../../cautions/pressure/relief-as-expansion-control.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "La válvula de alivio es la última seguridad, no control de expansión. Al gotear se tapa de sarro. Ponga control de expansión y cambie la válvula.",
  show: "Sin goteo en un calentamiento completo; foto de la punta seca del tubo de descarga.",
};
