import type { FactSpecs } from "../../../src/declaration/facts.ts";
import type { Source } from "../../../src/declaration/source.ts";
import type { Topic } from "../../../src/declaration/topic.ts";
import { NO_FAULTS } from "../../../src/faults/knowledge.ts";
import type { Library } from "../../../src/library.ts";
import type { AnyTopicTexts } from "../../../src/messages/topic-texts.ts";
import { toBase } from "../../../src/units/convert.ts";

/** Small invented topics with words in both languages, shaped like real ones. Their ranges and defaults mean nothing. */
const INVENTED: Source = { basis: "invented", document: "fixture" };

function fixtureTopic(id: string, facts: FactSpecs): Topic {
  return {
    id,
    work: "short",
    facts,
    results: [],
    findings: { done: {} },
    compute: () => ({
      kind: "answer",
      verdict: "info",
      headline: { code: "done", data: {} },
      results: [],
      findings: [],
    }),
  };
}

const temperature = (min_F: number, max_F: number) =>
  ({ type: "quantity", quantity: "temperature", min: toBase(min_F, "F"), max: toBase(max_F, "F") }) as const;
const pressure = { type: "quantity", quantity: "pressure", min: 0, max: toBase(300, "psi") } as const;
const tank = { type: "quantity", quantity: "volume", min: toBase(2, "gal"), max: toBase(500, "gal") } as const;

const TOPICS: readonly Topic[] = [
  fixtureTopic("expansion", {
    tank,
    setpoint: temperature(80, 210),
    cold: temperature(32, 120),
    line_pressure: pressure,
    closed: { type: "flag", default: { value: true, source: INVENTED } },
    mixing_valve: { type: "flag", optional: true },
    control: { type: "choice", options: ["none", "tank", "valve"], optional: true },
    relief_setting: { ...pressure, byNameOnly: true, default: { value: toBase(150, "psi"), source: INVENTED } },
  }),
  fixtureTopic("mix", {
    storage: temperature(80, 210),
    wanted: temperature(60, 180),
    cold: temperature(32, 120),
    drawable: {
      type: "quantity",
      quantity: "share",
      min: 0.1,
      max: 1,
      default: { value: 0.7, source: INVENTED },
    },
  }),
  fixtureTopic("circuit", {
    element: { type: "quantity", quantity: "power", min: 0, max: 12_000 },
    supply: { type: "quantity", quantity: "voltage", min: 100, max: 277 },
    run: { type: "quantity", quantity: "length", min: 0, max: toBase(500, "ft"), optional: true },
    breaker: { type: "quantity", quantity: "current", min: 10, max: 200, optional: true, byNameOnly: true },
    wire: { type: "choice", options: ["14", "12", "10"], optional: true },
    metal: { type: "choice", options: ["copper", "aluminium"], default: { value: "copper", source: INVENTED } },
    terminals: { type: "choice", options: ["60", "75"], default: { value: "60", source: INVENTED } },
  }),
  fixtureTopic("wait", {
    pipe: { type: "choice", options: ["copper_l", "copper_m", "pex", "cpvc"] },
    size: { type: "choice", options: ["1/2", "3/4", "1"] },
    length: { type: "quantity", quantity: "length", min: 0, max: toBase(1000, "ft") },
    flow: { type: "quantity", quantity: "water_flow", min: 0, max: toBase(60, "gpm") },
    branch_size: { type: "choice", options: ["1/2", "3/4", "1"], optional: true, byNameOnly: true },
  }),
  fixtureTopic("size", {
    people: { type: "quantity", quantity: "count", min: 1, max: 20, whole: true },
    tank,
    setpoint: temperature(80, 210),
    model: { type: "name", of: "model", optional: true },
    place: { type: "name", of: "place", optional: true },
  }),
  fixtureTopic("room", {
    room: { type: "quantity", quantity: "room_volume", min: 0, max: toBase(20_000, "ft3") },
    duct: { type: "quantity", quantity: "dimension", min: 0, max: toBase(20, "in"), optional: true },
    duct_length: { type: "quantity", quantity: "length", min: 0, max: toBase(100, "ft"), optional: true },
    louvre: { type: "flag", optional: true },
    door: { type: "flag", optional: true },
  }),
  fixtureTopic("away", {
    start: { type: "day" },
    end: { type: "day", byNameOnly: true },
    hold: { type: "quantity", quantity: "time", min: 0, max: toBase(60, "day"), optional: true },
  }),
];

const rest = { results: {}, findings: { done: () => "Done." } } as const;

const EN: Readonly<Record<string, AnyTopicTexts>> = {
  expansion: {
    title: "Expansion tank",
    summary: "Sizes the tank that takes up the growth of hot water.",
    examples: ["expansion 80 gal tank, 50F cold 140F hot 60 psi"],
    facts: {
      tank: { label: "Tank", question: "How big?", words: ["tank", "heater"] },
      setpoint: { label: "Setpoint", question: "How hot?", words: ["setpoint", "hot", "set to"] },
      cold: { label: "Cold water", question: "How cold?", words: ["cold", "incoming", "inlet"] },
      line_pressure: { label: "Line pressure", question: "What pressure?", words: ["pressure", "line"] },
      closed: { label: "Closed system", question: "Closed?", words: ["closed", "check valve"] },
      mixing_valve: { label: "Mixing valve", question: "Mixed?", words: ["mixing valve", "mixer"] },
      control: {
        label: "Growth control",
        question: "What takes the growth?",
        words: ["control", "growth control"],
        options: {
          none: { label: "Nothing", words: ["nothing fitted"] },
          tank: { label: "Tank fitted", words: ["tank fitted"] },
          valve: { label: "Valve drips", words: ["drips"] },
        },
      },
      relief_setting: { label: "Relief setting", question: "Relief?", words: ["relief", "relief valve", "t&p"] },
    },
    ...rest,
  },
  mix: {
    title: "Mixing",
    summary: "How much mixed water hot storage gives.",
    examples: ["mix 135 to 120 with 50 in"],
    facts: {
      storage: { label: "Storage", question: "How hot?", words: ["storage", "hot"], first: true },
      wanted: { label: "Wanted", question: "What at the tap?", words: ["wanted", "mixed", "tap"], before: ["to"] },
      cold: { label: "Cold", question: "How cold?", words: ["cold", "inlet"], before: ["with"], after: ["in"] },
      drawable: { label: "Drawable share", question: "Share?", words: ["drawable", "usable"] },
    },
    ...rest,
  },
  circuit: {
    title: "Circuit",
    summary: "Current, conductor and breaker.",
    examples: ["circuit 4500W at 208V 60 ft"],
    facts: {
      element: { label: "Element", question: "Watts?", words: ["element"] },
      supply: { label: "Supply", question: "Volts?", words: ["supply"], before: ["at"] },
      run: { label: "Run", question: "How far?", words: ["run", "distance"] },
      breaker: { label: "Breaker", question: "Breaker?", words: ["breaker", "fuse"] },
      wire: {
        label: "Wire",
        question: "Wire?",
        words: ["wire", "awg", "conductor"],
        options: {
          "14": { label: "14 AWG", words: ["14 awg", "#14", "14/2"] },
          "12": { label: "12 AWG", words: ["12 awg", "#12", "12/2"] },
          "10": { label: "10 AWG", words: ["10 awg", "#10", "10/2"] },
        },
      },
      metal: {
        label: "Metal",
        question: "Metal?",
        words: ["metal"],
        options: {
          copper: { label: "Copper", words: ["copper", "cu"] },
          aluminium: { label: "Aluminum", words: ["aluminum", "aluminium"] },
        },
      },
      terminals: {
        label: "Terminals",
        question: "Terminals?",
        words: ["terminals", "terminal"],
        options: { "60": { label: "60 °C", words: ["60c"] }, "75": { label: "75 °C", words: ["75c"] } },
      },
    },
    ...rest,
  },
  wait: {
    title: "Wait for hot water",
    summary: "How long hot water takes to arrive.",
    examples: ["wait 60 ft of 3/4 pex at 2 gpm"],
    facts: {
      pipe: {
        label: "Pipe",
        question: "Which pipe?",
        words: ["pipe"],
        options: {
          copper_l: { label: "Copper L", words: ["copper l", "type l"] },
          copper_m: { label: "Copper M", words: ["copper m", "type m"] },
          pex: { label: "PEX", words: ["pex"] },
          cpvc: { label: "CPVC", words: ["cpvc"] },
        },
      },
      size: {
        label: "Pipe size",
        question: "Size?",
        words: ["size"],
        options: {
          "1/2": { label: "1/2 in", words: ["1/2", "half inch"] },
          "3/4": { label: "3/4 in", words: ["3/4", "three quarter"] },
          "1": { label: "1 in", words: ["one inch"] },
        },
      },
      length: { label: "Length", question: "How long?", words: ["length"] },
      flow: { label: "Flow", question: "Flow?", words: ["flow", "shower"] },
      branch_size: {
        label: "Branch size",
        question: "Branch size?",
        words: ["branch"],
        options: {
          "1/2": { label: "1/2 in", words: [] },
          "3/4": { label: "3/4 in", words: [] },
          "1": { label: "1 in", words: [] },
        },
      },
    },
    ...rest,
  },
  size: {
    title: "Size a tank",
    summary: "Whether this tank serves this household.",
    examples: ["size people=4 tank=80gal setpoint=135F"],
    facts: {
      people: { label: "People", question: "How many?", words: ["people", "persons"] },
      tank: { label: "Tank", question: "How big?", words: ["tank"] },
      setpoint: { label: "Setpoint", question: "How hot?", words: ["setpoint", "hot"] },
      model: { label: "Model", question: "Model?", words: ["model"] },
      place: { label: "Place", question: "Where?", words: ["place", "town"] },
    },
    ...rest,
  },
  room: {
    title: "Room air",
    summary: "Whether the room has air enough.",
    examples: ["room 7x10x10 ft, no louvre"],
    facts: {
      room: { label: "Room", question: "How big?", words: ["room", "closet", "volume"] },
      duct: { label: "Duct", question: "Duct?", words: ["duct"] },
      duct_length: { label: "Duct length", question: "How long?", words: ["duct length"] },
      louvre: { label: "Louvre", question: "Louvre?", words: ["louvre", "louver", "louvered door"] },
      door: { label: "Door", question: "Door?", words: ["door"] },
    },
    ...rest,
  },
  away: {
    title: "Away",
    summary: "What to do with the heater while nobody is home.",
    examples: ["away from 2026-12-01"],
    facts: {
      start: { label: "From", question: "From when?", words: ["leaving", "start"], before: ["from"] },
      end: { label: "Until", question: "Until when?", words: ["back", "return", "until"] },
      hold: { label: "Hold", question: "How long?", words: ["hold"] },
    },
    ...rest,
  },
};

const ES: Readonly<Record<string, AnyTopicTexts>> = {
  expansion: {
    title: "Tanque de expansión",
    summary: "Calcula el tanque que absorbe lo que crece el agua caliente.",
    examples: ["expansión tanque de 80 galones, fría 50F, caliente 140F, 60 psi"],
    facts: {
      tank: { label: "Tanque", question: "¿Cuánto?", words: ["tanque", "calentador"] },
      setpoint: { label: "Temperatura", question: "¿Qué tan caliente?", words: ["caliente", "ajuste"] },
      cold: { label: "Agua fría", question: "¿Qué tan fría?", words: ["fría", "entrada", "agua de entrada"] },
      line_pressure: { label: "Presión de línea", question: "¿Presión?", words: ["presión", "línea"] },
      closed: { label: "Sistema cerrado", question: "¿Cerrado?", words: ["cerrado", "sistema cerrado"] },
      mixing_valve: {
        label: "Válvula mezcladora",
        question: "¿Mezcladora?",
        words: ["válvula mezcladora", "mezcladora", "válvula"],
      },
      control: { label: "Control", question: "¿Qué absorbe?", words: ["control de expansión"] },
      relief_setting: { label: "Válvula de alivio", question: "¿Alivio?", words: ["alivio", "válvula de alivio"] },
    },
    ...rest,
  },
  mix: {
    title: "Mezcla",
    summary: "Cuánta agua mezclada da el tanque.",
    examples: ["mezcla 135 a 120 con 50 de entrada"],
    facts: {
      storage: { label: "Tanque", question: "¿Qué tan caliente?", words: ["almacenada", "caliente"], first: true },
      wanted: { label: "Deseada", question: "¿Cuánto en la llave?", words: ["deseada", "llave"], before: ["a"] },
      cold: { label: "Fría", question: "¿Qué tan fría?", words: ["fría"], before: ["con"], after: ["de entrada"] },
      drawable: { label: "Aprovechable", question: "¿Parte?", words: ["aprovechable"] },
    },
    ...rest,
  },
  circuit: {
    title: "Circuito",
    summary: "Corriente, cable y breaker.",
    examples: ["circuito 4500 vatios a 208 voltios 60 pies"],
    facts: {
      element: { label: "Elemento", question: "¿Vatios?", words: ["elemento", "resistencia"] },
      supply: { label: "Voltaje", question: "¿Voltios?", words: ["voltaje", "suministro"], before: ["a"] },
      run: { label: "Tramo", question: "¿Qué tan lejos?", words: ["tramo", "distancia"] },
      breaker: { label: "Breaker", question: "¿Breaker?", words: ["pastilla", "interruptor"] },
      wire: { label: "Cable", question: "¿Cable?", words: ["cable", "calibre"] },
      metal: {
        label: "Metal",
        question: "¿Metal?",
        words: ["metal"],
        options: {
          copper: { label: "Cobre", words: ["cobre"] },
          aluminium: { label: "Aluminio", words: ["aluminio"] },
        },
      },
      terminals: { label: "Terminales", question: "¿Terminales?", words: ["terminales"] },
    },
    ...rest,
  },
  wait: {
    title: "Espera del agua caliente",
    summary: "Cuánto tarda en llegar el agua caliente.",
    examples: ["espera 60 pies de pex de 3/4 a 2 gpm"],
    facts: {
      pipe: {
        label: "Tubería",
        question: "¿Qué tubo?",
        words: ["tubería", "tubo"],
        options: {
          copper_l: { label: "Cobre L", words: ["cobre l", "tipo l"] },
          copper_m: { label: "Cobre M", words: ["cobre m", "tipo m"] },
          pex: { label: "PEX", words: ["pex"] },
          cpvc: { label: "CPVC", words: ["cpvc"] },
        },
      },
      size: { label: "Medida", question: "¿Medida?", words: ["medida"] },
      length: { label: "Largo", question: "¿Largo?", words: ["largo"] },
      flow: { label: "Flujo", question: "¿Flujo?", words: ["flujo", "regadera"] },
      branch_size: { label: "Ramal", question: "¿Ramal?", words: ["ramal"] },
    },
    ...rest,
  },
  size: {
    title: "Tamaño del tanque",
    summary: "Si este tanque alcanza para esta casa.",
    examples: ["tamaño personas=4 tanque=80gal ajuste=135F"],
    facts: {
      people: { label: "Personas", question: "¿Cuántas?", words: ["personas", "gente"] },
      tank: { label: "Tanque", question: "¿Cuánto?", words: ["tanque"] },
      setpoint: { label: "Ajuste", question: "¿Qué tan caliente?", words: ["ajuste", "caliente"] },
      model: { label: "Modelo", question: "¿Modelo?", words: ["modelo"] },
      place: { label: "Lugar", question: "¿Dónde?", words: ["lugar", "pueblo"] },
    },
    ...rest,
  },
  room: {
    title: "Cuarto",
    summary: "Si el cuarto tiene aire suficiente.",
    examples: ["cuarto 7x10x10 pies, sin rejilla"],
    facts: {
      room: { label: "Cuarto", question: "¿Cuánto?", words: ["volumen", "clóset"] },
      duct: { label: "Ducto", question: "¿Ducto?", words: ["ducto"] },
      duct_length: { label: "Largo del ducto", question: "¿Largo?", words: ["largo del ducto"] },
      louvre: { label: "Rejilla", question: "¿Rejilla?", words: ["rejilla", "persiana"] },
      door: { label: "Puerta", question: "¿Puerta?", words: ["puerta"] },
    },
    ...rest,
  },
  away: {
    title: "Ausencia",
    summary: "Qué hacer con el calentador cuando no hay nadie.",
    examples: ["ausencia desde 1 dic 2026"],
    facts: {
      start: { label: "Desde", question: "¿Desde cuándo?", words: ["salida"], before: ["desde"] },
      end: { label: "Hasta", question: "¿Hasta cuándo?", words: ["regreso", "hasta"] },
      hold: { label: "Espera", question: "¿Cuánto tiempo?", words: ["duración"] },
    },
    ...rest,
  },
};

export const fixtureLibrary: Library = {
  topics: new Map(TOPICS.map((topic) => [topic.id, topic])),
  cautions: [],
  faults: NO_FAULTS,
  texts: {
    en: { topics: new Map(Object.entries(EN)), cautions: new Map() },
    es: { topics: new Map(Object.entries(ES)), cautions: new Map() },
  },
};
