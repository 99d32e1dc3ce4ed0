import type { caution } from "../../../cautions/piping/drain-valve-missing.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "There is no way to drain the tank, so nobody can flush or change it safely. Fit a drain valve low, with room for a hose.",
  show: "Photograph the valve with a hose on it.",
};
