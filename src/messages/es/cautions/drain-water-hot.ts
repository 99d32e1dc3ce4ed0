import type { caution } from "../../../cautions/scald/drain-water-hot.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ storage, safe }) =>
    `El tanque por vaciar está a ${storage}. Corte la corriente, abra llaves calientes hasta bajar de ${safe} y vacíe con la manguera amarrada.`,
  show: "Mida el agua en la llave de drenado; foto del termómetro.",
};
