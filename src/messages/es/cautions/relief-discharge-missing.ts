import type { caution } from "../../../cautions/pressure/relief-discharge-missing.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "La válvula de alivio no tiene tubo de descarga: puede aventar vapor y agua hirviendo a una persona. Breaker abajo hasta que tenga tubo.",
  show: "Foto del tubo, de la válvula a su punta abierta cerca del piso.",
};
