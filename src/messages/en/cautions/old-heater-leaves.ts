import type { caution } from "../../../cautions/job/old-heater-leaves.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "The old heater leaves the house: drained, off at the source, to a recycler. Scale makes it heavier than its plate says.",
  show: "Photograph the empty spot and the recycler's receipt.",
};
