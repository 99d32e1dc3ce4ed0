import type { caution } from "../../../cautions/piping/unlike-metals.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "Cobre directo en acero pudre la unión. Ponga en medio conexión dieléctrica listada o pieza de latón, y conserve el puente a tierra.",
  show: "Foto de la conexión en las dos bocas antes de aislar.",
};
