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
  "1-1/2": { label: "1-1/2 in", words: ["1-1/2", "pulgada y media"] },
  "2": { label: "2 in", words: ["2 pulgadas", "dos pulgadas"] },
} as const;

export const texts: TopicTexts<typeof wait> = {
  title: "Espera del agua caliente",
  summary:
    "Cuánto tarda en llegar el agua caliente, cuánta se desperdicia y qué tan rápido corre; cómo se enfría y qué cuesta un circuito.",
  examples: [
    "wait 3/4 in cobre L 50 ft 2 gpm",
    "wait PEX 1/2, largo 50 ft, flujo 2 gpm",
    "wait cobre M 3/4, 40 ft, 2 gpm, branch_size=1/2 branch_length=10ft",
    "wait cobre L 3/4, 60 ft, aislante de 1/2, recirculación, tanque 80 gal",
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
    insulation: {
      label: "Aislante del tubo",
      question: "¿Qué grueso tiene el aislante del tubo caliente?",
      help: "La pared de la espuma, no su diámetro.",
      words: ["aislante", "aislamiento", "espuma"],
      options: {
        none: { label: "Tubo sin aislar", words: ["sin aislante", "sin aislar", "tubo pelón"] },
        half: { label: "Aislante de 1/2 in", words: ["aislante de 1/2", "espuma de 1/2", "aislante de media"] },
        three_quarter: { label: "Aislante de 3/4 in", words: ["aislante de 3/4", "espuma de 3/4"] },
        one: { label: "Aislante de 1 in", words: ["aislante de una pulgada", "espuma de 1 in"] },
      },
    },
    wanted: { ...commonFacts.wanted, help: "El agua que baja de ahí se tira." },
    air: {
      label: "Aire alrededor del tubo",
      question: "¿Qué tan caliente está el aire alrededor del tubo?",
      help: "Sótano, muro o espacio bajo el piso, en la temporada que cuenta.",
      words: ["aire", "aire del tubo", "ambiente"],
    },
    loop: {
      label: "Recirculación",
      question: "¿Mantiene caliente este tubo una línea de recirculación?",
      help: "Una bomba con retorno, o un cruce en la última llave.",
      words: ["recirculación", "circuito de recirculación", "bomba de recirculación", "retorno"],
    },
    loop_length: {
      label: "Recirculación, ida y vuelta",
      question: "¿Cuánto tubo tiene la recirculación, ida y vuelta?",
      help: "Omítalo y tomo el doble del largo del tubo.",
      words: ["largo de la recirculación", "ida y vuelta"],
    },
    loop_fall: {
      label: "Caída en la recirculación",
      question: "¿Cuánto más fría puede regresar el agua?",
      help: "10 °F es lo usual. De ahí sale el flujo de la bomba.",
      words: ["caída", "caída de temperatura"],
    },
    loop_hours: {
      label: "Bomba prendida al día",
      question: "¿Cuántas horas al día trabaja la bomba?",
      words: ["bomba prendida", "horas de bomba"],
    },
    cop: {
      label: "Calor por electricidad",
      question: "¿Cuánto calor hace el calentador con una unidad de electricidad?",
      help: "Su COP: cerca de 3 con bomba de calor, 1 con resistencias.",
      words: ["rendimiento"],
    },
    tank: {
      ...commonFacts.tank,
      help: "Omítalo y no digo cómo la bomba revuelve el tanque.",
      words: ["tanque", "tamaño del tanque", "calentador", "boiler", "volumen del tanque"],
    },
    price: {
      label: "Precio de la electricidad",
      question: "¿Cuánto cuesta un kWh?",
      help: "Omítalo y tomo el precio medio del primer plan de la empresa.",
      words: ["precio", "precio del kwh"],
    },
  },
  results: {
    pipe_volume: "Agua en el tubo",
    wait_time: "Espera mínima",
    wait_time_likely: "Espera probable",
    volume_wasted: "Se tira cada vez",
    velocity: "Velocidad",
    pressure_drop: "Fricción en tubo recto",
    cooldown_time: "Ya no sirve después de",
    loop_heat_loss: "Pierde la recirculación",
    loop_heat_per_day: "Calor perdido al día",
    loop_electricity_per_day: "Electricidad para eso al día",
    loop_cost_per_year: "Costo de la recirculación al año",
    pump_flow: "Flujo de la bomba",
    loop_turnovers: "La bomba mueve el tanque, veces al día",
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
    step_insulate: () => "Con aislante de 3/4 in",
    cools_in: ({ time, wanted, air }) => `Parada en aire a ${air}, el agua baja de ${wanted} en ${time}.`,
    stays_useful: ({ wanted }) => `El aire está a ${wanted} o más, así que el agua del tubo sigue sirviendo.`,
    never_useful: ({ hot, wanted }) => `El tanque está a ${hot}, así que el agua nunca llega a ${wanted}.`,
    bare_pipe: ({ asked }) =>
      `El tubo está sin aislar. El código modelo de energía pide R-${asked} desde 3/4 in (IECC 2021, R403.5.2).`,
    insulation_thin: ({ r, asked }) =>
      `En este tubo el aislante da R-${r}. El código modelo de energía pide R-${asked} desde 3/4 in (IECC 2021, R403.5.2).`,
    loop_costs: ({ heat, electricity, money }) =>
      `La recirculación pierde ${heat} con la bomba prendida: ${electricity} al día, ${money} al año, sin contar la bomba.`,
    loop_stirs: ({ times }) =>
      `La bomba mueve todo el tanque ${times} veces al día. Eso mezcla sus capas: menos agua caliente seguida y peor COP.`,
    loop_feeds_branch: () =>
      "La espera es solo del ramal: la recirculación mantiene caliente lo demás con la bomba prendida.",
    loop_without_branch: () =>
      "La espera se cuenta con la bomba parada. Para la espera con recirculación dé el ramal: branch_size=1/2 branch_length=10ft.",
    loop_on_demand: () => "Prenda la bomba con botón o sensor y paro por temperatura; así trabaja minutos y no horas.",
    still_air: () =>
      "El enfriamiento es en aire seco y quieto. En losa, tierra húmeda o corriente va varias veces más rápido.",
    loop_too_cold: ({ hot, fall }) =>
      `Desde ${hot}, una caída de ${fall} termina abajo del aire de alrededor. Pida una caída menor.`,
  },
};
