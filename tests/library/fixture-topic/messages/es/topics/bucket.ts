import type { TopicTexts } from "../../../../../../src/messages/topic-texts.ts";
import type { bucket } from "../../../topics/bucket.ts";

export const texts: TopicTexts<typeof bucket> = {
  title: "Cubeta",
  summary: "cuánto tarda en llenarse una cubeta",
  examples: ["cubeta tamaño 5 gal caudal 2 gpm"],
  facts: {
    size: { label: "Tamaño de la cubeta", question: "¿De qué tamaño es la cubeta?", words: ["tamaño"] },
    flow: { label: "Caudal", question: "¿Con qué caudal corre?", words: ["caudal"] },
    colour: {
      label: "Color",
      question: "¿De qué color es?",
      words: ["color"],
      options: { red: { label: "Roja", words: ["roja"] }, grey: { label: "Gris", words: ["gris"] } },
    },
  },
  results: { fill_time: "Tiempo de llenado" },
  findings: { fills: ({ time }) => `La cubeta se llena en ${time}.` },
};
