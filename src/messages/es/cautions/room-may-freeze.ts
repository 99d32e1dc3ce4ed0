import type { caution } from "../../../cautions/air/room-may-freeze.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ low }) =>
    `El cuarto baja a ${low}: un tubo de alivio congelado no salva el tanque, y condensado y fría revientan. Caliente el cuarto, ponga cable calefactor o cambie de lugar.`,
  show: "Lea un termómetro de mínima en la semana más fría; foto de cable calefactor y aislamiento.",
};
