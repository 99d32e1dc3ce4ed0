import type { caution } from "../../../cautions/drainage/condensate-pump-without-float.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "Si falla la bomba de condensado el equipo no se detiene y el vaso se derrama. Corte la corriente y conecte el flotador como dice la hoja.",
  show: "Levante el flotador: la bomba de calor debe parar; grábelo.",
};
