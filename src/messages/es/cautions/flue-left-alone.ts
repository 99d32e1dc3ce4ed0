import type { caution } from "../../../cautions/fuel/flue-left-alone.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "Lo que queda en esa chimenea puede ser chico para ella y derramar gases. Selle la entrada vieja y mande revisar la chimenea.",
  show: "Foto de la entrada sellada; anote la prueba de tiro de lo que queda y quién la hizo.",
};
