import type { caution } from "../../../cautions/place/no-room-to-service.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ space, limit }) =>
    `${space} of level floor before the controls; ${limit} both ways is asked for. Turn the unit or clear the space.`,
  show: "Photograph the tape on the floor, both ways.",
};
