import type { caution } from "../../../cautions/pressure/relief-discharge-ends-high.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ end, limit }) =>
    `El tubo de descarga termina a ${end} de alto, donde puede quemar a alguien; el código de aquí pide ${limit} o menos. Bájelo sin llegar al piso.`,
  show: "Mida de la punta del tubo al piso o borde; foto de la cinta.",
};
