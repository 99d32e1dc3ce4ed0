import type { size } from "../../../topics/size.ts";
import type { TopicTexts } from "../../topic-texts.ts";
import { commonFacts } from "../common-facts.ts";

export const texts: TopicTexts<typeof size> = {
  title: "Tanque para una casa",
  names: ["tamaño", "alcanza"],
  summary: "Si este tanque le da agua caliente a esta casa día tras día, y qué cambiar si no.",
  examples: [
    "size personas=4 tanque=80gal termostato=135F",
    "size 4 personas, tanque 80 gal, termostato 125F, válvula mezcladora",
    "size personas=3 tanque=50gal termostato=120F modo=both_together",
  ],
  facts: {
    people: { ...commonFacts.people, first: true },
    bedrooms: commonFacts.bedrooms,
    model: {
      ...commonFacts.model,
      help: "Su nombre corto en el catálogo de la empresa. Omítalo y pregunto por el tanque.",
    },
    tank: {
      ...commonFacts.tank,
      help: "Está en la placa, en galones. También sirve un modelo del catálogo: modelo= y su nombre.",
    },
    setpoint: { ...commonFacts.setpoint, before: ["a"] },
    mixing_valve: commonFacts.mixing_valve,
    bathrooms: commonFacts.bathrooms,
    element: {
      label: "Potencia de la resistencia",
      question: "¿De qué potencia es cada resistencia?",
      help: "En la placa, por ejemplo 4500 W. Cero si el equipo no tiene resistencias.",
      words: ["resistencia", "resistencias", "potencia de la resistencia"],
    },
    heat_pump: {
      label: "Calor de la bomba",
      question: "¿Cuánto calor da la bomba de calor?",
      help: "Calor al agua en el punto nominal. Cero si es un tanque eléctrico simple.",
      words: ["calor de la bomba", "capacidad de la bomba"],
    },
    wanted: commonFacts.wanted,
    cold: commonFacts.cold,
    place: commonFacts.place,
    month: commonFacts.month,
    air: commonFacts.air,
    mode: commonFacts.mode,
    supply: commonFacts.supply,
    shower: {
      label: "Regaderazos en la hora pico",
      question: "¿Cuántos regaderazos hay en la hora de más uso?",
      help: "Solo para la hoja de cálculo. Si no se dice, tomo tres por cada cuatro personas.",
      words: ["regaderazos", "regaderas", "duchas"],
    },
    shave: {
      label: "Afeitadas en la hora pico",
      question: "¿Cuántas personas se afeitan en el lavabo en la hora de más uso?",
      words: ["afeitadas"],
    },
    hand_dishes: {
      label: "Lavadas de trastes a mano en la hora pico",
      question: "¿Cuántas veces se lavan trastes a mano en la hora de más uso?",
      words: ["trastes a mano", "trastes"],
    },
    dishwasher: {
      label: "Cargas del lavavajillas en la hora pico",
      question: "¿Cuántas cargas del lavavajillas hay en la hora de más uso?",
      words: ["lavavajillas", "lavaplatos"],
    },
    clothes_washer: {
      label: "Cargas de ropa en la hora pico",
      question: "¿Cuántas cargas de ropa hay en la hora de más uso?",
      words: ["lavadora", "cargas de ropa"],
    },
    worksheet: {
      label: "Hoja de cálculo",
      question: "¿Qué edición de la hoja de la hora pico?",
      help: "La página actual cuenta 20 gal por regaderazo; la anterior, 10 gal. Difieren a la mitad, así que digo cuál uso.",
      words: ["hoja", "hoja de cálculo", "edición de la hoja"],
      options: {
        present: { label: "Página actual", words: ["página de 20 gal"] },
        middle: { label: "Página de diez galones por regaderazo", words: ["página de 10 gal", "página anterior"] },
      },
    },
    appliances: {
      label: "Lavadora y lavavajillas",
      question: "¿A qué hora trabajan la lavadora y el lavavajillas?",
      help: "Horas tranquilas: ropa desde las 2 de la tarde, trastes desde las 10 de la noche.",
      words: ["aparatos", "horario de aparatos"],
      options: {
        any_hour: { label: "A cualquier hora", words: ["cualquier hora"] },
        quiet_hours: { label: "En horas tranquilas", words: ["horas tranquilas", "lavado escalonado"] },
      },
    },
    limit: {
      label: "Días fríos permitidos",
      question: "¿En qué parte de los días puede faltar agua caliente?",
      help: "Cinco de cada cien es costumbre nuestra, no una regla. Pregunte a la familia qué acepta.",
      words: ["límite", "días fríos permitidos"],
    },
    days: {
      label: "Días de muestra",
      question: "¿Cuántos días tomo de muestra?",
      help: "Más días tardan más y precisan la probabilidad.",
      words: ["días", "días de muestra"],
    },
  },
  results: {
    peak_hour_demand: "Pide la hora pico",
    first_hour_delivery: "Agua caliente en la primera hora",
    usable_volume_mixed: "Agua mezclada de una vez",
    recovery_rate_heat_pump: "La bomba de calor repone",
    recovery_rate_elements: "Las resistencias reponen",
    lowest_outlet_temperature: "Lo más frío que sale, el peor día",
    shortfall_volume: "Agua muy fría, el peor día",
    chance_of_running_cold: "Días que falta agua caliente",
    sampling_error: "Error de muestreo, más o menos",
    recovery_time: "Tanque lleno, de frío a caliente",
    energy_per_day: "Electricidad por día",
    cop_day: "Calor por cada parte de luz",
    storage_gain: "Ganancia por guardar más caliente",
  },
  findings: {
    runs_warm: ({ cold, days, low, high, limit }) =>
      `Alcanza: ${cold} de ${days} días de muestra salen fríos. Con 95 % de confianza, de ${low} a ${high}; su límite es ${limit}.`,
    too_close: ({ cold, days, low, high, limit }) =>
      `No se puede decidir: ${cold} de ${days} días de muestra salen fríos. Con 95 % de confianza, de ${low} a ${high}; su límite es ${limit}.`,
    runs_cold: ({ cold, days, low, high, limit }) =>
      `Se enfría demasiado: ${cold} de ${days} días de muestra. Con 95 % de confianza, de ${low} a ${high}; su límite es ${limit}.`,
    worksheet_met: ({ demand, delivery }) =>
      `Según la hoja alcanzaría: la hora pico pide ${demand} y el tanque da ${delivery}.`,
    worksheet_short: ({ demand, delivery }) =>
      `Según la hoja no alcanza: la hora pico pide ${demand} y el tanque da ${delivery}.`,
    days_decide: () => "La hoja es una regla práctica para una hora. Donde no coincide, créale a los días de muestra.",
    counted_for: ({ cold, air }) =>
      `Probabilidad y energía valen para agua fría a ${cold} y aire a ${air}, no para todo el año.`,
    generic_sheet: ({ volume }) =>
      `Sin modelo, tomé un equipo usual que guarda ${volume}, 90 % de su placa. Diga el modelo para usar su hoja.`,
    bedrooms_as_people: ({ people }) => `Esas recámaras se toman como ${people} personas, promedio de muchas casas.`,
    not_used: ({ left, taken }) => `Tomé en cuenta: ${taken}. No usé: ${left}.`,
    heat_pump_barred: ({ air }) =>
      `Con aire a ${air} la bomba de calor no puede trabajar, y queda apagada parte del tiempo o todo.`,
    heat_pump_outside_map: () =>
      "La bomba de calor trabajó fuera de lo medido; usé el borde más cercano. Tome su energía como aproximada.",
    never_recovers: () => "Desde frío no llega a caliente en cuatro días en este modo. Elija otro modo.",
    valve_taken_at: ({ valve }) => `La válvula mezcladora se toma ajustada a ${valve}. Mida en la llave más cercana.`,
    showers_spread: () =>
      "Los regaderazos de muestra se reparten en el día como en muchas casas. Una familia que se baña seguido se enfría más.",
    nothing_helps: () => "Ningún cambio solo lo baja del límite. Combine dos, o reparta el agua entre dos tanques.",
    change_none: () => "Como se pidió",
    change_hotter: ({ setpoint }) => `Tanque a ${setpoint}, válvula mezcladora`,
    change_heat_pump_first: () => "Modo: primero la bomba de calor",
    change_both_together: () => "Modo: las dos fuentes juntas",
    change_quiet_hours: () => "Ropa y trastes en horas tranquilas",
    change_model: ({ model }) => `Tanque más grande: ${model}`,
    change_hotter_and_mode: ({ setpoint }) => `Tanque a ${setpoint}, válvula y las dos fuentes juntas`,
    remark_fit_valve: ({ setpoint, time }) =>
      `Ponga primero la válvula mezcladora: ${setpoint} quema en ${time} o menos. Bueno contra bacterias.`,
    remark_stays_hot: ({ setpoint }) => `Sigue a ${setpoint}: vale el aviso de quemaduras.`,
    remark_stays_cool: ({ setpoint, advised }) => `Sigue a ${setpoint}, menos de los ${advised} que piden en salud.`,
    remark_as_before: () => "Quemaduras e higiene, igual que antes.",
    step_more_days: ({ days }) => `Muestra de ${days} días`,
    step_expansion: () => "Tanque de expansión para esto",
    unknown_model: ({ typed, nearest }) =>
      `“${typed}” no está en el catálogo. Parecidos: ${nearest}. Escriba uno de estos.`,
    no_catalogue: ({ typed }) =>
      `“${typed}” no se conoce: el catálogo de la empresa está vacío. Escriba los galones del tanque.`,
    unknown_place: ({ typed, nearest }) => `“${typed}” no es un lugar de los libros. Parecidos: ${nearest}.`,
    no_source: () => "Sin resistencias y sin bomba de calor nada calienta el agua. Dele potencia a una de las dos.",
    setpoint_outside_unit: ({ setpoint, lowest, highest }) =>
      `Este equipo no se puede poner a ${setpoint}. Escriba una temperatura de ${lowest} a ${highest}.`,
    mode_only_heat_pump: () =>
      "Este equipo no tiene resistencias; solo trabaja con su bomba de calor. Escriba: solo bomba de calor.",
    mode_only_elements: () =>
      "Este equipo no tiene bomba de calor; solo trabaja con resistencias. Escriba: solo resistencias.",
    mode_not_offered: () => "Este equipo no tiene ese modo. No diga el modo y tomo el usual.",
    supply_unfit: ({ supply, made_for }) =>
      `Este equipo es para ${made_for}, no para ${supply}. Escriba el voltaje que le toca.`,
    wanted_above_storage: ({ wanted, setpoint }) =>
      `Pide ${wanted} de un tanque a ${setpoint}, y mezclar solo enfría. Suba el tanque o pida menos.`,
    cold_above_wanted: ({ cold, wanted }) =>
      `El agua fría a ${cold} no puede bajar una mezcla a ${wanted}. Revise la temperatura del agua fría.`,
  },
  tables: {
    remedies: {
      title: "Qué cambiar, con los mismos días de muestra",
      columns: { change: "Cambio", chance: "Días fríos", energy: "Energía por día", remark: "Quemaduras e higiene" },
    },
  },
  charts: {
    day: {
      title: "El día de muestra más difícil",
      columns: {
        outlet: "Sale del tanque",
        wanted: "Deseada en las llaves",
        layers: "Capas del tanque, de arriba abajo",
        layer_1: "Capa 1, arriba",
        layer_2: "Capa 2",
        layer_3: "Capa 3",
        layer_4: "Capa 4",
        layer_5: "Capa 5",
        layer_6: "Capa 6",
        layer_7: "Capa 7",
        layer_8: "Capa 8",
        layer_9: "Capa 9",
        layer_10: "Capa 10",
        layer_11: "Capa 11",
        layer_12: "Capa 12, abajo",
        drawn: "Agua caliente sacada",
        heat_pump: "Bomba de calor",
        upper: "Resistencia de arriba",
        lower: "Resistencia de abajo",
      },
    },
  },
};
