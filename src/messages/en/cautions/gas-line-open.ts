import type { caution } from "../../../cautions/fuel/gas-line-open.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "The old gas line has no cap. Shut the gas off now, no flame or switch; a gas-qualified person caps it with a threaded cap and tests.",
  show: "Soap every joint at working pressure; photograph the cap without bubbles.",
};
