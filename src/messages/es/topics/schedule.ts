import type { schedule } from "../../../topics/schedule.ts";
import type { TopicTexts } from "../../topic-texts.ts";
import { commonFacts } from "../common-facts.ts";
import { unitRefusals } from "../unit-refusals.ts";

export const texts: TopicTexts<typeof schedule> = {
  title: "Horario",
  names: ["horario", "programar"],
  summary: "Cambios de modo y temperatura alrededor de las horas pico: lo que menos cuesta sin que nadie pase frío.",
  examples: [
    "schedule modelo=hollin-80 personas=4 mixing_valve=sí",
    "schedule 2 personas, válvula mezcladora, modelo tarnley-66",
  ],
  facts: {
    model: commonFacts.model,
    people: commonFacts.people,
    mixing_valve: {
      ...commonFacts.mixing_valve,
      help: "Solo con una dejo que el tanque suba más antes de las horas pico.",
    },
    setpoint: commonFacts.setpoint,
    rate: commonFacts.rate,
    bathrooms: commonFacts.bathrooms,
    wanted: commonFacts.wanted,
    place: commonFacts.place,
    mode: commonFacts.mode,
    supply: commonFacts.supply,
  },
  results: {
    saving_per_year: "Ahorro al año",
    cost_per_year: "Costo al año",
    cost_left_alone: "Costo al año si se deja igual",
    energy_per_year: "Energía al año",
    changes_a_day: "Cambios al día",
    cold_days: "Días con agua fría, de 365",
    cold_days_left_alone: "Días con agua fría si se deja igual",
    dear_share: "Energía en horas pico",
    dear_share_left_alone: "Energía en horas pico si se deja igual",
  },
  findings: {
    ...unitRefusals,
    no_schedule: ({ model }) => `${model} no admite horario: su hoja no permite cambios al día.`,
    no_dear_hours: ({ plan }) =>
      `Con el plan ${plan} ninguna hora cuesta claramente más, así que no hay qué mover. Pruebe la tarifa horaria.`,
    wanted_above_setpoint: ({ wanted, setpoint }) =>
      `De un tanque a ${setpoint} no salen ${wanted} en las llaves. Póngalo más caliente o pida menos.`,
    follow_it: ({ saving, changes }) => `Ahorra ${saving} al año con ${changes} cambios en cada día con horas pico.`,
    leave_it_alone: ({ tried }) =>
      `Déjelo igual. De los ${tried} horarios que probé, ninguno es más barato sin que alguien pase frío más seguido.`,
    check_valve_first: ({ storage }) =>
      `Primero pruebe la válvula mezcladora: el tanque sube a ${storage}, que quema en segundos. Mida en la llave más cercana.`,
    nobody_colder: ({ cold, alone, days }) =>
      `Nadie pasa frío más seguido: ${cold} de ${days} días muestreados, contra ${alone} si se deja igual.`,
    day_by_day: ({ both, only_with, only_alone, short, short_alone }) =>
      `Día por día: fríos ${both} días de las dos formas, ${only_alone} solo si se deja igual, ${only_with} solo con este horario. Agua más fría de lo pedido en el año: ${short} contra ${short_alone}.`,
    refused_cheaper: ({ saving, cold, alone }) =>
      `Rechazado: un horario que ahorra ${saving}, porque habría ${cold} días fríos en vez de ${alone}.`,
    cools_in_dear_hours: ({ lowest }) =>
      `En horas pico puede bajar a ${lowest} antes de calentar. El mismo día vuelve a estar caliente.`,
    moves_out_of_dear: ({ before, after }) => `La energía en horas pico pasa de ${before} del año a ${after}.`,
    within_limit: ({ changes, limit }) => `El equipo permite ${limit} cambios al día; este hace ${changes}.`,
    valve_would_help: () =>
      "Con una válvula mezcladora en el tanque puede guardar más caliente antes de las horas pico. Suele convenir.",
    set_clock: () => "Revise el reloj del equipo, y otra vez cuando empiece y termine el horario de verano.",
    searched: ({ tried, days, whole, all }) =>
      `Se probaron ${tried} horarios en los mismos ${days} días muestreados. Los ${whole} que podían costar menos siguieron por los ${all}, o hasta pasar más frío que si se deja igual.`,
    prices_set: ({ plan, day }) => `Con los precios del plan ${plan}, puestos el ${day}.`,
    weekdays: ({ months }) => (months === "" ? "Entre semana" : `Entre semana, meses ${months}`),
    weekends: ({ months }) => (months === "" ? "Fin de semana" : `Fin de semana, meses ${months}`),
    heat_pump_only: () => "Solo bomba de calor",
    heat_pump_first: () => "Primero la bomba de calor",
    both_together: () => "Las dos fuentes juntas",
    elements_only: () => "Solo resistencias",
    left_alone: () => "Dejarlo igual",
    program: () => "Este horario",
    cheaper_but_colder: () => "Más barato, pero frío",
    step_with_valve: () => "Con válvula mezcladora",
    step_cost: () => "El costo de todo el año",
  },
  tables: {
    program: {
      title: "El horario",
      columns: { days: "Días", from: "Desde", mode: "Modo", setpoint: "Ajuste" },
    },
    compared: {
      title: "Un año de cada uno",
      columns: { way: "Manera", cost: "Costo", energy: "Energía", cold_days: "Días fríos", short: "Agua fría" },
    },
  },
  charts: {
    schedule_day: {
      title: "Un día entre semana de la temporada más cara",
      columns: { setpoint: "Ajuste", price: "Precio", heat_ahead: "Calentar antes", dear_hours: "Horas pico" },
    },
  },
};
