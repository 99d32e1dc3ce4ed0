import type { caution } from "../../../cautions/fuel/gas-line-to-cap.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "Sale un calentador de gas: cierre su gas, tape la línea hermética y pruébela antes que nada. Lo hace alguien calificado en gas.",
  show: "Jabón en el tapón con presión; foto sin burbujas.",
};
