import type { caution } from "../../../cautions/place/garage-sparks-low.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ limit }) =>
    `Gasoline vapor lies on garage floors. Raise what sparks to ${limit} or more, or show in the sheet that the unit may stand lower.`,
  show: "Photograph the tape from floor to lowest element or relay, or the page of the sheet.",
};
