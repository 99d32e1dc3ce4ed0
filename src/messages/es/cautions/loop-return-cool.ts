import type { caution } from "../../../cautions/piping/loop-return-cool.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ loop, advised }) =>
    `El retorno llega a ${loop}; se aconsejan ${advised} donde hay gente delicada, pues más tibio crecen bacterias. Aísle, balancee, o guarde más caliente con mezcladora.`,
  show: "Mida el retorno bajo el aislamiento con diez minutos de bombeo.",
};
