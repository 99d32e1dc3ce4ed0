import type { caution } from "../../../cautions/piping/heat-traps-missing.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "Hot water creeps up straight risers all night. Fit heat traps in both ports, arrows right, or loops of pipe that dip.",
  show: "Photograph the arrows or the loops; feel the risers an hour after use.",
};
