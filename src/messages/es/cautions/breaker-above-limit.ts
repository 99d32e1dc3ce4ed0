import type { caution } from "../../../cautions/electrical/breaker-above-limit.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ breaker, largest }) =>
    `Un breaker de ${breaker} pasa de ${largest}, lo más que permiten carga y conductor por tabla. El cable puede quemarse antes de que dispare.`,
  show: "Foto del breaker, de lo impreso en el cable y de la placa del equipo.",
};
