import type { caution } from "../../../cautions/place/strap-near-controls.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ gap, limit }) =>
    `El fleje bajo está a ${gap} arriba de los controles; se piden ${limit}, para que abran las tapas y nada se aplaste.`,
  show: "Foto de la cinta entre el fleje y los controles.",
};
