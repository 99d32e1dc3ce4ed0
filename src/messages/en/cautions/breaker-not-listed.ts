import type { caution } from "../../../cautions/electrical/breaker-not-listed.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () => "The panel's label does not list that breaker: it may fit and still arc. Use one that the label names.",
  show: "Photograph the panel's label and the breaker's marking.",
};
