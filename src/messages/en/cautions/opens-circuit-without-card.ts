import type { caution } from "../../../cautions/refrigerant/opens-circuit-without-card.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "Gauges on count as opening the circuit, and only a certified person may. Stop there and call one; burns by cold and pressure come with it.",
  show: "Photograph the card of whoever does it, and the recovery record.",
};
