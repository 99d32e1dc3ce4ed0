import type { caution } from "../../../cautions/place/air-side-too-close.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ clearance, needed }) =>
    `Hay ${clearance} frente a la entrada o salida de aire; con ${needed} o más respira bien. Muy cerca, jala su propio aire frío.`,
  show: "Foto de la cinta entre la rejilla y el muro.",
};
