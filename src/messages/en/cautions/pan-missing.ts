import type { caution } from "../../../cautions/drainage/pan-missing.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () => "A leak there would harm the building and there is no pan. Set a pan under the tank before it is filled.",
  show: "Photograph the pan with the tank in it.",
};
