import type { caution } from "../../../cautions/air/bedroom-wall.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "Comparte muro con una recámara, y el compresor zumba por los montantes. Muévalo, o póngalo en cojines con tramos flexibles sin tocar el muro.",
  show: "Foto de cojines y flexibles; que la familia escuche antes de irse.",
};
