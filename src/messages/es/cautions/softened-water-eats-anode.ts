import type { caution } from "../../../cautions/water/softened-water-eats-anode.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "El agua suavizada se come antes el ánodo. Ponga fecha de revisión a uno o dos años, antes de lo normal en la hoja.",
  show: "Anote la fecha en el tanque; foto del ánodo cuando salga.",
};
