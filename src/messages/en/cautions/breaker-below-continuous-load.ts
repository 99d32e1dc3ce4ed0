import type { caution } from "../../../cautions/electrical/breaker-below-continuous-load.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ breaker, design }) =>
    `A ${breaker} breaker is less than the continuous load counted at 125 %, ${design}. It will trip on long reheats; size it again.`,
  show: "Photograph the breaker's rating and the unit's plate.",
};
