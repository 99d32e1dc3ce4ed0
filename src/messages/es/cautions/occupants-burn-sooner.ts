import type { caution } from "../../../cautions/scald/occupants-burn-sooner.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ tap, advised }) =>
    `${tap} en la llave, y viven ahí niños o gente delicada: la piel delgada se quema antes. Ofrezca ${advised} en tina y regadera con sus topes, no con un tanque más frío.`,
  show: "Mida tina y regadera a todo caliente delante de la familia; anote la lectura.",
};
