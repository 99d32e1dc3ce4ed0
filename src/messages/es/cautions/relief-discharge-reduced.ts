import type { caution } from "../../../cautions/pressure/relief-discharge-reduced.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ pipe, outlet }) =>
    `El tubo de descarga se reduce a ${pipe}; la salida de la válvula es de ${outlet}. Lleve la medida completa hasta la punta.`,
  show: "Foto de lo impreso en el tubo junto a la salida de la válvula.",
};
