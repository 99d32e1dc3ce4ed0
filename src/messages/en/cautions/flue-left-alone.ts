import type { caution } from "../../../cautions/fuel/flue-left-alone.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "What stays on that flue may now be too small for it and spill. Seal the old opening and have the flue checked for the rest.",
  show: "Photograph the sealed opening; note the draft test of what remains, and by whom.",
};
