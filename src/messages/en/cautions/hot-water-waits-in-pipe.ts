import type { caution } from "../../../cautions/piping/hot-water-waits-in-pipe.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ contents, limit }) =>
    `${contents} of hot water stands and cools in the pipe after each use; WaterSense asks for ${limit} or less. Shorten it or use a smaller pipe.`,
  show: "Catch the water in a bucket until it runs hot and measure it.",
};
