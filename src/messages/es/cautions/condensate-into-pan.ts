import type { caution } from "../../../cautions/drainage/condensate-into-pan.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "El condensado cae en la charola: dispara los sensores y esconde una fuga de verdad. Dele su propia línea.",
  show: "Foto de la charola seca después de una hora trabajando.",
};
