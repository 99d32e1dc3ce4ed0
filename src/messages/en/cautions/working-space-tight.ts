import type { caution } from "../../../cautions/electrical/working-space-tight.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ depth, width }) =>
    `The space to work before panel or disconnect is tight: ${depth} deep and ${width} wide are asked for. Move the heater or clear the space.`,
  show: "Photograph the tape before the panel, deep and wide.",
};
