import type { caution } from "../../../cautions/piping/shut-off-missing.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "The cold line has no shut-off at the heater. Fit a full-port valve within reach, and none on the relief side.",
  show: "Close it, open a hot tap, show that the flow stops.",
};
