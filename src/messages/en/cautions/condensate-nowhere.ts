import type { caution } from "../../../cautions/drainage/condensate-nowhere.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "The heat pump drips water all day and there is no route for it. Plan gravity to an approved place, or a pump.",
  show: "Pour a quart into the drain port; photograph where it comes out.",
};
