import type { caution } from "../../../cautions/place/garage-sparks-low.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ limit }) =>
    `El vapor de gasolina queda en el piso del garaje. Suba lo que echa chispa a ${limit} o más, o muestre en la hoja que puede ir más bajo.`,
  show: "Foto de la cinta del piso al elemento o relé más bajo, o la página de la hoja.",
};
