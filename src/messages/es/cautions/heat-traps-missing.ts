import type { caution } from "../../../cautions/piping/heat-traps-missing.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "El agua caliente sube sola por tubos rectos toda la noche. Ponga trampas de calor en las dos bocas, con flechas bien, o curvas de tubo hacia abajo.",
  show: "Foto de flechas o curvas; toque los tubos una hora después de usar.",
};
