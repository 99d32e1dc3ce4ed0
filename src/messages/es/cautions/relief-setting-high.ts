import type { caution } from "../../../cautions/pressure/relief-setting-high.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ setting, limit }) =>
    `Una válvula de alivio de ${setting} pasa de ${limit} y quizá de lo que aguanta el tanque. No lo haga trabajar: cambie la válvula, nunca la ajuste.`,
  show: "Foto de la etiqueta de la válvula y de la presión de trabajo del tanque.",
};
