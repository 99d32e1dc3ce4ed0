import type { caution } from "../../../cautions/air/room-too-small.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ volume, needed, openings }) =>
    `${volume} of air where ${needed} is wanted: the unit chills its own air and falls back on elements. Open ${openings} net free, high and low, or duct it.`,
  show: "Measure the room three ways; photograph the grilles and their free-area label.",
};
