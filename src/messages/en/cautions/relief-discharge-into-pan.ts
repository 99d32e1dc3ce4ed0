import type { caution } from "../../../cautions/pressure/relief-discharge-into-pan.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ family }) =>
    `The relief pipe ends in the pan. The ${family} adopted here forbids that, though the IPC allows it. Give it a run of its own to a drain or outdoors.`,
  show: "Photograph where the relief pipe ends.",
};
