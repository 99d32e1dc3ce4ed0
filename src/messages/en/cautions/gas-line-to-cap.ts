import type { caution } from "../../../cautions/fuel/gas-line-to-cap.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "A gas heater comes out: shut its gas, cap the line gastight and test it before anything else. A gas-qualified person does that.",
  show: "Soap the cap at working pressure; photograph it without bubbles.",
};
