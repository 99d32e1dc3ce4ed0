import type { caution } from "../../../cautions/place/heavy-to-lift.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ unit, person }) =>
    `El equipo pesa ${unit} vacío, mucho más que ${person} para una espalda. Dos personas y diablo para escaleras con correas, nadie abajo en la escalera.`,
  show: "Foto del diablo y correas listos antes de bajar el equipo de la camioneta.",
};
