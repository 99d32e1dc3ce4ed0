import type { caution } from "../../../cautions/air/breathes-its-own-air.ts";
import type { CautionTexts } from "../../topic-texts.ts";

export const texts: CautionTexts<typeof caution.data> = {
  ask: ({ colder }) =>
    `El aire de la entrada está ${colder} más frío que el cuarto: jala su propia salida. Desvíe la salida o sepárelas con un ducto.`,
  show: "Mida la entrada y el cuarto a un metro, con media hora trabajando; anote las dos.",
};
