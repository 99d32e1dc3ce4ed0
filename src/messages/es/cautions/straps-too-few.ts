import type { caution } from "../../../cautions/place/straps-too-few.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ straps, needed }) =>
    `Tiene ${straps} de ${needed} flejes. Un tanque lleno que se voltea rompe agua y corriente; sujete tercio alto y bajo, y también en medio los grandes.`,
  show: "Foto de cada fleje con sus pijas en el montante; mida las alturas.",
};
