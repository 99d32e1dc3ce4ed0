import type { caution } from "../../../cautions/pressure/expansion-tank-cut-off.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "Una válvula check separa el calentador de su tanque de expansión. Pase el tanque al lado del calentador, después de toda check, también las de mezcladora y recirculación.",
  show: "Siga las flechas del calentador al tanque de expansión; foto de cada una.",
};
