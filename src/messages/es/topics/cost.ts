import type { cost } from "../../../topics/cost.ts";
import type { TopicTexts } from "../../topic-texts.ts";
import { commonFacts } from "../common-facts.ts";
import { unitRefusals } from "../unit-refusals.ts";

export const texts: TopicTexts<typeof cost> = {
  title: "Costo anual",
  names: ["costo", "gasto"],
  summary: "Un año simulado de un equipo: energía, costo por modo, ahorro contra el calentador viejo, recuperación.",
  examples: [
    "cost modelo=hollin-80 personas=4 replaces=gas_tank",
    "cost 4 personas, tarifa horaria, tanque eléctrico viejo, modelo hollin-50",
    "cost modelo=sedge-66 personas=5 setpoint=130F modo=heat_pump_only old_efficiency=0.9",
  ],
  facts: {
    model: commonFacts.model,
    people: commonFacts.people,
    replaces: {
      label: "Calentador que sale",
      question: "¿Qué reemplaza?",
      help: "El ahorro se cuenta contra él. Nada: casa nueva.",
      words: ["reemplaza", "calentador viejo", "en lugar de", "sale"],
      options: {
        electric_tank: { label: "Tanque eléctrico", words: ["tanque eléctrico viejo", "eléctrico viejo"] },
        gas_tank: { label: "Tanque de gas", words: ["tanque de gas viejo", "gas viejo"] },
        none: { label: "Nada", words: ["casa nueva", "obra nueva"] },
      },
    },
    setpoint: { ...commonFacts.setpoint, question: "¿A qué temperatura se va a poner el tanque?" },
    old_efficiency: {
      label: "Eficiencia del calentador viejo",
      question: "¿Qué factor de energía dice la etiqueta del viejo?",
      help: "UEF o EF de la etiqueta amarilla, como 0.58 en gas o 0.92 en eléctrico.",
      words: ["eficiencia vieja", "factor de energía", "eficiencia"],
    },
    old_tank: {
      label: "Tamaño del tanque viejo",
      question: "¿Cuánta agua le cabe al tanque viejo?",
      words: ["tanque viejo", "tamaño del viejo"],
    },
    price: {
      label: "Precio instalado",
      question: "¿Cuánto cuesta el equipo nuevo, ya instalado?",
      help: "Si lo deja abierto tomo el del catálogo con instalación.",
      words: ["precio", "precio instalado", "cotización"],
    },
    instead: {
      label: "Precio del otro calentador",
      question: "¿Cuánto costaría instalado el calentador de siempre?",
      help: "Si el viejo tiene que salir de todos modos, solo la diferencia se tiene que recuperar.",
      words: ["otro precio", "precio del otro"],
    },
    incentives: {
      label: "Incentivos",
      question: "¿Cuento los incentivos de los libros?",
      help: "Reembolsos y créditos que están en la lista de precios de la empresa.",
      words: ["incentivos", "reembolsos", "reembolso", "crédito fiscal"],
    },
    bathrooms: commonFacts.bathrooms,
    wanted: commonFacts.wanted,
    place: commonFacts.place,
    mode: commonFacts.mode,
    supply: commonFacts.supply,
    rate: commonFacts.rate,
  },
  results: {
    energy_per_year: "Energía al año",
    cost_per_year: "Costo al año",
    emissions: "CO2 al año",
    cop_year: "Agua caliente por unidad de electricidad",
    cold_days: "Días con agua fría, de 365",
    saving_per_year: "Ahorro al año",
    emissions_saved: "CO2 ahorrado al año",
    net_price: "Precio por recuperar",
    payback: "Recuperación, años",
  },
  findings: {
    ...unitRefusals,
    efficiency_outside: ({ lowest, highest }) =>
      `Esos tanques traían de ${lowest} a ${highest}. Lea otra vez la etiqueta, o déjelo abierto.`,
    wanted_above_setpoint: ({ wanted, setpoint }) =>
      `De un tanque a ${setpoint} no salen ${wanted} en las llaves. Póngalo más caliente o pida menos.`,
    saves: ({ cost, saving }) => `Cuesta ${cost} al año. Ahorra ${saving} al año.`,
    costs_more: ({ cost, more }) => `Cuesta ${cost} al año. Son ${more} más que el calentador viejo.`,
    costs: ({ cost, energy }) => `Cuesta ${cost} al año, por ${energy}.`,
    pays_back: ({ years, net }) => `${net} se recuperan en ${years} años a estos precios.`,
    pays_at_once: () => "No cuesta más que aquello con que se compara: conviene desde el primer día.",
    never_pays: ({ net }) => `${net} no se recuperan: cuesta lo mismo que el viejo, o más.`,
    counts_incentive: ({ name, amount }) => `Contado: ${name}, ${amount}.`,
    check_incentives: () =>
      "Los incentivos tienen condiciones y fechas. Verifique que este trabajo califica antes de cotizarlos.",
    never_cold: ({ days, wanted }) => `Nadie recibió agua a menos de ${wanted} en ninguno de ${days} días muestreados.`,
    runs_cold: ({ cold, days, wanted }) =>
      `En ${cold} de ${days} días muestreados alguien recibió algo de agua a menos de ${wanted}.`,
    colder_than_old: ({ cold, old }) => `Son ${cold} días contra ${old} con el viejo. Compárelo con el costo.`,
    heat_from_room: ({ heat }) =>
      `Le quita ${heat} al año al aire del cuarto. Si ese cuarto tiene calefacción, ella los paga.`,
    gas_by_equation: ({ efficiency }) =>
      `El tanque de gas se calcula con su eficiencia de ${efficiency}, no se simula. Se supone que nadie pasa frío.`,
    gas_work_left_out: () =>
      "Cerrar el gas y el tiro, y el circuito nuevo, son trabajo de oficios con licencia. No están en el precio.",
    prices_set: ({ plan, day }) => `Con los precios del plan ${plan}, puestos el ${day}.`,
    factors_set: ({ day }) => `Factores de CO2 puestos el ${day}.`,
    what_is_left_out: () => "No se cuentan: cargos fijos, impuestos, intereses, mantenimiento ni alzas futuras.",
    heat_pump_only: () => "Solo bomba de calor",
    heat_pump_first: () => "Primero la bomba de calor",
    both_together: () => "Las dos fuentes juntas",
    elements_only: () => "Solo resistencias",
    electric_tank: () => "Tanque eléctrico viejo",
    gas_tank: () => "Tanque de gas viejo",
    not_simulated: () => "no se simuló",
    step_heat_pump_only: () => "En solo bomba de calor",
    step_heat_pump_first: () => "En primero la bomba",
    step_both_together: () => "En las dos juntas",
    step_elements_only: () => "En solo resistencias",
  },
  tables: {
    by_heater: {
      title: "Un año, por modo y por calentador",
      columns: {
        heater: "Calentador",
        energy: "Energía",
        cost: "Costo",
        emissions: "CO2",
        cold_days: "Días con agua fría",
      },
    },
    by_plan: { title: "Este modo con cada tarifa", columns: { plan: "Tarifa", cost: "Costo al año" } },
  },
  charts: {
    cost_by_month: { title: "Costo por mes", columns: { new_heater: "Este equipo", old_heater: "Calentador viejo" } },
  },
};
