import type { caution } from "../../../cautions/pressure/line-pressure-high.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ pressure, limit }) =>
    `${pressure} pasa de ${limit}, lo que los códigos modelo permiten en una casa. Ponga un regulador; eso cierra el sistema y pide tanque de expansión.`,
  show: "Foto del manómetro cerca del calentador, sin agua corriendo, de noche si se puede.",
};
