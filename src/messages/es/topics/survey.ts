import type { survey } from "../../../topics/survey.ts";
import type { TopicTexts } from "../../topic-texts.ts";
import { commonFacts } from "../common-facts.ts";
import { crewWords } from "../crew-words.ts";
import { texts as caution } from "./caution.ts";
import { texts as kit } from "./kit.ts";
import { texts as room } from "./room.ts";

/** What a visit looks at is asked in the same words as by the topics that use it. */
const site = caution.facts;

export const texts: TopicTexts<typeof survey> = {
  title: "Visita",
  names: ["visita", "visita al sitio", "levantamiento"],
  summary: "La visita al sitio paso a paso: qué hay, qué pide de aire, circuito y expansión, precauciones y piezas.",
  examples: ["visita cerrado, 65 psi, modelo hollin-50, puesto a 125F", "visita 4 personas, modelo hollin-80"],
  facts: {
    room: site.room,
    room_volume: site.room_volume,
    door: room.facts.door,
    air_way: kit.facts.air_way,
    passage: { ...site.passage, words: site.passage.words.filter((word) => !room.facts.door.words.includes(word)) },
    replaces: site.replaces,
    fuel_appliance: site.fuel_appliance,
    condensate: site.condensate,
    leak_harms: site.leak_harms,
    pan: site.pan,
    line_pressure: site.line_pressure,
    closed: site.closed,
    control: site.control,
    mixing_valve: site.mixing_valve,
    supply: commonFacts.supply,
    circuit_length: kit.facts.circuit_length,
    circuit_right: kit.facts.circuit_right,
    people: commonFacts.people,
    bathrooms: commonFacts.bathrooms,
    occupants: site.occupants,
    model: site.model,
    setpoint: site.setpoint,
    place: site.place,
    headroom: site.headroom,
    floor: site.floor,
    bedroom_wall: site.bedroom_wall,
    seismic: site.seismic,
    shared_flue: site.shared_flue,
    relief: site.relief,
    disconnect: site.disconnect,
    asbestos: site.asbestos,
    gas_smell: site.gas_smell,
  },
  results: {
    facts_told: "Datos dichos",
    facts_missing: "Datos que faltan",
    kit_parts: "Piezas en la lista",
    peak_hour_demand: "Se pide en la hora de más uso",
    first_hour_delivery: "Da en la primera hora",
    expansion_tank: "Tanque de expansión, al menos",
    breaker_asked: "Interruptor que pide la placa",
  },
  findings: {
    told_all: ({ told }) => `La visita está completa: ${told} datos.`,
    told_some: ({ missing }) => `Falta por mirar: ${missing}.`,
    missing: ({ facts }) => `Sin decir todavía: ${facts}.`,
    expansion_size: ({ size, precharge }) => `Tanque de expansión: ${size}, con el aire a ${precharge}.`,
    expansion_needless: () => "El sistema es abierto: su dilatación no pide tanque de expansión.",
    size_enough: ({ demand, delivery }) =>
      `A primera vista el tanque alcanza: da ${delivery} en una hora y la hora de más uso pide ${demand}. La capacidad dice en qué días no.`,
    size_short: ({ demand, delivery }) =>
      `A primera vista el tanque queda corto: da ${delivery} en una hora y la hora de más uso pide ${demand}. La capacidad dice cada cuánto saldría fría.`,
    room_enough: ({ room, asked }) => `El cuarto tiene ${room}; la hoja del equipo pide ${asked}.`,
    room_small: ({ room, asked }) =>
      `El cuarto tiene ${room}, menos que los ${asked} de la hoja del equipo. Ver «cuarto».`,
    plate_asks: ({ breaker, supply }) => `La placa pide un interruptor de ${breaker} a ${supply}.`,
    supply_not_on_plate: ({ supply }) => `El equipo no está hecho para ${supply}.`,
    ...crewWords,
    wire_asks: ({ conductor, run, drop }) =>
      `A ${run} de ida, ${conductor} pierde ${drop}. Deciden el electricista y el código local.`,
    kit_counts: ({ parts }) => `La lista lleva hasta ahora ${parts} clases de piezas.`,
    not_kept: () => "No hay un trabajo abierto: esto queda solo aquí. Antes, escribir «trabajo» y su número.",
    unknown_model: ({ typed, nearest }) => `No hay un modelo «${typed}» en el catálogo. Parecidos: ${nearest}.`,
    unknown_place: ({ typed, nearest }) => `No hay un lugar «${typed}» en los libros. Parecidos: ${nearest}.`,
    step_size: () => "¿Alcanza?",
    step_room: () => "¿Sirve el cuarto?",
    step_circuit: () => "Circuito",
    step_expansion: () => "Tanque de expansión",
    step_caution: () => "Todas las precauciones",
    step_kit: () => "Lista de piezas",
  },
  tables: { kit: { title: "Qué llevar", columns: { part: "Pieza", amount: "Cantidad" } } },
};
