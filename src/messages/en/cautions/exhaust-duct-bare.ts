import type { caution } from "../../../cautions/air/exhaust-duct-bare.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "The cold exhaust duct is bare and will sweat on what is below. Insulate it with the vapor jacket outside and seams taped.",
  show: "Photograph the wrapped duct and taped seams, end to end.",
};
