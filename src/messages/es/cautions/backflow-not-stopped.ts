import type { caution } from "../../../cautions/piping/backflow-not-stopped.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "El agua potable está unida a agua que nadie toma. Ponga el preventor de reflujo que pida el riesgo; cierra el sistema, así que agregue control de expansión.",
  show: "Foto de la etiqueta del preventor y su última prueba.",
};
