import type { caution } from "../../../cautions/place/filter-out-of-reach.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "The air filter cannot be pulled out where the unit stands. Turn it or move the pipe, or nobody will ever clean it.",
  show: "Pull the filter right out, and film it.",
};
