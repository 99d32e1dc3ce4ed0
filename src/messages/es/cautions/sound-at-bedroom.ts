import type { caution } from "../../../cautions/air/sound-at-bedroom.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ sound, quiet }) =>
    `Se esperan ${sound} en la recámara; de noche se aconsejan ${quiet}. Muévalo, cierre una puerta, o fije horas de silencio de acuerdo con la familia.`,
  show: "Mida con el teléfono en la almohada, prendido y apagado; anote las dos.",
};
