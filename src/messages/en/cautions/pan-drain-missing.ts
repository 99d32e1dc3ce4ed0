import type { caution } from "../../../cautions/drainage/pan-drain-missing.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () => "The pan has no drain, so it holds only a small leak. Run a drain by gravity to a receptor or outdoors.",
  show: "Pour water into the pan; photograph it running out at the end.",
};
