import type { caution } from "../../../cautions/refrigerant/opens-circuit-without-card.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "Poner manómetros ya es abrir el circuito, y solo puede alguien certificado. Pare ahí y llámelo; hay quemadura por frío y presión.",
  show: "Foto de la credencial de quien lo hace, y del registro de recuperación.",
};
