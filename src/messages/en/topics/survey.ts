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
  title: "Survey",
  names: ["site visit", "site survey", "visit"],
  summary: "The site visit as a walk: what is there, what it means for air, circuit and expansion, cautions and kit.",
  examples: ["survey closed, 65 psi, model hollin-50, set to 125F", "survey replaces gas, 4 people, model hollin-80"],
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
    facts_told: "Facts told",
    facts_missing: "Facts missing",
    kit_parts: "Parts in the kit",
    peak_hour_demand: "Asked for in the busiest hour",
    first_hour_delivery: "Delivered in the first hour",
    expansion_tank: "Expansion tank, at least",
    breaker_asked: "Breaker that the plate asks for",
  },
  findings: {
    told_all: ({ told }) => `The survey is whole: ${told} facts.`,
    told_some: ({ missing }) => `Still to look at: ${missing}.`,
    missing: ({ facts }) => `Not told yet: ${facts}.`,
    expansion_size: ({ size, precharge }) => `Expansion tank: ${size}, air set to ${precharge}.`,
    expansion_needless: () => "The system is open: no expansion tank is asked for by its growth.",
    size_enough: ({ demand, delivery }) =>
      `The tank will do at a first look: it delivers ${delivery} in an hour, the busiest hour asks for ${demand}. Size tells on which days it would not.`,
    size_short: ({ demand, delivery }) =>
      `The tank is small at a first look: it delivers ${delivery} in an hour, the busiest hour asks for ${demand}. Size tells how often it would run cold.`,
    room_enough: ({ room, asked }) => `The room has ${room}; the unit's sheet asks for ${asked}.`,
    room_small: ({ room, asked }) =>
      `The room has ${room}, less than the ${asked} of the unit's sheet. Look at “room”.`,
    plate_asks: ({ breaker, supply }) => `The plate asks for a ${breaker} breaker at ${supply}.`,
    supply_not_on_plate: ({ supply }) => `The unit is not made for ${supply}.`,
    ...crewWords,
    wire_asks: ({ conductor, run, drop }) =>
      `At ${run} one way, ${conductor} loses ${drop}. Who decides: the electrician and the local code.`,
    kit_counts: ({ parts }) => `The kit has ${parts} kinds of parts so far.`,
    not_kept: () => "No job is open, so this is kept only here. Type “job” and its number first.",
    unknown_model: ({ typed, nearest }) => `No model “${typed}” in the catalogue. Close: ${nearest}.`,
    unknown_place: ({ typed, nearest }) => `No place “${typed}” in the books. Close: ${nearest}.`,
    step_size: () => "Is it enough",
    step_room: () => "Does the room do",
    step_circuit: () => "Circuit",
    step_expansion: () => "Expansion tank",
    step_caution: () => "All cautions",
    step_kit: () => "Kit",
  },
  tables: { kit: { title: "What to bring", columns: { part: "Part", amount: "Amount" } } },
};
