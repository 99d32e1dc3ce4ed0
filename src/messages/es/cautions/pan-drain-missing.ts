import type { caution } from "../../../cautions/drainage/pan-drain-missing.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "La charola no tiene drenaje y solo aguanta una fuga chica. Lleve un drenaje por gravedad a un receptor o afuera.",
  show: "Eche agua en la charola; foto de la punta por donde sale.",
};
