import type { caution } from "../../../cautions/place/doorway-too-narrow.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ unit, passage }) =>
    `The unit is ${unit} wide and the way in narrows to ${passage}. Take the door and stops off, or choose another unit, before it leaves the shop.`,
  show: "Photograph the tape in the narrowest spot on the way, and on the stairs.",
};
