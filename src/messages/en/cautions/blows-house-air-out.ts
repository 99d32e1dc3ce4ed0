import type { caution } from "../../../cautions/air/blows-house-air-out.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "The unit blows house air outdoors and outdoor air leaks in for it. Duct the intake too, and ask for fireplaces and gas vents.",
  show: "Photograph both terminals outdoors; note every flue in the house.",
};
