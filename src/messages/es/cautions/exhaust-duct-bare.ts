import type { caution } from "../../../cautions/air/exhaust-duct-bare.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "El ducto frío de salida está desnudo y va a sudar. Aíslelo con la barrera de vapor por fuera y uniones encintadas.",
  show: "Foto del ducto forrado y las uniones encintadas, de punta a punta.",
};
