import type { circuit } from "../../../topics/circuit.ts";
import type { TopicTexts } from "../../topic-texts.ts";

export const texts: TopicTexts<typeof circuit> = {
  title: "Circuito",
  summary: "Carga, breaker, conductor y caída de voltaje del calentador, con las tablas del NEC 2023.",
  examples: [
    "circuit 4500W a 208V, 60 ft",
    "circuit elemento 4500W, suministro 240V, tramo 100 ft, compresor 3 A, uno a la vez",
    "circuit 5500W 240V, aluminio, 80 ft, breaker 30 A",
  ],
  facts: {
    element: {
      label: "Elemento",
      question: "¿Qué potencia tiene un elemento, según su placa?",
      help: "Los elementos que se bloquean entre sí cuentan una vez. Ponga 0 si solo hay compresor.",
      words: ["elemento", "resistencia", "carga"],
    },
    supply: {
      label: "Voltaje de suministro",
      question: "¿Qué voltaje hay en el panel?",
      help: "Monofásico: 240 V en casi toda casa, 208 V de un servicio trifásico.",
      words: ["suministro", "voltaje", "alimentación"],
    },
    run: {
      label: "Tramo de cable",
      question: "¿Cuánto cable hay del panel al calentador, en un sentido?",
      help: "Omítalo y dejo fuera la caída de voltaje.",
      words: ["tramo", "tramo de cable", "distancia", "recorrido"],
    },
    rated_volts: {
      label: "Voltaje nominal del elemento",
      question: "¿Para qué voltaje es el elemento?",
      help: "Grabado en la brida del elemento o en la placa.",
      words: ["nominal", "voltaje nominal", "elemento para"],
    },
    compressor: {
      label: "Corriente del compresor",
      question: "¿Cuál es la corriente nominal del compresor?",
      help: "Amperes nominales (RLA) de la placa, con el ventilador.",
      words: ["compresor", "corriente del compresor", "bomba de calor"],
    },
    together: {
      label: "Elemento y compresor",
      question: "¿Pueden trabajar a la vez el elemento y el compresor?",
      help: "Lo dice el diagrama. Tomo los dos a la vez hasta que se sepa.",
      words: ["elemento y compresor"],
      options: {
        simultaneous: { label: "Los dos a la vez", words: ["simultáneo", "a la vez", "juntos"] },
        interlocked: { label: "Uno bloquea al otro", words: ["uno a la vez", "enclavados", "bloqueados"] },
      },
    },
    wire_metal: {
      label: "Metal del cable",
      question: "¿Cable de cobre o de aluminio?",
      words: ["metal del cable"],
      options: {
        copper: { label: "Cobre", words: ["cobre"] },
        aluminium: { label: "Aluminio", words: ["aluminio"] },
      },
    },
    column: {
      label: "Columna de temperatura",
      question: "¿Qué columna de temperatura de la tabla vale?",
      help: "60 °C, salvo que toda terminal marque más; el cable NM se queda en 60 °C.",
      words: ["columna", "terminales", "aislamiento"],
      options: {
        "60": { label: "60 °C", words: ["columna 60"] },
        "75": { label: "75 °C", words: ["columna 75"] },
        "90": { label: "90 °C", words: ["columna 90"] },
      },
    },
    wire: {
      label: "Cable que hay",
      question: "¿De qué calibre es el cable que hay?",
      help: "Está impreso en el forro del cable.",
      words: ["cable", "calibre", "conductor"],
      options: {
        "14": { label: "14 AWG", words: ["calibre 14"] },
        "12": { label: "12 AWG", words: ["calibre 12"] },
        "10": { label: "10 AWG", words: ["calibre 10"] },
        "8": { label: "8 AWG", words: ["calibre 8"] },
        "6": { label: "6 AWG", words: ["calibre 6"] },
        "4": { label: "4 AWG", words: ["calibre 4"] },
      },
    },
    breaker: {
      label: "Breaker que hay",
      question: "¿De cuánto es el breaker que hay?",
      words: ["breaker", "interruptor", "pastilla", "fusible"],
    },
  },
  results: {
    element_power_at_volts: "Elemento con este voltaje",
    element_resistance: "Resistencia del elemento",
    load_current: "Carga",
    design_current: "Contada como continua, 125 %",
    breaker_range: "Breaker para la carga",
    conductor: "Conductor más delgado",
    conductor_breaker_limit: "Breaker máximo del conductor",
    voltage_drop: "Caída de voltaje",
    voltage_drop_share: "Caída de voltaje, porcentaje",
    element_power_behind_wire: "Elemento al final de ese cable",
  },
  findings: {
    overpowered: ({ power, rated, supply }) =>
      `No conecte: con ${supply} el elemento de ${rated} da ${power}. Ponga un elemento para ese voltaje.`,
    plan: ({ conductor, smallest, largest }) =>
      smallest === largest
        ? `Según la tabla: ${conductor} con breaker de ${smallest}.`
        : `Según la tabla: ${conductor} con breaker de ${smallest}, a lo más ${largest}.`,
    beyond_table: ({ design }) => `${design} pasa de la tabla hasta 4 AWG. Este circuito lo calcula un electricista.`,
    wire_too_thin: ({ wire, design, conductor }) =>
      `${wire} es muy delgado para ${design}. Según la tabla va ${conductor}; no use el cable viejo.`,
    breaker_outside: ({ breaker, smallest, largest }) =>
      smallest === largest
        ? `El breaker de ${breaker} no queda: la carga y el conductor piden ${smallest}.`
        : `El breaker de ${breaker} no queda: la carga y el conductor piden ${smallest}, a lo más ${largest}.`,
    element_slower: ({ power, rated, share }) =>
      `El elemento de ${rated} da aquí ${power}, ${share} de su placa. Calienta más lento en esa proporción.`,
    conductor_caps_breaker: ({ conductor, limit }) =>
      `${conductor} permite un breaker de ${limit} a lo más, aunque la carga permita otro.`,
    drop_high: ({ share, advised, conductor, better }) =>
      `Se pierde ${share} en el cable, más del ${advised} recomendado. Con ${conductor} queda en ${better}.`,
    drop_beyond_table: ({ share, advised }) =>
      `Se pierde ${share} en el cable, más del ${advised} recomendado. Ni 4 AWG alcanza: acorte el tramo.`,
    motor_in_load: ({ compressor }) =>
      `Con compresor (${compressor}) decide la placa del equipo: ampacidad mínima del circuito y breaker máximo.`,
    compressor_left_out: () =>
      "No se cuenta compresor. Si es bomba de calor, deme sus amperes nominales (RLA) de la placa.",
    ninety_needs_terminals: () =>
      "La columna de 90 °C solo vale si todas las terminales son de 90 °C; casi todas marcan 60 o 75 °C.",
    plate_wins: () => "Si la placa del equipo marca breaker o circuito, manda la placa y no esta tabla.",
    electrician_decides: () =>
      "Decide y conecta un electricista con licencia. Bloquee y compruebe que no hay voltaje antes de tocar.",
    wire_not_made: ({ wire }) =>
      `La tabla no tiene ${wire} AWG en aluminio: empieza en 12. Elija otro calibre o cobre.`,
    step_seventy_five: () => "Con terminales de 75 °C",
  },
};
