import type { caution } from "../../../cautions/refrigerant/flammable-refrigerant.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "The plate shows a flammable refrigerant. No flame or spark near it, air the room, do not braze on it, and heed the smallest room of its sheet.",
  show: "Photograph plate, warning mark and the vent or open door.",
};
