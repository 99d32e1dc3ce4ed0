import type { caution } from "../../../cautions/place/doorway-too-narrow.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ unit, passage }) =>
    `El equipo mide ${unit} de ancho y el paso se cierra a ${passage}. Quite puerta y topes, o escoja otro equipo, antes de salir del taller.`,
  show: "Foto de la cinta en lo más angosto del camino, y en la escalera.",
};
