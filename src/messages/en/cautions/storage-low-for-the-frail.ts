import type { caution } from "../../../cautions/hygiene/storage-low-for-the-frail.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ storage, stored }) =>
    `Mixing valve first: hotter storage scalds. Frail people live there and the tank holds ${storage}; health advice is ${stored}. Let household and doctor choose.`,
  show: "Write down who decided, the setting and the tap reading after the valve.",
};
