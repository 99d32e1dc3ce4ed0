import type { caution } from "../../../cautions/water/very-hard-water.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "El agua muy dura llena de sarro elementos, válvula de alivio y mezcladora, más si se guarda caliente. Ofrezca tratamiento y una lavada al año.",
  show: "Foto de la tira junto a su escala; anote la fecha de lavado en el tanque.",
};
