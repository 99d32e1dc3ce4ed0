import type { caution } from "../../../cautions/electrical/feeder-short.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ spare, design }) =>
    `Al panel o alimentador le sobran ${spare}; el calentador cuenta ${design}. Mande calcular la carga antes de poner el breaker.`,
  show: "Foto del panel, su principal y su directorio; guarde el cálculo.",
};
