import type { caution } from "../../../cautions/piping/hot-pipe-bare.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "El tubo caliente está desnudo. Los códigos de energía piden R-3 en líneas grandes; forre los primeros tramos de caliente y fría, sin tapar válvulas ni alivio.",
  show: "Foto de la marca R del forro y de los primeros tramos en el tanque.",
};
