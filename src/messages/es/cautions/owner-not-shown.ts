import type { caution } from "../../../cautions/job/owner-not-shown.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "Muestre a la familia modos, temperatura, filtro, condensado, tubo de alivio, breaker y llave de paso. Si el tubo de alivio corre, que bajen el breaker y llamen.",
  show: "Que lo hagan una vez; foto de la etiqueta con los teléfonos.",
};
