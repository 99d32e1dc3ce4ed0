import type { caution } from "../../../cautions/place/strap-near-controls.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ gap, limit }) =>
    `The lower strap sits ${gap} over the controls; ${limit} is asked for, so that covers open and nothing is crushed.`,
  show: "Photograph the tape between strap and controls.",
};
