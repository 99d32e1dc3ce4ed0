import type { caution } from "../../../cautions/hygiene/storage-below-hygiene-advice.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ storage, delivered, stored }) =>
    `At ${storage} Legionella survives. Health advice is ${stored} in the tank and ${delivered} at the tap; ask whether anyone is frail. A hotter tank needs a mixing valve.`,
  show: "Read the thermostat; note who lives there and what was agreed.",
};
