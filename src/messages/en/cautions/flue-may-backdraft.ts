import type { caution } from "../../../cautions/fuel/flue-may-backdraft.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "Blowing house air out can pull flue gas back in: carbon monoxide kills. Do not run it that way; duct the intake too, and have the draft tested.",
  show: "A trained person measures draft, spillage and carbon monoxide with every fan on; photograph the readings.",
};
