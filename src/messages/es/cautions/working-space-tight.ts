import type { caution } from "../../../cautions/electrical/working-space-tight.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ depth, width }) =>
    `Falta espacio para trabajar frente al panel o desconectador: se piden ${depth} de fondo y ${width} de ancho. Mueva el calentador o libere el espacio.`,
  show: "Foto de la cinta frente al panel, de fondo y de ancho.",
};
