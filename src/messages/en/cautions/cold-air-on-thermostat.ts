import type { caution } from "../../../cautions/air/cold-air-on-thermostat.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ distance, limit }) =>
    `The cold exhaust is ${distance} from a room thermostat; ${limit} or more keeps it from fooling the furnace. Turn the exhaust or move the thermostat.`,
  show: "Photograph the way the air blows and the tape to the thermostat.",
};
