import type { caution } from "../../../cautions/electrical/power-before-water.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: () =>
    "Primero agua, luego corriente: un elemento en seco se quema en segundos. Deje el breaker abajo hasta que cada llave caliente corra pareja tres minutos.",
  show: "Grabe una llave caliente sin escupir aire, luego suba el breaker.",
};
