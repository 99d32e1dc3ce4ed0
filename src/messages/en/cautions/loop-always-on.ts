import type { caution } from "../../../cautions/piping/loop-always-on.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "The loop runs day and night: it loses heat and stirs the tank, so the heat pump runs worse. Start it by button or sensor, stop it by temperature.",
  show: "Show that the pump starts on demand and stops when the return is warm.",
};
