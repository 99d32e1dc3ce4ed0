import type { caution } from "../../../cautions/piping/not-marked-lead-free.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ limit }) =>
    `A fitting for drinking water has no lead-free mark. Swap it for one that has; wetted parts may hold ${limit} lead at most.`,
  show: "Photograph the mark on valve, fitting or box.",
};
