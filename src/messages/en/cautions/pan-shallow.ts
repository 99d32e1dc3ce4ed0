import type { caution } from "../../../cautions/drainage/pan-shallow.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ depth, limit }) =>
    `The pan is ${depth} deep; ${limit} or more is asked for. Change it before the tank stands in it.`,
  show: "Photograph the tape against the inside of the rim.",
};
