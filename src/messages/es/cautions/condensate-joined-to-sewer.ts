import type { caution } from "../../../cautions/drainage/condensate-joined-to-sewer.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "La línea de condensado está pegada al drenaje: gas y aguas negras pueden regresar al serpentín. Termínela sobre un receptor con trampa, con espacio de aire.",
  show: "Foto del espacio entre la punta del tubo y el receptor.",
};
