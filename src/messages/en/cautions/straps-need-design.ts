import type { caution } from "../../../cautions/place/straps-need-design.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ tank, limit }) =>
    `${tank} is over ${limit}, the most that ready-made straps are meant for by the guideline. Ask the inspector what bracing is wanted.`,
  show: "Photograph the drawing that was accepted and the bracing as built.",
};
