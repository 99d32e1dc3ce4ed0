import type { caution } from "../../../cautions/scald/fixtures-not-limited.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "The mixing valve at the tank does not protect a bather by itself. Showers and tubs still need valves of their own with a limit stop.",
  show: "Photograph the marks on the shower and tub valves; measure each fully hot.",
};
