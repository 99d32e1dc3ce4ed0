import type { caution } from "../../../cautions/place/attic-access.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "In an attic: step only on a solid walkway, watch for heat, nails and wires. Opening, floor, light and outlet are asked for at the unit.",
  show: "Photograph opening, walkway, light and outlet from the ladder.",
};
