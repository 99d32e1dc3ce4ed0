import type { caution } from "../../../cautions/piping/hot-velocity-high.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ velocity, limit }) =>
    `El agua caliente a ${velocity} pasa de ${limit}, lo recomendado: hace ruido y desgasta el cobre. Use tubo más grande o menos flujo.`,
  show: "Mida el flujo con cubeta y reloj; anote tipo y medida del tubo.",
};
