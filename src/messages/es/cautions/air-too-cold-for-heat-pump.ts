import type { caution } from "../../../cautions/air/air-too-cold-for-heat-pump.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ low, lowest }) =>
    `El cuarto baja a ${low}; con menos de ${lowest} la bomba de calor descansa y calientan las resistencias. Acuerde ese gasto, o un lugar más tibio.`,
  show: "Lea un termómetro de mínima una semana; anote lo acordado.",
};
