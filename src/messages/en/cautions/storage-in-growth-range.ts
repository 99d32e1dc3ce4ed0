import type { caution } from "../../../cautions/hygiene/storage-in-growth-range.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ storage, from, to }) =>
    `A tank at ${storage} lies where Legionella multiplies, ${from} to ${to}. Store hotter, with a mixing valve against scalding.`,
  show: "Read the thermostat and the top of the tank after recovery; write both down.",
};
