import type { caution } from "../../../cautions/pressure/relief-discharge-ends-high.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ end, limit }) =>
    `The discharge pipe ends ${end} up, where it can scald a person; the code followed here asks for ${limit} or less. Bring it down, not to the floor.`,
  show: "Measure from the pipe's end to floor or rim; photograph the tape.",
};
