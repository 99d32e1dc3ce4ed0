import type { caution } from "../../../cautions/water/well-water-untested.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "Agua de pozo: pida el último análisis de bacterias, hierro, dureza y pH. Agua con azufre y ánodo de magnesio huele a huevo podrido.",
  show: "Foto del análisis o de la tira; anote el rango de presión de la bomba.",
};
