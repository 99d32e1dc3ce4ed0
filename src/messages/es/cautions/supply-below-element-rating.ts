import type { caution } from "../../../cautions/electrical/supply-below-element-rating.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ supply, rated, share }) =>
    `${supply} en un elemento de ${rated} da ${share} de su potencia. Es seguro pero lento: calcule así la recuperación, o pida elementos para ese voltaje.`,
  show: "Mida el voltaje en el calentador con carga; foto de la placa del elemento.",
};
