import type { commonFacts as specs } from "../../declaration/common-facts.ts";
import type { FactTexts, OptionTexts } from "../topic-texts.ts";

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
  people: {
    label: "Personas",
    question: "¿Cuántas personas viven ahí?",
    help: "Cuente a todos los que se bañan ahí en un día normal.",
    words: ["personas", "habitantes", "gente", "familia de"],
  },
  bedrooms: {
    label: "Recámaras",
    question: "¿Cuántas recámaras tiene la casa?",
    help: "Solo si no se sabe cuánta gente hay; se toma la gente usual para esas recámaras.",
    words: ["recámaras", "recámara", "dormitorios", "habitaciones"],
  },
  bathrooms: {
    label: "Baños",
    question: "¿Cuántos cuartos tienen regadera o tina?",
    help: "Tantas personas se pueden bañar a la vez.",
    words: ["baños", "baños completos", "regaderas a la vez"],
  },
  model: {
    label: "Modelo",
    question: "¿Qué modelo del catálogo?",
    help: "Su nombre corto en el catálogo de la empresa, como hollin-80.",
    words: ["modelo"],
  },
  wanted: {
    label: "Deseada en las llaves",
    question: "¿Qué tan caliente debe salir en regaderas y llaves?",
    help: "Mezclada en la llave. Las regaderas van cerca de 105 °F; el límite en tinas y regaderas es 120 °F.",
    words: ["deseada", "en la llave", "temperatura de regadera"],
  },
  place: {
    label: "Lugar",
    question: "¿En qué lugar?",
    help: "Un lugar de los libros de la empresa. De ahí salen el agua fría y el aire junto al calentador.",
    words: ["lugar", "pueblo", "ciudad"],
  },
  air: {
    label: "Aire junto al calentador",
    question: "¿Qué tan caliente está el aire donde está el calentador?",
    help: "La bomba de calor toma de ahí su calor. Cuentan más los meses fríos.",
    words: ["aire", "aire del cuarto", "temperatura del aire", "temperatura del cuarto", "ambiente"],
  },
  month: {
    label: "Mes",
    question: "¿En qué mes?",
    words: ["mes"],
    options: {
      "1": { label: "Enero", words: ["ene"] },
      "2": { label: "Febrero", words: [] },
      "3": { label: "Marzo", words: [] },
      "4": { label: "Abril", words: ["abr"] },
      "5": { label: "Mayo", words: [] },
      "6": { label: "Junio", words: [] },
      "7": { label: "Julio", words: [] },
      "8": { label: "Agosto", words: ["ago"] },
      "9": { label: "Septiembre", words: ["septiembre"] },
      "10": { label: "Octubre", words: [] },
      "11": { label: "Noviembre", words: [] },
      "12": { label: "Diciembre", words: ["dic"] },
    },
  },
  mode: {
    label: "Modo",
    question: "¿En qué modo trabaja?",
    help: "La pantalla del equipo usa sus propios nombres; elija lo que hace.",
    words: ["modo", "modo de operación"],
    options: {
      heat_pump_only: { label: "Solo bomba de calor", words: ["bomba de calor sola"] },
      heat_pump_first: { label: "Primero la bomba de calor", words: ["bomba de calor con respaldo", "híbrido"] },
      both_together: { label: "Las dos fuentes juntas", words: ["ambas fuentes"] },
      elements_only: { label: "Solo resistencias", words: ["solo elementos"] },
    },
  },
  supply: {
    label: "Voltaje de suministro",
    question: "¿Qué voltaje hay en el equipo?",
    help: "240 V en casi toda casa, 208 V de un servicio trifásico, 120 V en equipos de enchufe.",
    words: ["suministro", "voltaje", "alimentación"],
  },
  rate: {
    label: "Tarifa eléctrica",
    question: "¿La electricidad cuesta lo mismo a toda hora?",
    help: "Está en el recibo de luz. Los precios son los de los libros de la empresa.",
    words: ["tarifa", "plan de precios", "tarifa eléctrica"],
    options: {
      flat: { label: "Tarifa fija", words: ["fija", "mismo precio todo el día"] },
      time_of_use: { label: "Tarifa horaria", words: ["horaria", "por horario", "precio por hora"] },
    },
  },
} as const satisfies {
  readonly [I in keyof typeof specs]: FactTexts & { readonly options?: Readonly<Record<string, OptionTexts>> };
};
