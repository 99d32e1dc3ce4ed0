import type { caution } from "../../../cautions/air/blows-house-air-out.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "El equipo saca aire de la casa y entra aire de afuera por las rendijas. Lleve ducto también a la entrada, y pregunte por chimeneas y gas.",
  show: "Foto de las dos bocas afuera; anote cada chimenea de la casa.",
};
