import type { caution } from "../../../cautions/piping/backflow-not-stopped.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "Drinking water is joined to water nobody drinks. Fit the backflow preventer that the hazard asks for; it closes the system, so add expansion control.",
  show: "Photograph the preventer's tag and its last test.",
};
