import type { caution } from "../../../cautions/pressure/expansion-tank-cut-off.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "A check valve cuts the heater off from its expansion tank. Move the tank to the heater's side of every check, also those in mixing valves and loops.",
  show: "Trace the arrows from the heater to the expansion tank; photograph each one.",
};
