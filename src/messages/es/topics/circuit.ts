import type { circuit } from "../../../topics/circuit.ts";
import type { TopicTexts } from "../../topic-texts.ts";

export const texts: TopicTexts<typeof circuit> = {
  title: "Circuito",
  summary: "Carga, breaker, conductor y caída de voltaje del calentador, con las tablas del NEC 2023.",
  examples: [
    "circuit 4500W a 208V, 60 ft",
    "circuit elemento 4500W, suministro 240V, tramo 100 ft, compresor 3 A, uno a la vez",
    "circuit 5500W 240V, aluminio, 80 ft, breaker 30 A",
    "circuit 4500W 240V 150 ft, alimentador 100 A, feeder_load=70A drop_limit=2%",
    "circuit elemento 0W, suministro 120V, compresor 8 A, breaker 15 A, cochera",
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
    drop_limit: {
      label: "Caída permitida en el circuito",
      question: "¿Cuánto del voltaje se puede perder en el circuito?",
      help: "Las notas del código recomiendan 3 %. Es consejo, no regla.",
      words: ["caída permitida", "límite de caída"],
    },
    feeder: {
      label: "Alimentador o panel",
      question: "¿De cuánto es el alimentador o el panel?",
      help: "El breaker principal o del alimentador del que cuelga este circuito.",
      words: ["alimentador", "panel", "breaker principal", "subpanel"],
    },
    feeder_load: {
      label: "Carga que ya tiene",
      question: "¿Cuánta carga tiene ya ese alimentador o panel?",
      help: "De un cálculo de carga o un mes de lecturas, hecho por un electricista.",
      words: ["carga del panel", "carga del alimentador", "otras cargas"],
    },
    feeder_drop: {
      label: "Caída en el alimentador",
      question: "¿Cuánto del voltaje se pierde en el alimentador?",
      help: "Alimentador y circuito juntos: se recomienda 5 % a lo más.",
      words: ["caída del alimentador"],
    },
    shared: {
      label: "Otras cosas en el circuito",
      question: "¿Hay algo más en este mismo circuito?",
      help: "Una luz, una bomba, un contacto.",
      words: ["compartido", "circuito compartido"],
    },
    disconnect: {
      label: "Desconexión",
      question: "¿Hay un interruptor a la vista del calentador, o un breaker que se pueda bloquear abierto?",
      help: "A la vista es visible y a menos de 50 ft.",
      words: ["desconexión", "desconectador"],
      options: {
        in_sight: { label: "A la vista", words: ["a la vista"] },
        lockable: { label: "Breaker con bloqueo", words: ["breaker con bloqueo", "bloqueable"] },
        neither: { label: "Ninguno", words: ["sin desconexión"] },
      },
    },
    breaker_listed: {
      label: "Breaker listado para el panel",
      question: "¿El breaker está en la lista de la etiqueta del panel?",
      help: "La etiqueta de la puerta los nombra. No basta con que entre.",
      words: ["breaker listado", "listado"],
    },
    room: {
      label: "Dónde está",
      question: "¿Dónde está el calentador?",
      words: ["cuarto", "ubicación"],
      options: {
        basement: { label: "Sótano", words: [] },
        garage: { label: "Cochera", words: ["garaje"] },
        attic: { label: "Ático", words: [] },
        crawl_space: { label: "Espacio bajo el piso", words: ["bajo el piso"] },
        closet: { label: "Clóset", words: ["armario"] },
        utility_room: { label: "Cuarto de servicio", words: ["cuarto de lavado"] },
        living_space: { label: "Espacio habitado", words: [] },
        outdoors: { label: "Exterior", words: ["afuera", "a la intemperie"] },
      },
    },
    ground_fault: {
      label: "Protección de falla a tierra",
      question: "¿Lo protege un breaker o contacto de falla a tierra?",
      words: ["falla a tierra", "gfci"],
    },
    rise: {
      label: "El agua sube",
      question: "¿Cuánto sube la temperatura del agua, para comparar recuperaciones?",
      help: "La del tanque menos la del agua fría.",
      words: ["subida de temperatura", "sube"],
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
    conductor_for_drop: "Conductor que cuida la caída",
    total_drop_share: "Caída, alimentador y circuito",
    feeder_spare: "Le queda al alimentador",
    recovery_rate: "Recupera el elemento",
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
    total_drop_high: ({ total, advised }) =>
      `Alimentador y circuito juntos pierden ${total}, más del ${advised} recomendado.`,
    other_metal: ({ other }) => `En el otro metal la misma carga lleva ${other}.`,
    aluminium_joints: () =>
      "El aluminio solo va en terminales marcadas para él. Casi todo calentador trae cobre: una con conectores listados para ambos, con torque.",
    feeder_full: ({ spare, load }) =>
      `El alimentador no alcanza: con ${load} del calentador se pasa ${spare}. Un electricista puede buscar lugar con un cálculo de carga.`,
    feeder_holds: ({ spare }) => `El alimentador alcanza y le quedan ${spare}, sumando las cargas tal cual.`,
    feeder_unknown: () => "No se revisó el alimentador ni el panel. Dé los dos datos: feeder=100A feeder_load=70A.",
    circuit_shared: () => "Hay algo más en este circuito. Un calentador lleva circuito propio; decide un electricista.",
    plug_in: ({ load, most, breaker }) =>
      `De enchufe: ${load} de los ${most} que un aparato puede usar en un circuito de ${breaker} (80 %, de memoria).`,
    plug_in_over: ({ load, most, breaker }) =>
      `Es mucho para un enchufe: ${load}, y un aparato puede usar ${most} en un circuito de ${breaker} (80 %, de memoria).`,
    plug_in_later: () =>
      "¿Va a meter cable? California pide un contacto de 20 A con cableado de 30 A listo para 240 V (Title 24-2025, 150.0(n)).",
    receptacle_unguarded: () =>
      "Aquí se pide contacto con protección de falla a tierra (NEC 210.8(A), de memoria). Oprima su botón de prueba.",
    no_disconnect: () =>
      "No hay con qué apagarlo a la vista y el breaker no se puede bloquear abierto. Se pide una de las dos cosas.",
    breaker_not_listed: () => "El breaker no está en la lista del panel. Pida que lo cambien por uno que sí esté.",
    within: () => "Dentro del límite",
    over_limit: () => "Pasa del límite",
    feeder_incomplete: () => "El alimentador y su carga van juntos. Escriba los dos: feeder=100A feeder_load=70A.",
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
  tables: {
    conductors: {
      title: "Conductor por conductor, en este tramo",
      columns: { conductor: "Conductor", drop: "Caída", share: "Porcentaje", remark: "Nota" },
    },
    supplies: {
      title: "El elemento con cada voltaje",
      columns: {
        supply: "Suministro",
        rated: "Elemento para",
        power: "Potencia",
        current: "Carga",
        breaker: "Breaker mínimo",
        recovery: "Recuperación",
      },
    },
  },
};
