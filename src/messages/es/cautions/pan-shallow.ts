import type { caution } from "../../../cautions/drainage/pan-shallow.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ depth, limit }) =>
    `La charola tiene ${depth} de fondo; se piden ${limit} o más. Cámbiela antes de parar el tanque.`,
  show: "Foto de la cinta contra el borde por dentro.",
};
