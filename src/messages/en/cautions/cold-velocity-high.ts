import type { caution } from "../../../cautions/piping/cold-velocity-high.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ velocity, limit }) =>
    `Cold water at ${velocity} is over the advised ${limit}: expect noise and water hammer. Use a larger pipe or less flow.`,
  show: "Measure the flow with a bucket and a watch; note pipe kind and size.",
};
