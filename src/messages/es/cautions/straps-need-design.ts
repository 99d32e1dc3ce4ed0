import type { caution } from "../../../cautions/place/straps-need-design.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ tank, limit }) =>
    `${tank} pasa de ${limit}, lo más que los flejes comunes sujetan según la guía. Pregunte al inspector qué anclaje quiere.`,
  show: "Foto del plano aceptado y del anclaje como quedó.",
};
