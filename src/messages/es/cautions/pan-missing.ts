import type { caution } from "../../../cautions/drainage/pan-missing.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () => "Una fuga ahí dañaría la casa y no hay charola. Ponga una charola bajo el tanque antes de llenarlo.",
  show: "Foto de la charola con el tanque puesto.",
};
