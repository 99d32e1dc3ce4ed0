import type { caution } from "../../../cautions/place/wood-floor-unchecked.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ filled }) =>
    `${filled} full, on a wood floor. Look at span, rot and bounce from below; stand it near a wall across the joists, or ask an engineer.`,
  show: "Photograph the joists from below; write down size, spacing and span.",
};
