import type { caution } from "../../../cautions/job/old-heater-leaves.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "El calentador viejo sale de la casa: vacío, desconectado en el origen, al reciclaje. El sarro lo hace más pesado que su placa.",
  show: "Foto del lugar vacío y del recibo del reciclaje.",
};
