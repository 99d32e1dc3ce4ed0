import type { caution } from "../../../cautions/scald/tap-above-limit.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ tap, limit }) =>
    `${tap} en la llave pasa de ${limit}, lo más que piden los códigos modelo en tinas y regaderas. Ajuste la válvula más baja.`,
  show: "Mida en tina y regadera con la válvula ajustada; foto del termómetro.",
};
