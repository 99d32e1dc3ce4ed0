import type { caution } from "../../../cautions/refrigerant/flammable-refrigerant.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "La placa indica refrigerante inflamable. Sin flama ni chispa cerca, ventile, no suelde en él, y respete el cuarto mínimo de su hoja.",
  show: "Foto de placa, marca de aviso y la ventilación o puerta abierta.",
};
