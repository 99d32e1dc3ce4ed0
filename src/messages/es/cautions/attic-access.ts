import type { caution } from "../../../cautions/place/attic-access.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "En un ático: pise solo pasillo firme, cuidado con calor, clavos y cables. Junto al equipo se piden entrada, piso, luz y contacto.",
  show: "Foto de entrada, pasillo, luz y contacto desde la escalera.",
};
