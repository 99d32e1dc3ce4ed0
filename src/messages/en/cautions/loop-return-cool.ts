import type { caution } from "../../../cautions/piping/loop-return-cool.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ loop, advised }) =>
    `The loop comes back at ${loop}; ${advised} is advised where frail people live, so that bacteria do not grow. Insulate, balance, or store hotter behind a mixing valve.`,
  show: "Measure the return pipe under its insulation after ten minutes of pumping.",
};
