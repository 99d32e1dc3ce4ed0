import type { caution } from "../../../cautions/hygiene/water-stood-long.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ stood }) =>
    `The water has stood for ${stood}. Heat the tank fully, then flush every hot tap with the window open, without breathing the spray.`,
  show: "Measure the far tap until it is hot and steady; write down time and temperature.",
};
