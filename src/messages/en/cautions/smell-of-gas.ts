import type { caution } from "../../../cautions/fuel/smell-of-gas.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "Get everybody out now. No switch, no flame, no phone indoors; leave the door open and call the gas company from outside.",
  show: "Work goes on only when the gas company or fire department says so; note who and when.",
};
