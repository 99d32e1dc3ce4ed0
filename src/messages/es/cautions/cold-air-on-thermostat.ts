import type { caution } from "../../../cautions/air/cold-air-on-thermostat.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ distance, limit }) =>
    `La salida fría está a ${distance} de un termostato del cuarto; con ${limit} o más no engaña a la calefacción. Gire la salida o mueva el termostato.`,
  show: "Foto de hacia dónde sopla y de la cinta al termostato.",
};
