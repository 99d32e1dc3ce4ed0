import type { caution } from "../../../cautions/air/bedroom-wall.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "It shares a wall with a bedroom, and the compressor hums through studs. Move it, or stand it on pads with flexible last lengths off the wall.",
  show: "Photograph pads and flexible lengths; have the household listen before you leave.",
};
