import type { caution } from "../../../cautions/piping/drain-valve-missing.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "No hay cómo vaciar el tanque, y nadie lo puede enjuagar ni cambiar seguro. Ponga llave de drenado abajo, con lugar para manguera.",
  show: "Foto de la llave con la manguera puesta.",
};
