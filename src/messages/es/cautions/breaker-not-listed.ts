import type { caution } from "../../../cautions/electrical/breaker-not-listed.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "La etiqueta del panel no incluye ese breaker: puede entrar y aun así arquear. Use uno que la etiqueta nombre.",
  show: "Foto de la etiqueta del panel y de la marca del breaker.",
};
