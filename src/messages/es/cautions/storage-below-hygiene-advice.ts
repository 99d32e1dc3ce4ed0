import type { caution } from "../../../cautions/hygiene/storage-below-hygiene-advice.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ storage, delivered, stored }) =>
    `A ${storage} la Legionella sobrevive. Salud aconseja ${stored} en el tanque y ${delivered} en la llave; pregunte si hay alguien delicado. Un tanque más caliente pide válvula mezcladora.`,
  show: "Lea el termostato; anote quién vive ahí y qué se acordó.",
};
