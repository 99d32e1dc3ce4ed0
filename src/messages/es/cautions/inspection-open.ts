import type { caution } from "../../../cautions/job/inspection-open.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "La inspección sigue abierta. Deje a la vista tubo de alivio, flejes y cableado hasta que firme el inspector.",
  show: "Foto de la tarjeta firmada; anote la fecha de cierre en el trabajo.",
};
