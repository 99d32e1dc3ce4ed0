import type { caution } from "../../../cautions/drainage/pan-drain-small.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ drain, limit }) =>
    `El drenaje de la charola es de ${drain}; se piden ${limit} o más, de medida completa hasta la punta.`,
  show: "Foto de lo impreso en el tubo en las dos puntas.",
};
