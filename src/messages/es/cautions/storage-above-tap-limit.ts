import type { caution } from "../../../cautions/scald/storage-above-tap-limit.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ storage, limit, time }) =>
    `El agua guardada a ${storage} quema a un adulto en ${time} o menos. Tinas y regaderas tienen límite de ${limit}: muestre la válvula mezcladora o los topes.`,
  show: "Mida tina y regadera con la manija en lo más caliente; anote la lectura.",
};
