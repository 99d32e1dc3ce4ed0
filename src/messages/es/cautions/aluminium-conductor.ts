import type { caution } from "../../../cautions/electrical/aluminium-conductor.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "El cable de aluminio pide terminales y empalmes marcados para él, compuesto y el torque correcto. Nunca lo empalme con cobre en un conector común.",
  show: "Foto de la marca AL en terminales y empalmes; anote el torque.",
};
