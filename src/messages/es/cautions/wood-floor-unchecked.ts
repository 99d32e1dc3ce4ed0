import type { caution } from "../../../cautions/place/wood-floor-unchecked.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ filled }) =>
    `${filled} lleno, sobre piso de madera. Revise claro, pudrición y rebote desde abajo; póngalo junto al muro cruzando las vigas, o pregunte a un ingeniero.`,
  show: "Foto de las vigas desde abajo; anote medida, separación y claro.",
};
