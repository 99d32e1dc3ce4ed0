import type { caution } from "../../../cautions/hygiene/storage-low-for-the-frail.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ storage, stored }) =>
    `Primero la válvula mezcladora: guardar más caliente quema. Hay gente delicada y el tanque está a ${storage}; salud aconseja ${stored}. Que decidan familia y médico.`,
  show: "Anote quién decidió, el ajuste y la lectura en la llave después de la válvula.",
};
