import type { caution } from "../../../cautions/electrical/power-before-water.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "Water before power: an element in air burns out in seconds. Keep the breaker off until every hot tap runs solid for three minutes.",
  show: "Film a hot tap running without spitting, then turn the breaker on.",
};
