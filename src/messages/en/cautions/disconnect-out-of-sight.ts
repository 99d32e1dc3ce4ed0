import type { caution } from "../../../cautions/electrical/disconnect-out-of-sight.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () => "No disconnect in sight of the heater. Fit one within sight, or a lock on the breaker that stays there.",
  show: "Photograph the disconnect from the heater, or the lock bracket on the breaker.",
};
