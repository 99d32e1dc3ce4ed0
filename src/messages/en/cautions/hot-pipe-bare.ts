import type { caution } from "../../../cautions/piping/hot-pipe-bare.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "The hot pipe is bare. Energy codes ask for R-3 on larger lines; wrap the first lengths of hot and cold, valves and relief left clear.",
  show: "Photograph the R mark on the wrap and the first lengths at the tank.",
};
