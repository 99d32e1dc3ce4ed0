import type { caution } from "../../../cautions/drainage/condensate-flat.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ slope, limit }) =>
    `La línea de condensado baja ${slope}; se pide ${limit} o más. En una línea plana se quedan agua y baba.`,
  show: "Ponga el nivel en cada tramo; foto de la burbuja.",
};
