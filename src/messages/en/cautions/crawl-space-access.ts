import type { caution } from "../../../cautions/place/crawl-space-access.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "Under the house: air it, look for live wires, standing water and animals, and never go alone. The unit wants a dry base and a clear way.",
  show: "Photograph the way in, the base over the ground, light and outlet.",
};
