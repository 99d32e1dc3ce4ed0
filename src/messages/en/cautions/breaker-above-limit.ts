import type { caution } from "../../../cautions/electrical/breaker-above-limit.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ breaker, largest }) =>
    `A ${breaker} breaker is over ${largest}, the most that load and conductor allow by table. The wire could overheat before it trips.`,
  show: "Photograph the breaker, the wire's print and the unit's plate.",
};
