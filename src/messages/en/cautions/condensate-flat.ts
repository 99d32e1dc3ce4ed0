import type { caution } from "../../../cautions/drainage/condensate-flat.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ slope, limit }) =>
    `The condensate line falls ${slope}; ${limit} or more is asked for. Water and slime stand in a flat line.`,
  show: "Put a level on every length; photograph the bubble.",
};
