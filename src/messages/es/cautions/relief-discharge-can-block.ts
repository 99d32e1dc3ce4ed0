import type { caution } from "../../../cautions/pressure/relief-discharge-can-block.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "En el tubo de descarga puede quedarse agua o alguien lo puede tapar. Llévelo siempre de bajada, sin trampa, válvula, te ni rosca en la punta.",
  show: "Foto de todo el tubo con el nivel puesto, y de la punta lisa.",
};
