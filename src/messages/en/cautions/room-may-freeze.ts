import type { caution } from "../../../cautions/air/room-may-freeze.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ low }) =>
    `The room falls to ${low}: a frozen relief pipe cannot save the tank, and condensate and cold lines burst. Warm the room, trace the lines or move it.`,
  show: "Read a minimum thermometer in the coldest week; photograph heat trace and insulation.",
};
