import type { caution } from "../../../cautions/electrical/wire-below-continuous-load.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ ampacity, design }) =>
    `El cable que hay lleva ${ampacity} por tabla, menos que los ${design} que cuenta una carga continua. Meta el calibre correcto.`,
  show: "Foto de lo impreso en el forro en las dos puntas.",
};
