import type { caution } from "../../../cautions/electrical/supply-above-element-rating.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ supply, rated, share }) =>
    `No energice: ${supply} en un elemento de ${rated} da ${share} de su potencia. Ni cables ni termostatos son para eso.`,
  show: "Foto de la placa del elemento; mida el voltaje en el desconectador antes de conectar.",
};
