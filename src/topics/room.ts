import type { Books } from "../books/books.ts";
import type { SiteFacts } from "../cautions/site-facts.ts";
import { type Answer, type FindingOf, type FindingSpecs, q, type Verdict } from "../declaration/answer.ts";
import { askedFacts } from "../declaration/asked-facts.ts";
import { commonFacts, OUR_HABIT } from "../declaration/common-facts.ts";
import type { FactSpecs, FactsOf } from "../declaration/facts.ts";
import { declareTopic, type ReportProgress } from "../declaration/topic.ts";
import { planRoom, type RoomCase } from "../household/room-case.ts";
import { chartRoomDay, ROOM_SERIES } from "../household/room-chart.ts";
import { middlingDay, runRoomDay } from "../household/room-day.ts";
import { DOOR_KINDS, freeAreaOf } from "../household/room-door.ts";
import { airThroughDucts, DUCT_CHOICES, DUCT_ENDS } from "../household/room-ducts.ts";
import { ROOM_FINDINGS, sayRoom } from "../household/room-findings.ts";
import { measureRoom, type RoomOutcome } from "../household/room-outcome.ts";
import { ROOM_REFUSALS, refuseDucts, refuseNoHeatPump, refuseRoomUnit } from "../household/room-refusals.ts";
import {
  bestHelp,
  cheapestThatWorks,
  listRoomChanges,
  offerRoomRemedies,
  ROOM_CHANGE_FINDINGS,
  type RoomRemedy,
  sayFix,
  tabulateRoomRemedies,
  tryRoomChange,
} from "../household/room-remedies.ts";
import {
  airResults,
  ROOM_RESULTS,
  soundResults,
  volumeResults,
  waterResults,
  winterResults,
} from "../household/room-results.ts";
import { ROOM_KINDS, SHELLS } from "../household/room-shell-table.ts";
import { houseMove_Pa, netExhaust_m3_s, soundOutside_dBA } from "../household/room-side.ts";
import {
  askedVolumes,
  ROOM_VOLUME_FINDINGS,
  runClosedRooms,
  tabulateClosedRooms,
  tabulateVolumes,
} from "../household/room-volumes.ts";
import { toBase } from "../units/convert.ts";

const ft3 = (value: number) => toBase(value, "ft3");
const ft = (value: number) => toBase(value, "ft");
const inch = (value: number) => toBase(value, "in");
const F = (value: number) => toBase(value, "F");
const GRILLE = {
  type: "quantity",
  quantity: "opening_area",
  min: 0,
  max: toBase(1500, "in2"),
  usual: [toBase(60, "in2"), toBase(120, "in2"), toBase(240, "in2")],
  byNameOnly: true,
  optional: true,
} as const;
const HEAT = { type: "quantity", quantity: "power", min: 0, max: 6000, byNameOnly: true, optional: true } as const;

const FACTS = {
  volume: {
    type: "quantity",
    quantity: "room_volume",
    min: ft3(40),
    max: ft3(20_000),
    usual: [ft3(100), ft3(450), ft3(700), ft3(1500)],
  },
  where: { type: "choice", options: ROOM_KINDS },
  model: { ...commonFacts.model, optional: true, ask: true },
  people: { ...commonFacts.people, ask: true, default: { value: 3, source: OUR_HABIT } },
  door: { type: "choice", options: DOOR_KINDS, ask: true, default: { value: "plain", source: OUR_HABIT } },
  combustion: { type: "flag", optional: true, ask: true },
  setpoint: { ...commonFacts.setpoint, default: { value: F(125), source: OUR_HABIT } },
  tank: {
    ...commonFacts.tank,
    min: toBase(20, "gal"),
    max: toBase(200, "gal"),
    optional: true,
  },
  heat_pump: { type: "quantity", quantity: "heat_rate", min: 0, max: 20_000, byNameOnly: true, optional: true },
  mode: commonFacts.mode,
  place: commonFacts.place,
  outdoor: {
    type: "quantity",
    quantity: "temperature",
    min: F(-40),
    max: F(75),
    usual: [F(0), F(15), F(30)],
    byNameOnly: true,
    optional: true,
  },
  adjoining: {
    type: "quantity",
    quantity: "temperature",
    min: F(35),
    max: F(90),
    usual: [F(55), F(60), F(68)],
    byNameOnly: true,
    optional: true,
  },
  ceiling: {
    type: "quantity",
    quantity: "length",
    min: ft(5),
    max: ft(16),
    byNameOnly: true,
    default: { value: ft(8), source: OUR_HABIT },
  },
  undercut: {
    type: "quantity",
    quantity: "dimension",
    min: 0,
    max: inch(4),
    usual: [inch(0.5), inch(0.75), inch(1)],
    byNameOnly: true,
    default: { value: inch(0.5), source: OUR_HABIT },
  },
  low_grille: GRILLE,
  high_grille: GRILLE,
  duct: { type: "choice", options: DUCT_CHOICES, default: { value: "none", source: OUR_HABIT } },
  duct_to: { type: "choice", options: DUCT_ENDS, optional: true },
  duct_run: {
    type: "quantity",
    quantity: "length",
    min: 0,
    max: ft(100),
    usual: [ft(5), ft(10), ft(20)],
    byNameOnly: true,
    optional: true,
  },
  duct_size: {
    type: "quantity",
    quantity: "dimension",
    min: inch(4),
    max: inch(14),
    usual: [inch(6), inch(8), inch(10)],
    byNameOnly: true,
    optional: true,
  },
  duct_kind: {
    type: "choice",
    options: ["galvanized", "flex"],
    optional: true,
  },
  heater: { ...HEAT, usual: [500, 1000, 1500] },
  heater_setting: {
    type: "quantity",
    quantity: "temperature",
    min: F(35),
    max: F(80),
    byNameOnly: true,
    optional: true,
  },
  gains: { ...HEAT, usual: [50, 100, 200] },
  bedroom: {
    type: "quantity",
    quantity: "length",
    min: 1,
    max: 50,
    usual: [ft(5), ft(10), ft(20)],
    byNameOnly: true,
    optional: true,
  },
} as const satisfies FactSpecs;

const FINDINGS = {
  ...ROOM_REFUSALS,
  ...ROOM_CHANGE_FINDINGS,
  ...ROOM_VOLUME_FINDINGS,
  ...ROOM_FINDINGS,
  room_serves: { low: "temperature", cop: "ratio", open: "ratio" },
  room_struggles: { low: "temperature", cop: "ratio", open: "ratio" },
  room_too_cold: { low: "temperature", without: "temperature" },
  ducts_cost_heat: { low: "temperature", make_up: "energy", taken: "energy" },
  helps_most: {},
} as const satisfies FindingSpecs;

type Facts = FactsOf<typeof FACTS>;
type Id = (typeof ROOM_RESULTS)[number];
type Said = FindingOf<typeof FINDINGS>;

/** Running alone, without the unit, a room under this is too cold for a heat pump whatever is done to its door. */
const COLD_WITHOUT_C = F(40);

export const room = declareTopic({
  id: "room",
  work: "long",
  facts: FACTS,
  results: ROOM_RESULTS,
  findings: FINDINGS,
  tables: {
    remedies: ["change", "low", "humidity", "cop", "energy", "remark"],
    volumes: ["source", "volume", "here"],
    closed_rooms: ["volume", "low", "cop", "loss"],
  },
  charts: { day: ROOM_SERIES },
  asides: {
    results: [
      "room_temperature_mean",
      "room_temperature_without",
      "running_time",
      "cooling_rate",
      "humidity",
      "condensate_per_hour",
      "airflow_needed",
      "airflow_left",
      "capacity_left",
    ],
    findings: ["volumes_disagree", "lab_differs", "counted_for", "counted_for_garage", "well_mixed", "square_floor"],
    tables: ["remedies", "volumes", "closed_rooms"],
  },
  compute: (facts, books, report) => {
    const refused = refuseRoomUnit(facts, books);
    if (refused) return refused;
    const known = planRoom(facts, books);
    if (known === undefined) return refuseNoHeatPump(facts);
    return refuseDucts(known) ?? answer(facts, known, report);
  },
  site: describeSite,
});

function answer(facts: Facts, known: RoomCase, report: ReportProgress): Answer<Id, Said> {
  const outcome = measureRoom(known);
  const { verdict } = outcome.score;
  const changes = verdict === "good" ? [] : listRoomChanges(known);
  const total = changes.length + 2;
  report(1, total);
  const remedies = changes.flatMap((change, place) => {
    const remedy = tryRoomChange(known, change, outcome.day, outcome.open.systemCop);
    report(place + 2, total);
    return remedy === undefined ? [] : [remedy];
  });
  const closed = runClosedRooms(known, outcome.day);
  report(total, total);
  const asked = askedVolumes(known);
  const asides = { combustion: facts.combustion, bedroom_m: facts.bedroom_m };
  return {
    kind: "answer",
    verdict,
    headline: headline(outcome, verdict, remedies),
    results: [
      ...winterResults(known, outcome),
      ...volumeResults(known, asked),
      ...waterResults(known, outcome),
      ...airResults(known, outcome),
      ...soundResults(known, facts.bedroom_m),
    ],
    findings: [...sayHelp(outcome, remedies), ...sayRoom(known, outcome, asides)],
    tables: [
      ...(remedies.length > 0 ? [tabulateRoomRemedies(outcome.winter, remedies)] : []),
      tabulateVolumes(asked, known.set.volume_m3),
      tabulateClosedRooms(closed, outcome.open.systemCop),
    ],
    charts: [chartRoomDay(known, outcome.winter)],
    next: offerRoomRemedies(askedFacts(FACTS, facts), outcome.winter, remedies),
    assumed: known.assumed,
  };
}

/** The cheapest remedy that works, said with what it changes; else how the room stands. */
function headline(outcome: RoomOutcome, verdict: Verdict, remedies: readonly RoomRemedy[]): Said {
  const { winter, open, still } = outcome;
  const low = q("temperature", winter.lowest_C);
  const data = { low, cop: q("ratio", winter.summary.systemCop), open: q("ratio", open.systemCop) };
  if (verdict === "good") return { code: "room_serves", data };
  const fix = cheapestThatWorks(remedies);
  if (fix !== undefined) return sayFix(winter, fix);
  const { penalty, score } = outcome;
  const heat = { make_up: q("energy", penalty.makeUp_kWh), taken: q("energy", penalty.taken_kWh) };
  if (score.costsHeat) return { code: "ducts_cost_heat", data: { low, ...heat } };
  return still.lowest_C < COLD_WITHOUT_C
    ? { code: "room_too_cold", data: { low, without: q("temperature", still.lowest_C) } }
    : { code: "room_struggles", data };
}

/** Where nothing is enough, what helps most. */
function sayHelp({ winter }: RoomOutcome, remedies: readonly RoomRemedy[]): readonly Said[] {
  if (cheapestThatWorks(remedies) !== undefined) return [];
  const best = bestHelp(winter, remedies);
  return best === undefined ? [] : [{ code: "helps_most", data: {} }, sayFix(winter, best)];
}

function describeSite(facts: Facts, books: Books): SiteFacts {
  const known = planRoom(facts, books);
  if (known === undefined) return {};
  const { set, where, unit, model, heatPump } = known;
  const air = airThroughDucts(heatPump, set.ducts);
  const net_m3_s = netExhaust_m3_s(known, air.airflow_m3_s);
  const { choice } = set.ducts;
  return {
    room: where,
    storage_C: facts.setpoint_C,
    tank_L: unit.tank.volume_L,
    roomVolume_m3: set.volume_m3,
    roomLow_C: runRoomDay(known, "winter", middlingDay(known.people)).lowest_C,
    lowestAir_C: heatPump.airLimits.lowest_C,
    isDucted: choice !== "none",
    hasExhaustDuct: choice === "exhaust" || choice === "both",
    exhaustsHouseAir: net_m3_s > 0,
    ...(SHELLS[where].mayOpen && { netFreeArea_m2: freeAreaOf(set.door) }),
    ...(model?.smallestRoom_m3 !== undefined && { roomVolumeNeeded_m3: model.smallestRoom_m3 }),
    ...(choice !== "none" && { ductDrop_Pa: air.ratedDrop_Pa, ductDropAllowed_Pa: air.available_Pa }),
    ...(net_m3_s > 0 && { housePressureBelow_Pa: -houseMove_Pa(net_m3_s) }),
    ...(facts.combustion !== undefined && { hasNaturalDraftAppliance: facts.combustion }),
    ...(facts.bedroom_m !== undefined && { soundAtBedroom_dBA: soundOutside_dBA(known, facts.bedroom_m) }),
  };
}
