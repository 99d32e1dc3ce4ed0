import type { caution } from "../../../cautions/electrical/breaker-below-continuous-load.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ breaker, design }) =>
    `Un breaker de ${breaker} es menos que la carga continua contada al 125 %, ${design}. Se disparará en recuperaciones largas; calcúlelo de nuevo.`,
  show: "Foto del breaker y de la placa del equipo.",
};
