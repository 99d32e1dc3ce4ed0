import type { caution } from "../../../cautions/job/permit-missing.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "Este trabajo no tiene permiso. Sáquelo antes de empezar; plomería y electricidad pueden pedir uno cada una.",
  show: "Foto del permiso; anote su número en el trabajo.",
};
