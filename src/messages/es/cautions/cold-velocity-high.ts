import type { caution } from "../../../cautions/piping/cold-velocity-high.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ velocity, limit }) =>
    `El agua fría a ${velocity} pasa de ${limit}, lo recomendado: habrá ruido y golpe de ariete. Use tubo más grande o menos flujo.`,
  show: "Mida el flujo con cubeta y reloj; anote tipo y medida del tubo.",
};
