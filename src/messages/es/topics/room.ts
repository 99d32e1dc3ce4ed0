import type { room } from "../../../topics/room.ts";
import type { TopicTexts } from "../../topic-texts.ts";
import { commonFacts } from "../common-facts.ts";

export const texts: TopicTexts<typeof room> = {
  title: "Cuarto para la bomba de calor",
  names: ["cuarto", "aire para la bomba de calor"],
  summary: "Qué tanto se enfría el cuarto con la bomba de calor adentro, y lo más barato que lo remedia.",
  examples: [
    "room 7x10x10 pies clóset",
    "room volumen=450cuft lugar del equipo=clóset modelo=hollin-50 puerta=rejilla",
    "room 700 pies3 sótano, 4 personas, ductos=solo salida, largo del ducto 12 pies",
  ],
  facts: {
    volume: {
      label: "Cuarto",
      question: "¿De qué tamaño es el cuarto?",
      help: "Largo, ancho y alto, como 7x10x10 pies, o su volumen, como 700 pies3.",
      words: ["volumen", "tamaño del cuarto", "medidas"],
    },
    where: {
      label: "Tipo de cuarto",
      question: "¿Qué tipo de cuarto es?",
      help: "De eso depende qué paredes dan a cuartos calientes, afuera o a la tierra. El clóset se toma dentro de la casa con calefacción.",
      words: ["tipo de cuarto", "lugar del equipo"],
      options: {
        closet: { label: "Clóset en la casa", words: ["clóset", "armario"] },
        utility_room: { label: "Cuarto de servicio", words: ["cuarto de lavado", "cuarto de máquinas"] },
        basement: { label: "Sótano", words: [] },
        garage: { label: "Cochera", words: ["garaje"] },
      },
    },
    model: {
      ...commonFacts.model,
      help: "Su nombre corto en el catálogo de la empresa. Omítalo y tomo un equipo usual.",
    },
    people: commonFacts.people,
    door: {
      label: "Puerta",
      question: "¿Qué puerta tiene el cuarto?",
      help: "Lisa es una puerta interior común con su luz abajo. Sellada es con empaques y guardapolvo.",
      words: ["puerta"],
      options: {
        sealed: { label: "Sellada", words: ["puerta sellada", "con empaques"] },
        plain: { label: "Lisa", words: ["puerta lisa", "puerta cerrada"] },
        louvred: { label: "De rejilla", words: ["rejilla", "puerta de rejilla", "puerta de persiana"] },
        open: { label: "Sin puerta", words: ["puerta quitada", "vano abierto"] },
      },
    },
    combustion: {
      label: "Aparato de combustión ahí",
      question: "¿Hay en ese cuarto o al lado un aparato de gas o petróleo que saque sus gases por tiro natural?",
      help: "Un horno, caldera o calentador con campana de tiro. El aire que se saca de la casa puede regresar sus gases.",
      words: ["aparato de combustión", "combustión", "horno", "caldera"],
    },
    setpoint: { ...commonFacts.setpoint, before: ["a"] },
    tank: { ...commonFacts.tank, help: "En la placa, en galones. Un modelo con nombre ya lo dice." },
    heat_pump: {
      label: "Calor de la bomba",
      question: "¿Cuánto calor da la bomba de calor?",
      help: "Calor al agua en el punto nominal.",
      words: ["calor de la bomba", "capacidad de la bomba"],
    },
    mode: commonFacts.mode,
    place: commonFacts.place,
    outdoor: {
      label: "Afuera, día frío",
      question: "¿Qué tanto frío hace afuera en un día frío de invierno?",
      help: "El promedio de un día así. Si no se dice, tomo el mes más frío del lugar menos 14 °F.",
      words: ["afuera", "exterior", "temperatura de afuera"],
    },
    adjoining: {
      label: "Espacio tras la puerta",
      question: "¿A qué temperatura está en invierno el espacio tras la puerta?",
      help: "Los cuartos con calefacción se toman a 68 °F; el resto de un sótano, según los libros del lugar.",
      words: ["al lado", "cuarto de al lado", "espacio de al lado"],
    },
    ceiling: {
      label: "Altura del techo",
      question: "¿Qué altura tiene el techo?",
      help: "Reparte el volumen entre piso y paredes. El piso se toma cuadrado.",
      words: ["techo", "altura del techo"],
    },
    undercut: {
      label: "Luz bajo la puerta",
      question: "¿Qué luz hay bajo la puerta?",
      help: "Mida desde el piso, no desde la alfombra.",
      words: ["luz", "luz de la puerta", "luz bajo la puerta"],
    },
    low_grille: {
      label: "Rejilla baja, área libre",
      question: "¿Cuánta área libre tiene la rejilla baja?",
      help: "Viene marcada; si no, tres cuartos de la cara si es de metal y un cuarto si es de madera.",
      words: ["rejilla baja", "rejilla de abajo"],
    },
    high_grille: {
      label: "Rejilla alta, área libre",
      question: "¿Cuánta área libre tiene la rejilla alta?",
      help: "Viene marcada; si no, tres cuartos de la cara si es de metal y un cuarto si es de madera.",
      words: ["rejilla alta", "rejilla de arriba"],
    },
    duct: {
      label: "Ductos",
      question: "¿Qué conexiones de aire del equipo llevan ducto?",
      words: ["ducto", "ductos"],
      options: {
        none: { label: "Ninguna", words: ["sin ductos"] },
        exhaust: { label: "Solo salida", words: ["solo salida", "ducto de salida"] },
        intake: { label: "Solo toma", words: ["solo toma", "ducto de toma"] },
        both: { label: "Toma y salida", words: ["toma y salida", "los dos ductos"] },
      },
    },
    duct_to: {
      label: "Los ductos van",
      question: "¿Adónde van los ductos?",
      words: ["ductos hacia", "ducto hacia"],
      options: {
        outdoors: { label: "Afuera", words: ["hacia afuera", "al exterior"] },
        adjoining: { label: "Al espacio tras la puerta", words: ["a la casa", "al cuarto de al lado"] },
      },
    },
    duct_run: {
      label: "Largo de cada ducto",
      question: "¿Qué largo tiene cada ducto?",
      help: "Además se cuentan dos codos y una campana de pared en cada uno.",
      words: ["largo del ducto", "tramo del ducto"],
    },
    duct_size: {
      label: "Medida del ducto",
      question: "¿De qué medida son los ductos?",
      help: "Diámetro interior. Estos equipos suelen pedir 8 in.",
      words: ["medida del ducto", "diámetro del ducto"],
    },
    duct_kind: {
      label: "Tipo de ducto",
      question: "¿Ducto rígido o flexible?",
      help: "El flexible se cuenta como queda en casi toda obra, 30 % menos que estirado.",
      words: ["tipo de ducto"],
      options: {
        galvanized: { label: "Lámina rígida", words: ["rígido", "ducto rígido", "lámina"] },
        flex: { label: "Flexible", words: ["ducto flexible"] },
      },
    },
    heater: {
      label: "Calefactor del cuarto",
      question: "¿De qué potencia es el calefactor de ese cuarto?",
      help: "Zócalo eléctrico, calefactor o registro abierto. Cero si nada lo calienta.",
      words: ["calefactor", "calefactor del cuarto", "zócalo"],
    },
    heater_setting: {
      label: "Calefactor puesto a",
      question: "¿A qué temperatura está puesto el calefactor del cuarto?",
      words: ["ajuste del calefactor", "calefactor puesto a"],
    },
    gains: {
      label: "Otro calor",
      question: "¿Cuánto calor dan otras cosas en ese cuarto?",
      help: "Un congelador da unos 100 W todo el día; una secadora, unos 100 W como promedio del día.",
      words: ["otro calor", "congelador"],
    },
    bedroom: {
      label: "Distancia a una recámara",
      question: "¿A qué distancia de la puerta del calentador está la recámara más cercana?",
      words: ["recámara", "distancia a la recámara"],
    },
  },
  results: {
    room_volume: "Cuarto",
    required_volume: "Se pide a un cuarto cerrado",
    room_temperature_low: "Lo más frío del cuarto, invierno",
    room_temperature_mean: "Promedio del cuarto, invierno",
    room_temperature_without: "Cuarto sin el equipo, invierno",
    humidity: "Humedad más alta en el cuarto",
    cop_in_room: "Calor por cada parte de luz, aquí",
    cop_open_air: "Lo mismo con aire sin límite",
    running_time: "La bomba trabaja por día",
    energy_per_day: "Electricidad por día, invierno",
    cooling_rate: "Frío al cuarto mientras trabaja",
    heating_penalty: "Repone la calefacción, día de invierno",
    airflow_needed: "Aire según la hoja",
    airflow_left: "Aire que queda con ductos",
    capacity_left: "Calor que queda con ese aire",
    net_free_area: "Área libre de puerta y rejillas",
    grille_area: "Cara de cada rejilla de metal",
    duct_pressure_drop: "Los ductos se llevan",
    duct_pressure_available: "El ventilador da para ductos",
    house_pressure: "La presión de la casa se mueve",
    condensate_per_hour: "Condensado mientras trabaja",
    condensate_per_day: "Condensado por día",
    drain_size: "Desagüe, al menos",
    sound_at_distance: "Ruido afuera, a esa distancia",
  },
  findings: {
    room_serves: ({ low, cop, open }) =>
      `El cuarto sirve: baja a ${low}, y la bomba da ${cop} partes contra ${open} con aire sin límite.`,
    room_struggles: ({ low, cop, open }) =>
      `Así el cuarto es chico: baja a ${low}, COP ${cop} contra ${open}. Nada de lo probado basta solo.`,
    room_too_cold: ({ low, without }) =>
      `Muy frío para una bomba de calor: el cuarto baja a ${low}, y a ${without} aun sin el equipo.`,
    fix_undercut: ({ before, after, gap }) =>
      `Recorte la puerta a ${gap} de luz: lo más frío del cuarto pasa de ${before} a ${after}.`,
    fix_grilles: ({ before, after, each }) =>
      `Ponga una rejilla baja y una alta de ${each} libres cada una: lo más frío pasa de ${before} a ${after}.`,
    fix_louvred: ({ before, after }) => `Ponga puerta de rejilla: lo más frío del cuarto pasa de ${before} a ${after}.`,
    fix_open: ({ before, after }) => `Abra el cuarto al espacio de al lado: lo más frío pasa de ${before} a ${after}.`,
    fix_exhaust: ({ before, after }) => `Saque el aire frío por ducto: lo más frío pasa de ${before} a ${after}.`,
    fix_intake: ({ before, after }) => `Ponga ducto a la toma: lo más frío pasa de ${before} a ${after}.`,
    fix_both: ({ before, after }) => `Ponga ducto a la toma y a la salida: lo más frío pasa de ${before} a ${after}.`,
    fix_less_compressor: ({ before, after }) =>
      `Use las dos fuentes juntas: lo más frío pasa de ${before} a ${after}, a cambio de más electricidad.`,
    ducts_cost_heat: ({ low, make_up, taken }) =>
      `El cuarto queda en ${low}, pero la casa calienta ${make_up} al día de aire de afuera por estos ductos; el equipo toma solo ${taken}.`,
    helps_most: () => "De todo lo probado, esto ayuda más; combínelo con otro o busque otro cuarto:",
    cop_lost: ({ cop, open, loss }) =>
      `Este cuarto cuesta ${loss} de la eficiencia: COP ${cop}, contra ${open} con aire que el equipo no enfría.`,
    barred_by_cold: ({ time }) =>
      `El cuarto se enfría demasiado para el compresor: queda bloqueado ${time} al día y trabajan las resistencias.`,
    frost_may_grow: ({ low }) =>
      `A ${low} el serpentín puede escarcharse. El deshielo no se cuenta; tome el COP como el mejor caso.`,
    damp_winter: ({ humidity }) =>
      `La humedad llega a ${humidity} en invierno. Las esquinas frías se mojan; si dura, sale moho.`,
    damp_summer: ({ humidity }) =>
      `La humedad llega a ${humidity} en verano. Deje entrar poco aire caliente de afuera; los tubos fríos sudan.`,
    volumes_disagree: () =>
      "Las fuentes no coinciden en qué tan grande debe ser un cuarto cerrado. Decide la hoja del equipo.",
    lab_differs: ({ lab, light, insulated }) =>
      `De 700 a 450 ft³ un laboratorio perdió ${lab} del COP; este modelo, en esa prueba, de ${light} a ${insulated}, según las paredes. No se sabe cuáles eran; tome las pérdidas como aproximadas.`,
    penalty_share: ({ taken, made_up, share }) =>
      `En un día de invierno el equipo toma ${taken} del aire; la calefacción repone ${made_up} (${share}).`,
    heating_not_touched: () => "El calor de una cochera casi no le cuesta a la calefacción de la casa.",
    heater_runs: ({ energy }) =>
      `El calefactor del cuarto da ${energy} al día; el equipo solo pasa ese calor al tanque.`,
    ducts_to_house: ({ airflow, pressure, make_up }) =>
      `Mientras trabaja, ${airflow} salen o entran sin balance: la presión de la casa se mueve ${pressure}, y ${make_up} al día calientan aire de afuera.`,
    combustion_with_exhaust: ({ pressure }) =>
      `Alto: sacar aire baja la casa ${pressure} junto a un aparato de tiro. Sus gases pueden regresar. Haga la prueba, o meta aire.`,
    combustion_same_room: () =>
      "Un aparato de tiro usa este mismo aire. Revise su aire de combustión y pruebe con el ventilador andando.",
    insulate_exhaust: () => "Aísle y selle el ducto de salida: lleva aire frío y suda.",
    drain_advice: ({ fall, run }) =>
      `Lleve el condensado con caída, ${fall} en ${run}, adonde no se congele. Si no puede caer, use bomba. Ponga trampa si la hoja la pide.`,
    counted_for: ({ outdoor, adjoining, hot_water }) =>
      `Cuenta para ${outdoor} afuera, ${adjoining} tras la puerta y ${hot_water} de agua caliente al día.`,
    counted_for_garage: ({ outdoor, hot_water }) =>
      `Cuenta para ${outdoor} afuera y ${hot_water} de agua caliente al día, con el portón cerrado.`,
    well_mixed: () =>
      "El aire del cuarto se toma bien mezclado. En el piso y frente a la salida está más frío de lo que se muestra.",
    square_floor: () => "Paredes, fugas y cosas guardadas son las usuales de un cuarto así; el piso se toma cuadrado.",
    generic_sheet: ({ volume }) =>
      `Sin modelo, tomé un equipo usual que guarda ${volume}. Diga el modelo para usar su hoja.`,
    sound_assumed: () => "La hoja no da el ruido; tomé 50 dBA, lo medio de estos equipos.",
    not_settled: () =>
      "El cuarto seguía cambiando al final de la corrida más larga. Tome los números como aproximados.",
    volume_met: () => "Sí",
    volume_short: () => "Muy chico",
    change_none: () => "Como se pidió",
    change_undercut: ({ gap }) => `Luz bajo la puerta ${gap}`,
    change_grilles: ({ each }) => `Rejilla baja y alta, ${each} cada una`,
    change_louvred: () => "Puerta de rejilla",
    change_open: () => "Abierto al espacio de al lado",
    change_exhaust: () => "Ducto de salida",
    change_intake: () => "Ducto de toma",
    change_both: () => "Los dos ductos",
    change_less_compressor: () => "Modo: las dos fuentes juntas",
    remark_as_asked: () => "–",
    remark_works: () => "Basta",
    remark_helps: () => "Ayuda, no basta",
    remark_no_help: () => "No ayuda",
    remark_costs_heat: () => "Gasta más calor del que mueve",
    no_heat_pump: () =>
      "Este equipo no tiene bomba de calor y no le quita calor al cuarto. Diga uno con bomba de calor.",
    no_openings_to_garage: () =>
      "Ninguna abertura ni ducto puede unir la cochera con la casa. Deje la puerta lisa y lleve los ductos afuera.",
    ducts_choke_fan: ({ left, size }) =>
      `Con ductos de ${size} al ventilador le queda solo ${left} de su aire. Escriba un ducto mayor o más corto.`,
    unknown_model: ({ typed, nearest }) =>
      `“${typed}” no está en el catálogo. Parecidos: ${nearest}. Escriba uno de estos.`,
    no_catalogue: ({ typed }) =>
      `“${typed}” no se conoce: el catálogo de la empresa está vacío. Omita el modelo y escriba los galones del tanque.`,
    unknown_place: ({ typed, nearest }) => `“${typed}” no es un lugar de los libros. Parecidos: ${nearest}.`,
    no_source: () => "Nada calienta esa agua. Diga cuánto calor da la bomba.",
    setpoint_outside_unit: ({ setpoint, lowest, highest }) =>
      `Este equipo no se puede poner a ${setpoint}. Escriba una temperatura de ${lowest} a ${highest}.`,
    mode_only_heat_pump: () =>
      "Este equipo no tiene resistencias; solo trabaja con su bomba de calor. Escriba: solo bomba de calor.",
    mode_only_elements: () => "Este equipo no tiene bomba de calor; solo trabaja con resistencias y no necesita aire.",
    mode_not_offered: () => "Este equipo no tiene ese modo. No diga el modo y tomo el usual.",
    supply_unfit: ({ supply, made_for }) =>
      `Este equipo es para ${made_for}, no para ${supply}. Escriba el voltaje que le toca.`,
    wanted_above_storage: ({ wanted, setpoint }) =>
      `Pide ${wanted} de un tanque a ${setpoint}, y mezclar solo enfría. Suba el tanque.`,
    cold_above_wanted: ({ cold, wanted }) => `El agua fría a ${cold} no puede bajar una mezcla a ${wanted}.`,
  },
  tables: {
    remedies: {
      title: "Qué cambiar, lo más barato primero",
      columns: {
        change: "Cambio",
        low: "Lo más frío",
        humidity: "Humedad",
        cop: "COP",
        energy: "Electricidad por día",
        remark: "¿Basta?",
      },
    },
    volumes: {
      title: "Quién pide cuánto de un cuarto cerrado",
      columns: { source: "Fuente", volume: "Volumen", here: "Aquí" },
    },
    closed_rooms: {
      title: "El mismo equipo en cuartos cerrados, puerta lisa",
      columns: { volume: "Volumen", low: "Lo más frío", cop: "COP", loss: "COP perdido" },
    },
  },
  charts: {
    day: {
      title: "Un día frío de invierno en el cuarto",
      columns: {
        room: "Cuarto",
        outdoors: "Afuera",
        humidity: "Humedad del cuarto",
        heat_pump: "Bomba de calor",
        chilly: "Escarcha posible debajo de",
      },
    },
  },
};
