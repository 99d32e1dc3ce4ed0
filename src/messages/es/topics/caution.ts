import type { caution } from "../../../topics/caution.ts";
import type { TopicTexts } from "../../topic-texts.ts";
import { commonFacts } from "../common-facts.ts";

export const texts: TopicTexts<typeof caution> = {
  title: "Advertencias",
  names: ["advertencias", "advertencia", "revisión de código"],
  summary: "Lo que piden los códigos y la buena práctica en este lugar, cómo mostrarlo y quién decide.",
  examples: [
    "advertencias cochera, puesto a 140F, sin válvula mezcladora, cerrado",
    "advertencias ático, charola sin drenaje, el condensado no va a ningún lado",
    "advertencias clóset, tiro natural, saca aire de la casa",
  ],
  facts: {
    room: {
      label: "Dónde está",
      question: "¿Dónde está el calentador?",
      words: ["está en", "ubicación", "cuarto"],
      options: {
        basement: { label: "Sótano", words: ["subterráneo"] },
        garage: { label: "Cochera", words: ["garaje", "garage"] },
        attic: { label: "Ático", words: ["entretecho"] },
        crawl_space: { label: "Espacio bajo la casa", words: ["bajo la casa"] },
        closet: { label: "Clóset", words: ["armario"] },
        utility_room: { label: "Cuarto de servicio", words: ["lavandería", "cuarto de lavado", "cuarto de máquinas"] },
        living_space: { label: "Área habitada", words: ["cocina", "pasillo"] },
        outdoors: { label: "Afuera", words: ["intemperie", "exterior"] },
      },
    },
    setpoint: commonFacts.setpoint,
    mixing_valve: commonFacts.mixing_valve,
    closed: commonFacts.closed,
    fuel_appliance: {
      label: "Aparato de combustión cerca",
      question: "¿Hay cerca algo que queme combustible, y de dónde toma el aire?",
      help: "Un calefactor, caldera, calentador o chimenea. Sellado: aire y humo van por tubos propios.",
      words: ["aparato de combustión", "aparato de gas"],
      options: {
        none: { label: "Nada se quema", words: ["todo eléctrico", "sin aparato de combustión"] },
        sealed: { label: "Sellado", words: ["combustión sellada", "tiro directo"] },
        natural_draft: { label: "Toma aire del cuarto", words: ["tiro natural", "atmosférico"] },
      },
    },
    occupants: {
      label: "Quién vive ahí",
      question: "¿Viven ahí niños chicos, mayores de 65 o alguien que siente poco el calor?",
      words: ["ocupantes", "quién vive ahí"],
      options: {
        sturdy: { label: "Ninguno de ellos", words: ["adultos sanos"] },
        frail: { label: "Sí, alguno", words: ["niños chicos", "ancianos", "adultos mayores", "discapacitados"] },
      },
    },
    place: commonFacts.place,
    model: commonFacts.model,
    work: {
      label: "Trabajo",
      question: "¿Qué se va a hacer?",
      words: ["trabajo", "tarea"],
      options: {
        survey: { label: "Visita", words: ["inspección del lugar"] },
        removal: { label: "Retiro", words: ["desmontaje", "quitar el viejo"] },
        piping: { label: "Tubería", words: ["trabajo de tubería"] },
        wiring: { label: "Cableado", words: ["trabajo eléctrico"] },
        refrigerant_circuit: { label: "Circuito de refrigerante", words: ["líneas de refrigerante"] },
        start_up: { label: "Arranque", words: ["puesta en marcha"] },
        hand_over: { label: "Entrega", words: ["entrega al cliente"] },
      },
    },
    replaces: {
      label: "Reemplaza a",
      question: "¿Qué calentador reemplaza?",
      words: ["reemplaza", "calentador viejo"],
      options: {
        electric: { label: "Tanque eléctrico", words: ["eléctrico viejo"] },
        gas: { label: "Calentador de gas", words: ["gas", "gas viejo"] },
        heat_pump: { label: "Bomba de calor vieja", words: ["bomba de calor anterior"] },
      },
    },
    permit: { label: "Permiso", question: "¿Hay permiso?", words: ["permiso"] },
    inspected: { label: "Inspeccionado", question: "¿Ya firmó el inspector?", words: ["inspeccionado", "inspección"] },
    owner_shown: {
      label: "Dueño instruido",
      question: "¿Se le mostró al dueño cómo usarlo?",
      words: ["dueño instruido", "se mostró al dueño"],
    },
    asbestos: {
      label: "Puede tener asbesto",
      question: "¿El forro viejo parece tener asbesto?",
      words: ["asbesto"],
    },
    tank: commonFacts.tank,
    line_pressure: commonFacts.line_pressure,
    relief_setting: commonFacts.relief_setting,
    control: {
      label: "Qué recibe la expansión",
      question: "¿Qué recibe la expansión del agua?",
      words: ["control de expansión"],
      options: {
        none: { label: "Sin tanque de expansión", words: ["sin control de expansión"] },
        tank: { label: "Hay tanque de expansión", words: ["con tanque de expansión", "tanque de expansión"] },
        relief_valve: { label: "Gotea la válvula de alivio", words: ["gotea el alivio"] },
      },
    },
    precharge: {
      label: "Su carga de aire",
      question: "¿Qué presión de aire tiene el tanque de expansión?",
      words: ["precarga", "carga de aire"],
    },
    relief: {
      label: "Válvula de alivio",
      question: "¿Está la válvula de alivio y puede descargar?",
      words: ["la válvula de alivio está"],
      options: {
        fitted: { label: "Tiene válvula de alivio", words: ["con válvula de alivio"] },
        missing: { label: "Sin válvula de alivio", words: ["falta la válvula de alivio"] },
        plugged: { label: "Alivio tapado", words: ["válvula de alivio tapada", "alivio taponado"] },
      },
    },
    discharge: {
      label: "La descarga termina",
      question: "¿Dónde termina el tubo de descarga del alivio?",
      words: ["descarga del alivio", "tubo de descarga", "descarga"],
      options: {
        none: { label: "Sin tubo de descarga", words: ["falta el tubo de descarga"] },
        floor: { label: "Descarga al piso", words: ["descarga en el piso"] },
        drain: { label: "Descarga a un drenaje", words: ["descarga al drenaje"] },
        pan: { label: "Descarga en la charola", words: ["descarga a la charola"] },
        outdoors: { label: "Descarga afuera", words: ["descarga al exterior"] },
      },
    },
    discharge_blocks: {
      label: "La descarga se puede tapar",
      question: "¿El tubo de descarga sube, hace trampa, tiene llave o termina en rosca?",
      words: ["descarga sube", "descarga con trampa", "descarga con rosca"],
    },
    discharge_end: {
      label: "Fin de la descarga sobre el piso",
      question: "¿A qué altura del piso o receptor termina la descarga?",
      words: ["fin de la descarga", "altura de la descarga"],
    },
    tap: {
      label: "En la llave",
      question: "¿Qué tan caliente sale en tina o regadera?",
      words: ["llave", "en la llave", "tina", "regadera"],
    },
    bidet: { label: "En el bidé", question: "¿Qué tan caliente sale en el bidé?", words: ["bidé"] },
    public_lavatory: {
      label: "En un lavabo público",
      question: "¿Qué tan caliente sale en un lavabo de uso público?",
      words: ["lavabo público"],
    },
    fixtures_limited: {
      label: "Llaves con límite",
      question: "¿Regaderas y tinas tienen su propia válvula limitadora?",
      words: ["llaves con límite", "válvulas limitadoras"],
    },
    idle: {
      label: "Sin uso",
      question: "¿Cuánto tiempo queda el agua sin usarse?",
      words: ["sin uso", "desocupada", "parada"],
    },
    dead_leg: {
      label: "Ramal muerto",
      question: "¿Sigue unido un ramal tapado?",
      words: ["ramal muerto", "ramal tapado"],
    },
    gas_smell: { label: "Huele a gas", question: "¿Huele a gas?", words: ["huele a gas", "olor a gas"] },
    gas_line: {
      label: "Línea de gas vieja",
      question: "¿Está tapada la línea de gas vieja?",
      words: ["línea de gas"],
      options: {
        capped: { label: "Línea de gas tapada", words: ["gas tapado"] },
        open: { label: "Línea de gas abierta", words: ["gas sin tapar", "línea de gas sin tapar"] },
      },
    },
    shared_flue: {
      label: "Chimenea compartida",
      question: "¿Queda otro aparato en la chimenea vieja?",
      words: ["chimenea compartida", "ducto de humo compartido"],
    },
    unit_mass: { label: "Peso, vacío", question: "¿Cuánto pesa el equipo vacío?", words: ["peso", "pesa"] },
    floor: {
      label: "Piso",
      question: "¿De qué es el piso?",
      words: ["piso", "piso de"],
      options: {
        concrete: { label: "Piso de concreto", words: ["concreto", "losa"] },
        wood: { label: "Piso de madera", words: ["madera", "vigas"] },
      },
    },
    floor_allows: {
      label: "El piso aguanta",
      question: "¿Qué peso puede cargar ahí el piso?",
      words: ["el piso aguanta", "carga del piso"],
    },
    passage: {
      label: "Paso más angosto",
      question: "¿Qué ancho tiene la puerta más angosta de la entrada?",
      words: ["paso", "puerta", "puerta más angosta"],
    },
    lifting_gear: {
      label: "Equipo para cargar",
      question: "¿Hay equipo para cargar?",
      words: ["equipo para cargar", "diablito"],
    },
    laid_down: {
      label: "Estuvo acostado",
      question: "¿El equipo estuvo acostado?",
      words: ["acostado", "estuvo acostado"],
    },
    headroom: {
      label: "Altura libre arriba",
      question: "¿Cuánta altura libre hay arriba del equipo?",
      words: ["altura libre", "espacio arriba"],
    },
    service_space: {
      label: "Espacio ante los controles",
      question: "¿Qué fondo tiene el espacio plano ante los controles?",
      words: ["espacio de servicio"],
    },
    filter_reachable: {
      label: "Filtro al alcance",
      question: "¿Se puede alcanzar y sacar el filtro?",
      words: ["filtro al alcance"],
    },
    impact_protected: {
      label: "A salvo de carros",
      question: "¿Un poste o muro detiene los carros?",
      words: ["poste de protección", "a salvo de carros"],
    },
    ignition_height: {
      label: "Chispa sobre el piso",
      question: "¿A qué altura del piso de la cochera está lo más bajo que chispea o se pone al rojo?",
      words: ["altura de la base", "altura de encendido"],
    },
    safe_access: {
      label: "Acceso seguro",
      question: "¿Hay un acceso seguro y con luz, con piso donde pararse?",
      words: ["acceso seguro", "pasarela"],
    },
    seismic: { label: "Zona sísmica", question: "¿Es zona sísmica?", words: ["zona sísmica", "sismo"] },
    straps: { label: "Flejes", question: "¿Cuántos flejes lo sujetan?", words: ["flejes", "fleje"] },
    strap_height: {
      label: "Fleje de abajo sobre los controles",
      question: "¿A qué altura sobre los controles está el fleje de abajo?",
      words: ["altura del fleje", "fleje de abajo"],
    },
    room_volume: {
      label: "Volumen del cuarto",
      question: "¿Qué volumen tiene el cuarto?",
      words: ["volumen del cuarto", "tamaño del cuarto"],
    },
    exhaust: {
      label: "El aire frío va",
      question: "¿A dónde va el aire frío?",
      words: ["aire frío va", "escape de aire"],
      options: {
        room: { label: "Al mismo cuarto", words: ["sin ducto"] },
        duct_bare: { label: "Ducto sin aislar", words: ["ducto desnudo"] },
        duct_insulated: { label: "Ducto aislado", words: ["escape aislado"] },
      },
    },
    house_air: {
      label: "Saca aire de la casa",
      question: "¿Saca aire de la casa sin que entre otro?",
      words: ["saca aire de la casa", "aire de la casa"],
    },
    room_low: {
      label: "Lo más frío del cuarto",
      question: "¿Qué tan frío se puede poner el cuarto?",
      words: ["lo más frío", "el cuarto baja a"],
    },
    bedroom_wall: {
      label: "En muro de recámara",
      question: "¿Está contra el muro de una recámara?",
      words: ["muro de recámara"],
    },
    leak_harms: {
      label: "Una fuga daña",
      question: "¿Una fuga dañaría la casa?",
      words: ["una fuga daña", "fuga haría daño"],
    },
    pan: {
      label: "Charola",
      question: "¿Hay charola, y tiene drenaje?",
      words: ["charola"],
      options: {
        none: { label: "Sin charola", words: ["no hay charola"] },
        no_drain: { label: "Charola sin drenaje", words: ["charola seca"] },
        drained: { label: "Charola con drenaje", words: ["charola drenada"] },
      },
    },
    pan_depth: {
      label: "Fondo de la charola",
      question: "¿Qué profundidad tiene la charola?",
      words: ["fondo de la charola"],
    },
    pan_drain: {
      label: "Drenaje de la charola",
      question: "¿De qué medida es el drenaje de la charola?",
      words: ["drenaje de la charola"],
    },
    condensate: {
      label: "El condensado termina",
      question: "¿A dónde va el condensado?",
      words: ["condensado", "condensado va"],
      options: {
        nowhere: { label: "A ningún lado", words: ["condensado no va a ningún lado", "sin drenaje de condensado"] },
        pan: { label: "A la charola", words: ["condensado a la charola"] },
        drain_with_air_gap: { label: "Drenaje con espacio de aire", words: ["espacio de aire"] },
        drain_direct: { label: "Unido al drenaje", words: ["directo al drenaje"] },
        outdoors: { label: "Fuera de la casa", words: ["condensado afuera"] },
        pump: { label: "A una bomba", words: ["bomba de condensado"] },
      },
    },
    condensate_slope: {
      label: "Caída del condensado",
      question: "¿Cuánto baja la línea de condensado en su largo?",
      words: ["pendiente del condensado", "caída del condensado"],
    },
    pump_float: {
      label: "Flotador conectado",
      question: "¿El flotador de la bomba apaga el equipo?",
      words: ["flotador", "flotador conectado"],
    },
    outdoor_lines: {
      label: "Líneas de agua afuera",
      question: "¿Pasan líneas de agua por afuera?",
      words: ["líneas afuera"],
      options: {
        none: { label: "Sin líneas afuera", words: ["líneas adentro"] },
        protected: { label: "Líneas protegidas", words: ["cinta calefactora"] },
        bare: { label: "Líneas sin proteger", words: ["líneas desnudas"] },
      },
    },
    disconnect: {
      label: "Desconexión a la vista",
      question: "¿Hay un desconectador a la vista?",
      words: ["desconectador", "desconexión a la vista"],
    },
    lockable: {
      label: "Se puede candar",
      question: "¿El interruptor se puede candar abierto?",
      words: ["candado", "se puede candar"],
    },
    working_depth: {
      label: "Espacio ante el tablero",
      question: "¿Qué fondo libre hay ante tablero o desconectador?",
      words: ["espacio ante el tablero", "fondo libre"],
    },
    wet_place: {
      label: "Lugar mojado",
      question: "¿Es lugar mojado, y hay protección de falla a tierra?",
      words: ["lugar mojado"],
      options: {
        dry: { label: "Lugar seco", words: ["sitio seco"] },
        with_ground_fault: { label: "Mojado, con falla a tierra", words: ["con gfci"] },
        without_ground_fault: { label: "Mojado, sin falla a tierra", words: ["sin gfci"] },
      },
    },
    locked_out: {
      label: "Bloqueado",
      question: "¿Está bloqueado, etiquetado y probado sin voltaje?",
      words: ["bloqueado", "bloqueo"],
    },
    fill: {
      label: "Agua en el tanque",
      question: "¿Está lleno de agua el tanque?",
      words: ["agua en el tanque"],
      options: {
        full: { label: "Tanque lleno", words: ["tanque llenado"] },
        empty: { label: "Tanque vacío", words: ["tanque sin llenar", "tanque sin agua"] },
      },
    },
    bond: {
      label: "Caliente a fría a tierra",
      question: "¿Cuántos ohms hay de la caliente a la fría y a tierra?",
      words: ["puente a tierra", "unión a tierra"],
    },
    pipe_insulated: {
      label: "Tubo caliente aislado",
      question: "¿Está aislado el tubo caliente?",
      words: ["tubo aislado", "aislante de tubo"],
    },
    heat_traps: {
      label: "Trampas de calor",
      question: "¿Hay trampas de calor?",
      words: ["trampas de calor", "trampa de calor"],
    },
    joint: {
      label: "Uniones en el tanque",
      question: "¿Qué metales se juntan en el tanque?",
      words: ["unión", "uniones"],
      options: {
        alike: { label: "Mismos metales", words: ["metales iguales"] },
        dielectric: { label: "Unión dieléctrica", words: ["niple dieléctrico"] },
        direct: { label: "Cobre directo al acero", words: ["cobre con acero"] },
      },
    },
    lead_free: {
      label: "Marcado sin plomo",
      question: "¿Válvulas y conexiones dicen sin plomo?",
      words: ["libre de plomo", "sin plomo"],
    },
    other_water: {
      label: "Unido a otra agua",
      question: "¿Está unido a calefacción u otra agua?",
      words: ["otra agua"],
      options: {
        none: { label: "Solo agua potable", words: ["sin otra agua"] },
        preventer: { label: "Otra agua, con preventor", words: ["calefacción con preventor"] },
        open: { label: "Otra agua, sin preventor", words: ["calefacción sin preventor"] },
      },
    },
    shut_off: { label: "Llave de paso", question: "¿Hay llave de paso en la fría?", words: ["llave de paso"] },
    drain_valve: {
      label: "Llave de drenaje",
      question: "¿Hay llave de drenaje?",
      words: ["llave de drenaje", "válvula de drenaje"],
    },
    loop: {
      label: "Recirculación",
      question: "¿Hay recirculación, y qué la mueve?",
      words: ["recirculación", "circuito de recirculación"],
      options: {
        none: { label: "Sin recirculación", words: ["no hay recirculación"] },
        always_on: { label: "Recirculación todo el día", words: ["recirculación siempre"] },
        timer: { label: "Recirculación con reloj", words: ["recirculación por horario"] },
        demand: { label: "Recirculación por botón", words: ["recirculación a pedido"] },
      },
    },
    loop_check: {
      label: "Check en la recirculación",
      question: "¿Hay válvula check en la recirculación?",
      words: ["check en la recirculación"],
    },
    loop_return: {
      label: "Regresa a",
      question: "¿Qué tan caliente regresa la recirculación?",
      words: ["retorno", "regresa a"],
    },
    hardness: {
      label: "Dureza del agua",
      question: "¿Qué tan dura es el agua?",
      words: ["dureza", "el agua es"],
      options: {
        soft: { label: "Agua blanda", words: ["blanda"] },
        moderate: { label: "Agua moderada", words: ["moderada"] },
        hard: { label: "Agua dura", words: ["dura"] },
        very_hard: { label: "Agua muy dura", words: ["muy dura"] },
      },
    },
    softened: { label: "Suavizador", question: "¿Hay suavizador?", words: ["suavizador", "suavizada"] },
    well: { label: "Agua de pozo", question: "¿El agua viene de un pozo?", words: ["pozo", "agua de pozo"] },
    refrigerant_work: {
      label: "Se abre el refrigerante",
      question: "¿Se abre el circuito de refrigerante, y quién lo abre?",
      words: ["trabajo de refrigerante"],
      options: {
        none: { label: "No se abre", words: ["circuito sellado"] },
        with_card: { label: "Lo abre alguien con credencial", words: ["técnico certificado"] },
        without_card: { label: "Lo abre alguien sin credencial", words: ["sin credencial de refrigerante"] },
      },
    },
    flammable: {
      label: "Refrigerante inflamable",
      question: "¿Es inflamable el refrigerante?",
      words: ["inflamable", "refrigerante inflamable"],
    },
  },
  results: {
    plumbing_code: "Código de plomería",
    electrical_code: "Código eléctrico",
    mechanical_code: "Código mecánico",
  },
  findings: {
    raises_stop: ({ stops, all }) =>
      `Alto primero: hay peligro de vida en estos datos. De alto: ${stops}; advertencias en total: ${all}.`,
    raises_must: ({ musts, all }) =>
      `Primero lo que pide el código. Obligatorias: ${musts}; advertencias en total: ${all}.`,
    raises_less: ({ all }) => `Nada que detenga u obligue en estos datos. Advertencias que aún valen la pena: ${all}.`,
    raises_nothing: () =>
      "Estos datos no dan ninguna advertencia. Eso no prueba que el trabajo esté bien; decide la autoridad.",
    code_assumed: () => "Sus libros no dicen qué código se adoptó. Tomo estos códigos modelo; pregunte cuál rige ahí.",
    some_silenced: ({ silenced }) => `Calladas por enmiendas locales: ${silenced}. La tabla dice cuáles y por qué.`,
    tell_more: () => "Lo que no ha dicho no da advertencias. Diga más en una línea, o llene el formulario.",
    step_form: () => "Todos los datos en formulario",
    unknown_model: ({ typed, nearest }) => `Ningún modelo se llama “${typed}”. Parecidos: ${nearest}.`,
    unknown_place: ({ typed, nearest }) => `Ningún lugar se llama “${typed}”. Parecidos: ${nearest}.`,
  },
};
