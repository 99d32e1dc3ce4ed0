import type { caution } from "../../../cautions/electrical/wire-below-continuous-load.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ ampacity, design }) =>
    `The wire there carries ${ampacity} by table, less than the ${design} that a continuous load counts. Pull the right size.`,
  show: "Photograph the print on the cable jacket at both ends.",
};
