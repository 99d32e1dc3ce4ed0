import type { caution } from "../../../cautions/place/air-side-too-close.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ clearance, needed }) =>
    `${clearance} before intake or exhaust; ${needed} or more lets it breathe. Too close, it draws its own cold air.`,
  show: "Photograph the tape between the grille and the wall.",
};
