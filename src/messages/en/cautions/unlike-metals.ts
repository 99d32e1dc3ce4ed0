import type { caution } from "../../../cautions/piping/unlike-metals.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "Copper straight on steel rots the joint. Put a listed dielectric fitting or a brass piece between, and keep the bond around it.",
  show: "Photograph the fitting at both ports before insulation.",
};
