import type { caution } from "../../../cautions/electrical/feeder-short.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ spare, design }) =>
    `Panel or feeder can spare ${spare}; the heater counts ${design}. Have the load worked out before a breaker goes in.`,
  show: "Photograph the panel, its main and its directory; keep the load sheet.",
};
