import type { caution } from "../../../cautions/scald/occupants-burn-sooner.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ tap, advised }) =>
    `${tap} at the tap, and children or frail people live there: thin skin burns sooner. Offer ${advised} at tub and shower by the stops there, not by a cooler tank.`,
  show: "Measure tub and shower fully hot with the household watching; write down the reading.",
};
