import type { caution } from "../../../cautions/place/straps-too-few.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ straps, needed }) =>
    `${straps} of ${needed} straps are on. A full tank that tips breaks water and power lines; strap upper and lower third, large tanks in the middle too.`,
  show: "Photograph every strap with its screws in studs; measure their heights.",
};
