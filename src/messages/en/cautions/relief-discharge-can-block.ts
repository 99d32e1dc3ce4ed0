import type { caution } from "../../../cautions/pressure/relief-discharge-can-block.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "Water can stand in the discharge pipe or somebody can cap it. Run it downhill all the way, with no trap, valve, tee or threaded end.",
  show: "Photograph the whole run with a level on it, and the plain end.",
};
