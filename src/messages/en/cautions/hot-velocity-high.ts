import type { caution } from "../../../cautions/piping/hot-velocity-high.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ velocity, limit }) =>
    `Hot water at ${velocity} is over the advised ${limit}: it is noisy and wears copper. Use a larger pipe or less flow.`,
  show: "Measure the flow with a bucket and a watch; note pipe kind and size.",
};
