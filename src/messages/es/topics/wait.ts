import type { wait } from "../../../topics/wait.ts";
import type { TopicTexts } from "../../topic-texts.ts";
import { commonFacts } from "../common-facts.ts";

const sizes = {
  "3/8": { label: "3/8 in", words: ["3/8", "3/8 de pulgada"] },
  "1/2": { label: "1/2 in", words: ["1/2", "media pulgada", "de media"] },
  "5/8": { label: "5/8 in", words: ["5/8"] },
  "3/4": { label: "3/4 in", words: ["3/4", "tres cuartos"] },
  "1": { label: "1 in", words: ["una pulgada", "1 pulgada"] },
  "1-1/4": { label: "1-1/4 in", words: ["1-1/4", "pulgada y cuarto"] },
} as const;

export const texts: TopicTexts<typeof wait> = {
  title: "Espera del agua caliente",
  summary: "Cuánto tarda en llegar el agua caliente, cuánta se desperdicia y qué tan rápido corre.",
  examples: [
    "wait 3/4 in cobre L 50 ft 2 gpm",
    "wait PEX 1/2, largo 50 ft, flujo 2 gpm",
    "wait cobre M 3/4, 40 ft, 2 gpm, branch_size=1/2 branch_length=10ft",
  ],
  facts: {
    pipe: {
      label: "Tubería",
      question: "¿Qué tubería es?",
      help: "La letra del cobre va impresa en el tubo: K verde, L azul, M rojo.",
      words: ["tubería", "tubo", "material"],
      options: {
        copper_k: { label: "Cobre K", words: ["cobre k", "tipo k", "cobre tipo k"] },
        copper_l: { label: "Cobre L", words: ["cobre l", "tipo l", "cobre tipo l", "cobre"] },
        copper_m: { label: "Cobre M", words: ["cobre m", "tipo m", "cobre tipo m"] },
        pex: { label: "PEX", words: ["pex"] },
        cpvc: { label: "CPVC", words: ["cpvc"] },
      },
    },
    size: { label: "Medida del tubo", question: "¿De qué medida nominal?", words: ["medida"], options: sizes },
    length: {
      label: "Largo",
      question: "¿Cuánto tubo hay del calentador a la llave?",
      help: "Por el tubo, no en línea recta.",
      words: ["largo", "distancia", "tramo"],
    },
    flow: {
      label: "Flujo",
      question: "¿Cuánta agua da la llave?",
      help: "Llene una cubeta 15 segundos y multiplique por 4, o lea la regadera.",
      words: ["flujo", "caudal", "regadera"],
    },
    water: {
      label: "Línea",
      question: "¿Línea caliente o fría?",
      words: ["línea"],
      options: {
        hot: { label: "Línea caliente", words: ["tubo de caliente"] },
        cold: { label: "Línea fría", words: ["tubo de fría"] },
      },
    },
    setpoint: commonFacts.setpoint,
    cold: commonFacts.cold,
    branch_size: {
      label: "Medida del ramal",
      question: "¿De qué medida es el ramal a la llave?",
      words: ["medida del ramal"],
      options: sizes,
    },
    branch_length: {
      label: "Largo del ramal",
      question: "¿Qué largo tiene el ramal?",
      words: ["ramal", "largo del ramal"],
    },
  },
  results: {
    pipe_volume: "Agua en el tubo",
    wait_time: "Espera mínima",
    wait_time_likely: "Espera probable",
    volume_wasted: "Se tira cada vez",
    velocity: "Velocidad",
    pressure_drop: "Fricción en tubo recto",
  },
  findings: {
    waits: ({ time, volume, likely }) =>
      `El agua caliente tarda al menos ${time}, más bien ${likely}: en el tubo hay ${volume}.`,
    cold_run: ({ velocity, drop }) => `El agua corre a ${velocity} y pierde ${drop} en el tubo recto.`,
    plug_flow_is_least: () =>
      "La espera mínima supone que nada se mezcla. Con poco flujo o piso frío puede ser el doble (de memoria).",
    straight_pipe_only: () =>
      "La fricción es de tubo recto. Conexiones, válvulas y altura van aparte; las conexiones PEX son angostas.",
    size_not_made: ({ size }) => `Esa tubería no está en mi tabla en ${size}. Elija otra medida u otra tubería.`,
    branch_incomplete: () => "Un ramal lleva medida y largo: branch_size=1/2 branch_length=10ft.",
    step_smaller: ({ size, time }) => `${size} in: ${time}`,
  },
};
