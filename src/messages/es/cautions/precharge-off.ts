import type { caution } from "../../../cautions/pressure/precharge-off.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ precharge, line }) =>
    `El tanque de expansión tiene ${precharge} de aire; la línea tiene ${line}. Iguale el aire a la línea con el lado del agua abierto.`,
  show: "Mida el aire con el tanque sin presión de agua; anote las dos lecturas.",
};
