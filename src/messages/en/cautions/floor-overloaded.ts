import type { caution } from "../../../cautions/place/floor-overloaded.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ filled, allowed }) =>
    `Full, it weighs ${filled}; that spot is allowed ${allowed}. Move it or strengthen the floor before filling.`,
  show: "Photograph the joists or the platform from below, and who said what it bears.",
};
