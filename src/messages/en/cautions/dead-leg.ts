import type { caution } from "../../../cautions/hygiene/dead-leg.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () => "An unused hot branch holds lukewarm water where bacteria grow. Cut it back to the line that flows.",
  show: "Photograph the cut and capped tee at the main line.",
};
