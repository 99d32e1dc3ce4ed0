import type { caution } from "../../../cautions/water/well-water-untested.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "Well water: ask for its last test of bacteria, iron, hardness and pH. Sulfur water with a magnesium anode smells of rotten eggs.",
  show: "Photograph the lab sheet or the test strip; note the pump's pressure band.",
};
