import type { caution } from "../../../cautions/place/no-headroom-for-anode.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ headroom, needed }) =>
    `${headroom} over the unit, and anode or filter need ${needed}. Choose a lower unit, another spot or a jointed anode.`,
  show: "Measure from the top of the unit to the lowest thing above; photograph the tape.",
};
