import type { caution } from "../../../cautions/air/outdoor-lines-may-freeze.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "Water runs outdoors to the heat pump and freezes when the power fails. Insulate without gaps, add heat trace or drain-back, and drain valves.",
  show: "Photograph insulation, heat trace and drain valves; show the household how to drain.",
};
