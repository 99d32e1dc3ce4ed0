import type { caution } from "../../../cautions/piping/not-marked-lead-free.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ limit }) =>
    `Una pieza para agua potable no trae marca sin plomo. Cámbiela por una que la traiga; lo mojado puede llevar ${limit} de plomo a lo más.`,
  show: "Foto de la marca en válvula, conexión o caja.",
};
