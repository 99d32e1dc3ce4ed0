import type { caution } from "../../../cautions/fuel/gas-line-open.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "La línea vieja de gas no tiene tapón. Cierre el gas ya, sin flama ni apagadores; alguien calificado en gas pone tapón roscado y prueba.",
  show: "Jabón en cada unión con presión; foto del tapón sin burbujas.",
};
