import type { caution } from "../../../cautions/piping/loop-without-check.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "The return has no check valve: cold water runs backwards into the hot taps. Fit one, arrow to the heater, expansion tank on the heater's side.",
  show: "Pump off, hot tap open: the return pipe must not turn cold.",
};
