import type { caution } from "../../../cautions/water/softened-water-eats-anode.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "Softened water uses the anode up sooner. Date its first look at one to two years, sooner than the sheet's plain case.",
  show: "Write the date on the tank; photograph the anode when it is out.",
};
