import type { caution } from "../../../cautions/electrical/wet-place.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "Wet place: never work standing in water. Boxes and conduit for wet places, and ask the electrician where ground-fault protection is due.",
  show: "Press the test button; photograph covers, fittings and the device.",
};
