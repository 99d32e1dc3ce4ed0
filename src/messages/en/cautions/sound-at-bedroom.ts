import type { caution } from "../../../cautions/air/sound-at-bedroom.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ sound, quiet }) =>
    `${sound} is expected at the bedroom; ${quiet} is advised at night. Move it, shut a door, or set quiet hours with the household's word.`,
  show: "Measure with a phone at the pillow, unit on and off; write down both.",
};
