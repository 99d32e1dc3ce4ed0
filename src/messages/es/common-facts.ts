import type { commonFacts as specs } from "../../declaration/common-facts.ts";
import type { FactTexts } from "../topic-texts.ts";

/** Palabras de los datos que comparten varios temas. */
export const commonFacts = {
  tank: {
    label: "Tanque",
    question: "¿Cuánta agua le cabe al tanque?",
    help: "Está en la placa del calentador, en galones.",
    words: ["tanque", "tamaño del tanque", "tamaño", "calentador", "boiler", "volumen del tanque"],
  },
  setpoint: {
    label: "Temperatura del tanque",
    question: "¿A qué temperatura está puesto el tanque?",
    help: "La que mantiene el termostato, o la más alta a la que puede llegar.",
    words: ["caliente", "agua caliente", "termostato", "almacenada", "almacenamiento", "puesto a"],
  },
  cold: {
    label: "Agua fría",
    question: "¿Qué tan fría llega el agua?",
    help: "Deje correr el agua fría un minuto y mida. Cuenta más la semana más fría del invierno.",
    words: ["fría", "agua fría", "entrada", "agua de entrada", "agua de la calle"],
  },
  line_pressure: {
    label: "Presión de línea",
    question: "¿Qué presión de agua hay con todo cerrado?",
    help: "Léala con un manómetro en el lado frío, cerca del calentador, sin agua corriendo.",
    words: ["presión de línea", "línea", "presión", "presión estática", "presión de la casa", "presión de la calle"],
  },
  relief_setting: {
    label: "Ajuste de la válvula de alivio",
    question: "¿A qué presión abre la válvula de alivio?",
    help: "Está grabado en la etiqueta de la válvula; por lo común 150 psi.",
    words: ["alivio", "válvula de alivio", "ajuste de alivio", "presión de alivio"],
  },
  closed: {
    label: "Sistema cerrado",
    question: "¿Hay una válvula check, un regulador de presión o un preventor de reflujo antes del calentador?",
    help: "Con uno de estos, el agua no puede regresar a la calle cuando crece.",
    words: ["cerrado", "sistema cerrado", "válvula check", "regulador de presión", "preventor de reflujo"],
  },
  mixing_valve: {
    label: "Válvula mezcladora",
    question: "¿Hay una válvula mezcladora entre el tanque y las llaves?",
    help: "Una válvula termostática en el calentador que le agrega agua fría.",
    words: ["válvula mezcladora", "mezcladora", "válvula termostática"],
  },
} as const satisfies { readonly [I in keyof typeof specs]: FactTexts };
