import type { caution } from "../../../cautions/piping/loop-always-on.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "La recirculación corre día y noche: pierde calor y revuelve el tanque, y la bomba de calor rinde menos. Arránquela con botón o sensor y párela por temperatura.",
  show: "Muestre que la bomba arranca al pedirla y para con el retorno tibio.",
};
