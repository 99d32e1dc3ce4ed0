import type { supply } from "../../../topics/supply.ts";
import type { TopicTexts } from "../../topic-texts.ts";
import { commonFacts } from "../common-facts.ts";

export const texts: TopicTexts<typeof supply> = {
  title: "Tubería de alimentación",
  names: ["tubería de agua", "medida de tubería", "unidades mueble"],
  summary: "Demanda de agua de la casa, medida del tubo, velocidad y presión que queda en el último mueble.",
  examples: [
    "supply 2 baños completos, cobre L, 80 ft, 60 psi, subida 20 ft",
    "supply baños completos 2, PEX, largo 100 ft, presión 55 psi, medida 3/4, UPC",
    "supply inodoros 3, lavabos 3, regaderas 2, tinas 1, CPVC, 90 ft, 90 psi, hot_length=40ft",
  ],
  facts: {
    bath_groups: {
      label: "Baños completos",
      question: "¿Cuántos baños completos hay?",
      help: "Inodoro, lavabo y tina o regadera juntos. O cuente mueble por mueble: toilets=2 lavatories=3 showers=1.",
      words: ["baños completos", "baño completo", "baños"],
    },
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
    length: {
      label: "Tubo hasta el último mueble",
      question: "¿Cuánto tubo hay del medidor al último mueble?",
      help: "Por el tubo. Las conexiones se suman solas.",
      words: ["largo", "recorrido", "tramo"],
    },
    line_pressure: {
      ...commonFacts.line_pressure,
      question: "¿Qué presión da la calle sin agua corriendo?",
      help: "En el medidor, a la hora en que la calle está más baja.",
    },
    rise: {
      label: "Subida",
      question: "¿Qué tan arriba del medidor está el último mueble?",
      help: "La regadera de un segundo piso sin sótano: unos 16 ft. Abajo del medidor es negativo.",
      words: ["subida", "altura", "desnivel"],
    },
    toilets: {
      label: "Inodoros",
      question: "¿Cuántos inodoros hay además?",
      words: ["inodoros", "inodoro", "excusados", "tazas"],
    },
    lavatories: {
      label: "Lavabos",
      question: "¿Cuántos lavabos hay además?",
      words: ["lavabos", "lavabo", "lavamanos"],
    },
    showers: {
      label: "Regaderas",
      question: "¿Cuántas regaderas hay además?",
      words: ["regaderas", "regadera", "duchas"],
    },
    tubs: { label: "Tinas", question: "¿Cuántas tinas hay además?", words: ["tinas", "tina", "bañeras"] },
    kitchen_sinks: {
      label: "Fregaderos",
      question: "¿Cuántos fregaderos de cocina hay?",
      words: ["fregaderos", "fregadero"],
    },
    dishwashers: {
      label: "Lavaplatos",
      question: "¿Cuántos lavaplatos hay?",
      words: ["lavaplatos", "lavavajillas"],
    },
    clothes_washers: {
      label: "Lavadoras",
      question: "¿Cuántas lavadoras hay?",
      words: ["lavadoras", "lavadora"],
    },
    hose_bibbs: {
      label: "Llaves de manguera a la vez",
      question: "¿Cuántas llaves de manguera pueden correr a la vez?",
      words: ["llaves de manguera", "llave de manguera", "mangueras"],
    },
    residual: {
      label: "Presión de la calle, corriendo",
      question: "¿Qué presión da la calle con agua corriendo?",
      help: "La sabe la compañía de agua. Con ella se calculan los tubos.",
      words: ["residual", "presión residual", "presión corriendo"],
    },
    regulator: {
      label: "Regulador",
      question: "¿A cuánto está el regulador de presión?",
      help: "Los tubos que siguen se calculan con 80 % del ajuste.",
      words: ["regulador", "ajuste del regulador", "presión regulada"],
    },
    meter_loss: {
      label: "Pierde el medidor",
      question: "¿Cuánta presión quita el medidor?",
      help: "De su hoja, con la demanda. 5 psi es costumbre nuestra.",
      words: ["medidor", "pérdida del medidor"],
    },
    backflow_loss: {
      label: "Pierde el preventor de reflujo",
      question: "¿Cuánta presión quita el preventor de reflujo?",
      help: "De su hoja: uno de doble check quita pocos psi; uno de presión reducida, 10 psi o más (uso común).",
      words: ["preventor de reflujo", "preventor"],
    },
    softener_loss: {
      label: "Pierde el suavizador",
      question: "¿Cuánta presión quita el suavizador?",
      words: ["suavizador", "ablandador"],
    },
    heater_loss: {
      label: "Pierde el calentador",
      question: "¿Cuánta presión quita el calentador?",
      help: "Un tanque quita poca; un intercambiador, más.",
      words: ["pérdida del calentador"],
    },
    valve_loss: {
      label: "Pierde la válvula mezcladora",
      question: "¿Cuánta presión quita la válvula mezcladora?",
      help: "De su curva, con la demanda caliente.",
      words: ["válvula mezcladora", "pérdida de la mezcladora"],
    },
    far_fixture: {
      label: "Último mueble",
      question: "¿Cuál es el último mueble?",
      help: "El más alto o el más lejano.",
      words: ["último mueble", "mueble lejano"],
      options: {
        balanced_shower: { label: "Regadera balanceada", words: ["regadera balanceada", "regadera termostática"] },
        shower: { label: "Regadera sencilla", words: ["regadera sencilla"] },
        balanced_tub: { label: "Tina balanceada", words: ["tina balanceada"] },
        lavatory: { label: "Lavabo", words: ["último lavabo"] },
        sink: { label: "Fregadero", words: ["último fregadero"] },
        dishwasher: { label: "Lavaplatos", words: ["último lavaplatos"] },
        laundry: { label: "Lavadero", words: ["lavadero"] },
        hose_bibb: { label: "Llave de manguera", words: ["última llave de manguera"] },
      },
    },
    needs: {
      label: "Necesita el último mueble",
      question: "¿Qué presión necesita el último mueble al correr?",
      help: "De su hoja. Omítalo y tomo la tabla del código.",
      words: ["necesita", "presión necesaria"],
    },
    hot_length: {
      label: "De eso, línea caliente",
      question: "¿Cuánto de ese tubo va después del calentador?",
      help: "Lleva solo la demanda caliente y se calcula para agua caliente.",
      words: ["línea caliente", "tubo de caliente"],
    },
    fittings: {
      label: "Conexiones, como tubo",
      question: "¿Cuánto suman las conexiones al tubo?",
      help: "La mitad más es costumbre nuestra. Pocas curvas largas suman menos.",
      words: ["conexiones"],
    },
    size: {
      label: "Medida de la principal",
      question: "¿De qué medida es la línea principal?",
      help: "Omítala y busco la más chica que sirve.",
      words: ["medida", "medida de la principal"],
      options: {
        "3/8": { label: "3/8 in", words: ["3/8", "3/8 de pulgada"] },
        "1/2": { label: "1/2 in", words: ["1/2", "media pulgada", "de media"] },
        "5/8": { label: "5/8 in", words: ["5/8"] },
        "3/4": { label: "3/4 in", words: ["3/4", "tres cuartos"] },
        "1": { label: "1 in", words: ["una pulgada", "1 pulgada"] },
        "1-1/4": { label: "1-1/4 in", words: ["1-1/4", "pulgada y cuarto"] },
        "1-1/2": { label: "1-1/2 in", words: ["1-1/2", "pulgada y media"] },
        "2": { label: "2 in", words: ["2 pulgadas", "dos pulgadas"] },
      },
    },
    code: {
      label: "Código que se sigue",
      question: "¿Las tablas de qué código?",
      help: "El adoptado donde está la casa. Con pocos muebles sus demandas difieren mucho.",
      words: ["código", "tablas"],
      options: { ipc: { label: "IPC", words: ["tablas ipc"] }, upc: { label: "UPC", words: ["tablas upc"] } },
    },
    flush: {
      label: "Los inodoros descargan por",
      question: "¿Los inodoros descargan de tanque o por fluxómetro?",
      words: ["descarga"],
      options: {
        tank: { label: "Tanque", words: ["de tanque"] },
        valve: { label: "Fluxómetro", words: ["fluxómetro", "fluxómetros"] },
      },
    },
    use: {
      label: "Los usa",
      question: "¿Quién usa los muebles: una familia o el público?",
      words: ["uso"],
      options: {
        private: { label: "Una familia", words: ["privado"] },
        public: { label: "El público", words: ["público"] },
      },
    },
    setpoint: commonFacts.setpoint,
    cold: commonFacts.cold,
  },
  results: {
    fixture_units: "Unidades mueble",
    fixture_units_hot: "De ellas, en la línea caliente",
    demand_flow: "Demanda",
    demand_flow_other: "Demanda por el otro código",
    demand_flow_hot: "Demanda caliente",
    pipe_size: "Línea principal",
    pipe_size_hot: "Línea caliente",
    velocity: "Velocidad en la principal",
    velocity_limit: "Recomendada a lo más, fría",
    velocity_hot: "Velocidad en la caliente",
    velocity_limit_hot: "Recomendada a lo más, caliente",
    friction_loss: "Se pierde en fricción",
    elevation_loss: "Se pierde en altura",
    other_losses: "Se pierde en medidor y aparatos",
    pressure_at_start: "Presión para calcular",
    pressure_left: "Queda en el último mueble",
    pressure_needed: "Necesita el último mueble",
  },
  findings: {
    serves: ({ size, flow, left }) =>
      `Una principal de ${size} in alcanza para ${flow} y deja ${left} en el último mueble.`,
    size_serves: ({ size, left }) => `La principal de ${size} in alcanza: quedan ${left} en el último mueble.`,
    size_too_fast: ({ size, smallest }) =>
      `Con principal de ${size} in el agua corre muy rápido. Se necesita ${smallest} in.`,
    size_too_low: ({ size, left, needed, smallest }) =>
      `Una principal de ${size} in deja ${left} y el último mueble necesita ${needed}. Va ${smallest} in.`,
    size_fails: ({ size, left, needed }) =>
      `Una principal de ${size} in deja ${left} donde se necesitan ${needed}, y ninguna medida de esta tubería alcanza.`,
    none_serves: ({ left, needed }) =>
      `Ninguna medida alcanza: cuando mucho quedan ${left} y se necesitan ${needed}. Acorte, quite pérdidas o ponga bomba.`,
    curves: ({ followed, flow, other, otherFlow }) =>
      `Se siguió: ${followed}, ${flow}. Con ${other} los mismos muebles piden ${otherFlow}. Decide el código adoptado.`,
    hose_is_steady: ({ flow }) => `Las llaves de manguera cuentan como flujo continuo, ${flow} además de los muebles.`,
    from_static: () =>
      "Calculado con la presión sin agua corriendo. Con la calle corriendo es menor; dé residual= de la compañía de agua.",
    from_regulator: ({ start }) => `Después del regulador se calcula con 80 % de su ajuste: ${start}.`,
    regulator_wanted: ({ start }) =>
      `Arriba de 80 psi se pide regulador. Calculé con 80 % de 80 psi: ${start}. Dé regulator= con su ajuste.`,
    losses_not_told: () =>
      "No se cuenta pérdida de preventor de reflujo, suavizador, calentador ni mezcladora. Dé las de sus hojas.",
    cannot_flow: () => "Menos que cero quiere decir que tanta agua no puede pasar por ese tubo.",
    below_service: ({ size, smallest }) =>
      `${size} in es menos de lo que alimenta una casa: ${smallest} in por lo menos (IPC 603.1, de memoria).`,
    full_demand_all_along: () =>
      "Toda la demanda se toma por toda la principal, del lado seguro. Los ramales van según su mueble.",
    authority_decides: () => "El código local y su inspector deciden medidas y tablas.",
    fits: () => "Alcanza",
    too_fast: () => "Muy rápido",
    too_low: () => "Queda poca presión",
    too_fast_and_low: () => "Muy rápido y queda poca presión",
    no_fixtures: () => "No hay nada que alimentar. Escriba los baños completos o los muebles: bath_groups=2.",
    beyond_curve: ({ units, most }) =>
      `Son ${units} unidades mueble; mis tablas llegan a ${most}. Esta la calcula un ingeniero.`,
    hot_beyond_length: ({ hot, length }) =>
      `La línea caliente, ${hot}, es parte de todo el tubo, ${length}. Escriba un hot_length hasta esa medida.`,
    residual_above_static: ({ residual, pressure }) =>
      `La presión corriendo, ${residual}, no puede pasar de la presión en reposo, ${pressure}. Revise las dos.`,
    size_not_made: ({ size }) => `Esa tubería no está en mi tabla en ${size}. Elija otra medida u otra tubería.`,
    step_other_code: ({ code }) => `Con el ${code}`,
    step_hot_line: () => "La mitad como línea caliente",
    row_static: () => "Calle, sin agua corriendo",
    row_residual: () => "Calle, con agua corriendo",
    row_regulated: () => "80 % del ajuste del regulador",
    row_regulator_missing: () => "80 % de 80 psi, con regulador",
    row_rise: () => "Altura",
    row_meter: () => "Medidor",
    row_backflow: () => "Preventor de reflujo",
    row_softener: () => "Suavizador",
    row_heater: () => "Calentador",
    row_valve: () => "Válvula mezcladora",
    row_main: ({ size }) => `Fricción, principal ${size}`,
    row_hot: ({ size }) => `Fricción, línea caliente ${size}`,
    row_left: () => "Queda en el último mueble",
    row_needed: () => "Necesita el último mueble",
  },
  tables: {
    sizes: {
      title: "Medida por medida",
      columns: { size: "Principal", velocity: "Velocidad", friction: "Fricción", left: "Queda", remark: "Nota" },
    },
    pressure: { title: "A dónde se va la presión", columns: { step: "Paso", pressure: "Presión" } },
  },
};
