import type { away } from "../../../topics/away.ts";
import type { TopicTexts } from "../../topic-texts.ts";
import { commonFacts } from "../common-facts.ts";
import { unitRefusals } from "../unit-refusals.ts";

export const texts: TopicTexts<typeof away> = {
  title: "Ausencia",
  summary: "A qué dejar el tanque cuando no hay nadie, cuánto ahorra y cuándo volver a calentarlo.",
  examples: [
    "away modelo=hollin-80 absence=21días",
    "away 5 semanas en febrero, modelo tarnley-50, puesto a 130F",
    "away 10 días, modelo brackwell-50",
  ],
  facts: {
    model: commonFacts.model,
    absence: {
      label: "Tiempo fuera",
      question: "¿Cuánto tiempo no va a haber nadie?",
      help: "Con su unidad: 10 días, 3 semanas.",
      words: ["ausencia", "fuera", "vacaciones", "viaje"],
    },
    month: { ...commonFacts.month, question: "¿En qué mes se van?" },
    setpoint: commonFacts.setpoint,
    place: commonFacts.place,
    mode: commonFacts.mode,
    supply: commonFacts.supply,
    rate: commonFacts.rate,
  },
  results: {
    hold_temperature: "Mantener a",
    reheat_lead: "Calentar antes de volver",
    saving: "Ahorra",
    energy_saved: "Energía ahorrada",
    energy_left_alone: "Energía si se deja igual",
    energy_away: "Energía en frío, con el recalentado",
    growth_time: "Tiempo en el rango de crecimiento",
    coolest_tank: "Lo más frío que llega a estar",
  },
  findings: {
    ...unitRefusals,
    hold_cool: ({ hold, saving, lead }) =>
      `Manténgalo a ${hold} y empiece a calentar ${lead} antes de que vuelvan. Ahorra ${saving}.`,
    switch_off: ({ saving }) => `No tiene modo de ausencia. Apagado ahorra ${saving}.`,
    hardly_pays: ({ saving }) => `Déjelo como está: mantenerlo en frío ahorraría solo ${saving}.`,
    leave_it: () => "Déjelo como está: enfriarlo y recalentarlo gasta tanto como mantenerlo caliente.",
    no_time_to_reheat: () => "Déjelo como está: la ausencia es muy corta para enfriarlo y recalentarlo.",
    breaker_locked: () => "Apáguelo en su propio breaker y póngale etiqueta, para que nadie más lo prenda.",
    hot_on_arrival: ({ lead }) => `Al prenderlo otra vez, está caliente en ${lead}.`,
    reheat_with_heat_pump: () => "El tiempo de recalentado es con la bomba de calor sola, que es lo barato.",
    growth_time: ({ time, from, to }) =>
      `En frío, su agua pasa ${time} entre ${from} y ${to}, donde crece la Legionella.`,
    hydrogen_first: () =>
      "Primero, sin llama y sin fumar: el agua caliente parada dos semanas puede traer hidrógeno. Abra la llave caliente de la cocina hasta que salga sin escupir.",
    scald_first: ({ storage }) => `Luego caliéntelo a fondo. A ${storage} el agua quema en segundos: que nadie la use.`,
    heat_through: ({ storage }) => `Súbalo a ${storage} hasta que todo se apague, y vuelva a su ajuste.`,
    flush_outlets: () =>
      "Antes del primer baño, abra cada llave caliente hasta que salga lo más caliente, sin la cabeza de la regadera o en una bolsa. Después la fría.",
    people_at_risk: () =>
      "Los mayores, los enfermos y quienes fuman corren más riesgo. La autoridad de salud decide qué basta.",
    frost: ({ air }) =>
      `El cuarto está a ${air}. El tanque se cuida mientras tenga corriente; los tubos no. Deje calefacción.`,
    keep_full: () => "Deje el tanque lleno. Una resistencia en seco se quema: nunca lo vacíe con la corriente puesta.",
    prices_set: ({ plan, day }) => `Con los precios del plan ${plan}, puestos el ${day}.`,
    left_alone: () => "Como está",
    cool_hold: () => "En frío",
    switched_off: () => "Apagado",
    step_longer: ({ absence }) => `¿Y por ${absence}?`,
  },
  tables: {
    ways: {
      title: "Dos maneras de dejarlo",
      columns: {
        way: "Manera",
        energy: "Energía",
        cost: "Costo",
        growth_time: "En rango de crecimiento",
        lead: "Calentar antes",
      },
    },
  },
};
