import type { pick } from "../../../topics/pick.ts";
import type { TopicTexts } from "../../topic-texts.ts";
import { commonFacts } from "../common-facts.ts";
import { unitRefusals } from "../unit-refusals.ts";

interface Best {
  readonly model: string;
  readonly setpoint: string;
  readonly cost: string;
}
const best =
  (mode: string) =>
  ({ model, setpoint, cost, share }: Best & { readonly share: string }) =>
    `${model} a ${setpoint}, ${mode}: ${cost} al año, y ${share} de los días fríos.`;
const soFar =
  (mode: string) =>
  ({ model, setpoint, cost }: Best) =>
    `Mejor hasta ahora: ${model} a ${setpoint}, ${mode}, cerca de ${cost} al año.`;
const cold =
  (mode: string) =>
  ({ share, setpoint, limit }: { readonly share: string; readonly setpoint: string; readonly limit: string }) =>
    `Aun en lo más que da, ${setpoint}, ${mode}, se enfría ${share} de los días; el límite es ${limit}.`;

const MODES = {
  heat_pump_first: "primero la bomba de calor",
  heat_pump_only: "solo bomba de calor",
  both_together: "las dos fuentes juntas",
  elements_only: "solo resistencias",
} as const;

export const texts: TopicTexts<typeof pick> = {
  title: "Elegir modelo",
  names: ["elegir", "escoger"],
  summary: "Qué modelos caben en el sitio y le dan agua caliente a esta casa; primero el más barato de operar.",
  examples: [
    "pick personas=2 altura=66in puerta=21in",
    "elegir para 3 personas, techo 64 in, 240V, termostato 130F",
    "pick personas=2 altura=70in puerta=22in modo=heat_pump_first termostato=130F límite=10%",
  ],
  facts: {
    people: { ...commonFacts.people, first: true },
    bedrooms: commonFacts.bedrooms,
    height: {
      label: "Altura disponible",
      question: "¿Qué altura hay, del piso a lo primero que estorba?",
      help: "Cuento la altura del equipo y lo que piden arriba el ánodo y el filtro. Si la omite, no reviso la altura.",
      words: ["altura", "techo", "altura libre", "alto"],
      after: ["de alto", "de altura"],
    },
    door: {
      label: "Puerta más angosta",
      question: "¿Qué ancho tiene la puerta o el paso más angosto para entrar?",
      help: "Mida el claro libre, también bisagras y pasamanos. Si lo omite, no reviso la entrada.",
      words: ["puerta", "puerta más angosta", "paso", "pasillo", "escalera", "entrada"],
    },
    supply: {
      ...commonFacts.supply,
      question: "¿Qué voltaje hay para el calentador?",
      help: "240 V en casi toda casa, 208 V de un servicio trifásico. Con cualquiera, un equipo de enchufe de 120 V puede tener su circuito.",
    },
    breaker: {
      label: "Interruptor más grande",
      question: "¿Para qué interruptor da el tablero, cuando mucho?",
      help: "Lo que tablero y alimentador todavía aguantan; lo dice un electricista.",
      words: ["interruptor", "breaker", "pastilla", "interruptor más grande"],
    },
    spaces: {
      label: "Espacios libres del tablero",
      question: "¿Cuántos espacios libres hay en el tablero?",
      help: "Cuente los del calentador viejo. 240 V ocupa dos; 120 V, uno.",
      words: ["espacios", "espacios libres", "espacios del tablero"],
    },
    room: {
      label: "Volumen del cuarto",
      question: "¿Qué volumen tiene el cuarto, cerrado?",
      help: "Largo por ancho por alto. Déjelo abierto si rejillas, persianas o ductos lo unen a más aire.",
      words: ["cuarto", "volumen del cuarto", "clóset"],
    },
    floor: {
      label: "Peso que aguanta el piso",
      question: "¿Cuánto puede pesar ahí un calentador lleno?",
      help: "Lo dice quien responde por el piso. Una losa sobre el terreno aguanta cualquiera de estos: déjelo abierto.",
      words: ["piso", "aguanta el piso", "peso lleno", "límite del piso"],
    },
    bedroom: {
      label: "Recámara más cercana",
      question: "¿A qué distancia del calentador está la recámara más cercana?",
      words: ["recámara más cercana", "distancia a la recámara", "a la recámara"],
    },
    sound: {
      label: "Ruido permitido",
      question: "¿Cuánto ruido puede hacer ahí, cuando mucho?",
      help: "En dBA en la recámara, o a un metro si no se dice la distancia. Una plática tranquila anda cerca de 50.",
      words: ["ruido", "sonido", "límite de ruido"],
    },
    mixing_valve: {
      ...commonFacts.mixing_valve,
      help: "Más de 120 °F se prueba siempre con ella; si no hay, digo que hace falta.",
    },
    setpoint: {
      ...commonFacts.setpoint,
      question: "¿Qué única temperatura del tanque pruebo?",
      help: "Si la omite, pruebo 120, 130 y 140 °F hasta donde llegue cada equipo.",
      before: ["a"],
    },
    hottest: {
      label: "Tanque más caliente",
      question: "¿Hasta qué temperatura se puede tener el tanque?",
      help: "120 °F, por ejemplo, si no se va a poner válvula mezcladora.",
      words: ["lo más caliente", "tanque más caliente", "no más de", "máximo"],
    },
    mode: { ...commonFacts.mode, question: "¿Qué único modo pruebo?" },
    bathrooms: commonFacts.bathrooms,
    wanted: commonFacts.wanted,
    place: commonFacts.place,
    month: {
      ...commonFacts.month,
      question: "¿En qué mes cuento los días fríos?",
      help: "El más frío, si nadie dice otro. El costo es siempre de todo el año.",
    },
    rate: commonFacts.rate,
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
    cost_per_year: "Costo al año",
    energy_per_year: "Electricidad al año",
    cop_year: "Calor por cada parte de luz, en el año",
    chance_of_running_cold: "Días que falta agua caliente",
    sampling_error: "Error de muestreo, más o menos",
    height_needed: "Altura que pide, con su espacio arriba",
    full_mass: "Peso lleno",
    footprint_load: "Carga donde se apoya, lleno",
    sound_at_bedroom: "Ruido en la recámara",
  },
  findings: {
    unknown_place: unitRefusals.unknown_place,
    rate_not_in_books: unitRefusals.rate_not_in_books,
    wanted_above_storage: ({ wanted, setpoint }) =>
      `Pide ${wanted} de un tanque a ${setpoint}, y mezclar solo enfría. Suba el tanque o pida menos.`,
    setpoint_above_hottest: ({ setpoint, hottest }) =>
      `Pide el tanque a ${setpoint} y ninguno a más de ${hottest}. Quite uno de los dos.`,

    best_heat_pump_first: best(MODES.heat_pump_first),
    best_heat_pump_only: best(MODES.heat_pump_only),
    best_both_together: best(MODES.both_together),
    best_elements_only: best(MODES.elements_only),
    so_far_heat_pump_first: soFar(MODES.heat_pump_first),
    so_far_heat_pump_only: soFar(MODES.heat_pump_only),
    so_far_both_together: soFar(MODES.both_together),
    so_far_elements_only: soFar(MODES.elements_only),
    nothing_fits: ({ models }) => `Ninguno cabe: los ${models} modelos del catálogo quedan fuera.`,
    all_cold: ({ models, limit }) =>
      `Ninguno alcanza: de ${models} modelos que caben, todos se enfrían más de ${limit} de los días.`,
    empty_catalogue: () => "El catálogo de la empresa está vacío; no hay de dónde elegir.",
    tried: ({ settings, models, refused }) =>
      `Probé ${settings} formas de operar ${models} modelos; el sitio deja fuera ${refused}. De cada uno va la mejor.`,
    too_close: ({ low, high, limit }) =>
      `No se puede decidir: con 95 % de confianza se enfría de ${low} a ${high} de los días; el límite es ${limit}.`,
    surely: ({ model, setpoint, cost }) =>
      `El más barato que queda bajo el límite con 95 % de confianza: ${model} a ${setpoint}, ${cost} al año.`,
    chance_for: ({ cold, air, days }) =>
      `Los días fríos se cuentan en ${days} días con agua a ${cold} y aire a ${air}. El costo es de un año simulado.`,
    bedrooms_as_people: ({ people }) => `Esas recámaras se toman como ${people} personas, promedio de muchas casas.`,
    fit_valve: ({ setpoint, time }) =>
      `Ponga la válvula mezcladora antes de subirlo a ${setpoint}: quema en ${time} o menos. Su precio no está contado.`,
    weighs_full: ({ mass, load, usual }) =>
      `Lleno pesa ${mass}: ${load} donde se apoya. Los pisos de vivienda se planean para ${usual} en todo el cuarto, no en un punto. Decide quien responde por el edificio.`,
    own_circuit: ({ models }) =>
      `Estos piden su propio circuito de 120 V: ${models}. Un electricista dice qué hace falta.`,
    outdoor_units: ({ models }) =>
      `Estos llevan la bomba de calor afuera: ${models}. Los corrí con el aire del cuarto; en invierno cuestan más.`,
    sound_without_walls: () =>
      "El ruido es el de la hoja a un metro y baja con la distancia como al aire libre. Los muros quitan más; un cuarto vacío hace eco.",
    prices_set: ({ plan, day }) => `Precios: tarifa “${plan}” de los libros de la empresa, del ${day}.`,
    only_running_cost: () =>
      "Ordenados solo por el costo de operar. Pida el costo anual para ver precio y recuperación.",
    not_checked: ({ limits }) => `No se dijo, y no se revisó: ${limits}.`,
    relax_first: ({ limit, models }) =>
      `Un solo límite deja fuera a la mayoría. Límite: ${limit}. Modelos que solo él deja fuera: ${models}.`,
    two_limits: () => "A cada modelo lo dejan fuera dos límites o más; cambiar uno solo no basta.",

    heat_pump_first: () => "Primero la bomba de calor",
    heat_pump_only: () => "Solo bomba de calor",
    both_together: () => "Las dos fuentes juntas",
    elements_only: () => "Solo resistencias",
    cold_heat_pump_first: cold(MODES.heat_pump_first),
    cold_heat_pump_only: cold(MODES.heat_pump_only),
    cold_both_together: cold(MODES.both_together),
    cold_elements_only: cold(MODES.elements_only),
    remark_needs_valve: () => "Pide válvula mezcladora",
    remark_has_valve: () => "Con la válvula mezcladora",
    remark_close: ({ low, high }) => `No se puede decidir: ${low} a ${high}`,
    remark_valve_and_close: ({ low, high }) => `Pide válvula mezcladora. No se puede decidir: ${low} a ${high}`,
    remark_none: () => "–",
    limit_of: ({ limit }) => limit,
    refused_door: ({ needed, there }) => `Mide ${needed} de ancho; la puerta más angosta, ${there}.`,
    refused_height: ({ needed, there }) => `Pide ${needed} con su espacio arriba; hay ${there}.`,
    refused_floor: ({ needed, there }) => `Lleno pesa ${needed}; el piso aguanta ${there}.`,
    refused_room: ({ needed, there }) =>
      `Pide un cuarto cerrado de ${needed}; hay ${there}. Rejillas o ductos pueden suplirlo.`,
    refused_supply: ({ made_for, there }) => `Es para ${made_for}; hay ${there}.`,
    refused_breaker: ({ needed, there }) => `Pide interruptor de ${needed}; el tablero da para ${there}.`,
    refused_spaces: ({ needed, there }) => `Espacios que ocupa en el tablero: ${needed}; libres: ${there}.`,
    refused_sound: ({ needed, there, distance }) => `Hace ${needed} a ${distance}; el límite es ${there}.`,
    refused_mode: () => "No ofrece ese modo.",
    refused_setpoint: ({ lowest, highest }) => `Solo se ajusta de ${lowest} a ${highest}.`,

    step_size: ({ model }) => `Si alcanza: ${model}`,
    step_cost: ({ model }) => `Costo anual: ${model}`,
    step_circuit: ({ model }) => `Circuito: ${model}`,
    step_expansion: ({ model }) => `Tanque de expansión: ${model}`,
    step_relax: ({ limit }) => `Probar con más: ${limit}`,
    step_limit: ({ limit }) => `Permitir ${limit} de días fríos`,
  },
  tables: {
    ranking: {
      title: "Modelos que alcanzan, primero el más barato de operar",
      columns: {
        rank: "Núm.",
        model: "Modelo",
        setpoint: "Tanque",
        mode: "Modo",
        cost: "Costo al año",
        energy: "Energía al año",
        chance: "Días fríos",
        remark: "Nota",
      },
    },
    refused: { title: "Los que no, y por qué", columns: { model: "Modelo", reason: "Razón" } },
    limits: {
      title: "Lo que permite el sitio",
      columns: {
        limit: "Límite",
        there: "Hay",
        refuses: "Deja fuera",
        admits: "Solo él deja fuera",
        from: "El primero cabe con",
      },
    },
  },
};
