import type { caution } from "../../../cautions/electrical/bond-broken.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ bond }) =>
    `${bond} between hot, cold, tank and ground: a fault could leave a pipe live. Power off, then restore bond and jumper around unions.`,
  show: "Measure with power locked out; photograph clamps and meter.",
};
