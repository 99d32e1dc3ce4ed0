import type { caution } from "../../../cautions/drainage/condensate-nowhere.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "La bomba de calor gotea todo el día y no hay por dónde sacar esa agua. Planee gravedad a un lugar aprobado, o una bomba.",
  show: "Eche un litro en el puerto de drenaje; foto de por dónde sale.",
};
