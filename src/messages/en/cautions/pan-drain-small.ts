import type { caution } from "../../../cautions/drainage/pan-drain-small.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ drain, limit }) => `The pan drain is ${drain}; ${limit} or more is asked for, full size to its end.`,
  show: "Photograph the print on the drain pipe at both ends.",
};
