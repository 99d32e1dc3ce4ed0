import type { caution } from "../../../cautions/place/laid-on-its-side.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "El equipo llegó acostado y el aceite pudo salirse del compresor. Párelo y espere lo que diga su hoja antes de arrancar la bomba de calor.",
  show: "Anote la hora en que se paró y la hora del primer arranque.",
};
