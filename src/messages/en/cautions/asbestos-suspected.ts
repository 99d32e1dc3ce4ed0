import type { caution } from "../../../cautions/job/asbestos-suspected.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "Old wrap or vent may hold asbestos. Do not cut, scrape or move it; leave the room shut and have a licensed person sample it.",
  show: "Photograph it from where you stand; keep the lab's sheet.",
};
