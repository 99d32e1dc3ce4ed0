import type { caution } from "../../../cautions/air/outdoor-lines-may-freeze.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "El agua sale hasta la bomba de calor y se congela si se va la luz. Aísle sin huecos, ponga cable calefactor o autodrenado, y llaves de vaciado.",
  show: "Foto de aislamiento, cable y llaves; enseñe a la familia cómo vaciar.",
};
