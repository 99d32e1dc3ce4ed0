import type { caution } from "../../../cautions/place/floor-overloaded.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ filled, allowed }) =>
    `Lleno pesa ${filled}; ese lugar aguanta ${allowed}. Cámbielo de lugar o refuerce el piso antes de llenarlo.`,
  show: "Foto de vigas o base desde abajo, y anote quién dijo cuánto aguanta.",
};
