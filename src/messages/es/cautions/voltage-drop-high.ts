import type { caution } from "../../../cautions/electrical/voltage-drop-high.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ drop, advised }) =>
    `Se pierde ${drop} del voltaje en el circuito; se aconseja ${advised} o menos. Es consejo, no regla: un cable más grueso ayuda.`,
  show: "Mida el voltaje en panel y calentador con el elemento prendido.",
};
