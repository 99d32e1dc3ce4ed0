import type { caution } from "../../../cautions/scald/fixtures-not-limited.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "La válvula mezcladora del tanque no protege sola a quien se baña. Regaderas y tinas necesitan su propia válvula con tope.",
  show: "Foto de las marcas en válvulas de regadera y tina; mida cada una a todo caliente.",
};
