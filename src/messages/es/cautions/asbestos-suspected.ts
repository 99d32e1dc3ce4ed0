import type { caution } from "../../../cautions/job/asbestos-suspected.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "El forro o ducto viejo puede tener asbesto. No lo corte, raspe ni mueva; deje el cuarto cerrado y que alguien con licencia tome muestra.",
  show: "Foto desde donde está; guarde la hoja del laboratorio.",
};
