import type { caution } from "../../../cautions/scald/public-lavatory-hot.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ tap, limit }) =>
    `${tap} at a lavatory for the public is over ${limit}. Fit or set a limiting device at the fixture, listed to ASSE 1070.`,
  show: "Measure at the lavatory, fully hot, after two minutes; photograph the thermometer.",
};
