import type { caution } from "../../../cautions/hygiene/water-stood-long.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ stood }) =>
    `El agua lleva ${stood} parada. Caliente el tanque por completo y enjuague cada llave con la ventana abierta, sin respirar el rocío.`,
  show: "Mida la llave más lejana hasta que salga caliente y pareja; anote hora y temperatura.",
};
