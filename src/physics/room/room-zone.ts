import { relativeHumidityFromHumidityRatio, saturationHumidityRatio, specificVolume_m3_kg } from "../moist-air.ts";
import { requireWithin } from "../require-within.ts";
import type { AirState, RoomAir, RoomExchange } from "../tank/room-air.ts";
import { closeRoomBooks, openRoomLedger, type RoomGaps, type RoomLedger, type RoomStore } from "./room-books.ts";
import {
  type Neighbour,
  type NeighbourId,
  ROOM_AIR_J_kg_K,
  ROOM_PRESSURE_kPa,
  type RoomSpec,
  VAPORISATION_J_kg,
} from "./room-spec.ts";
import { type MoistNode, passMoistNode, passTwoNode, type TwoNode } from "./two-node.ts";

/** What the room was like at the end of each interval since the track was cleared. */
export interface RoomTrack {
  readonly time_s: number[];
  readonly air_C: number[];
  readonly relativeHumidity: number[];
  /** Share of the interval for which the heat pump ran. */
  readonly ran: number[];
}

/** A room that the tank simulation can stand in, and that can be looked at. */
export interface RoomZone extends RoomAir {
  readonly track: RoomTrack;
  readonly ledger: RoomLedger;
  readonly air_C: () => number;
  /** Closes the books since the last look, and begins a new ledger and a new track. */
  readonly closeAndClear: () => { readonly ledger: RoomLedger; readonly track: RoomTrack; readonly gaps: RoomGaps };
}

interface Zone {
  readonly spec: RoomSpec;
  readonly heat: TwoNode;
  readonly moist: MoistNode;
  /** Dry air in the room [kg], and volume of a kilogram of it [m3/kg]. */
  readonly dryAir_kg: number;
  readonly volume_m3_kg: number;
  /** Dry air that comes in from each neighbour during the step in hand [kg/s]. */
  readonly flow_kg_s: Record<NeighbourId, number>;
  ledger: RoomLedger;
  track: RoomTrack;
  opened: RoomStore;
  last_s: number;
}

/**
 * A room as one body of well-mixed air and one quick mass (surfaces and stored things), with walls to its neighbours,
 * air through cracks, openings and ducts, a heater with a thermostat, other heat, and the unit in it.
 *
 * Each interval is solved exactly with everything outside held constant, after the tank has told what it took and gave.
 * Time may start again at zero: the room then carries on from where it was.
 * @param spec volume 0.5..2000 m3, interval 30..900 s
 * @returns a room for `simulate`
 * @source energy and water balance of one zone; enthalpy of damp air h = c T + 2501 kJ/kg W with constant c
 * @limits well mixed: no layer of cold air over the floor is modelled; constant mass of dry air; c taken at W = 0.007,
 *   which is within 1 % of h from 0 to 30 C; slow earth and concrete only as conductance, without their memory
 */
export function openRoom(spec: RoomSpec): RoomZone {
  const zone = startZone(spec);
  return {
    every_s: spec.every_s,
    update: (time_s, exchange, air) => {
      const seconds = time_s - zone.last_s;
      zone.last_s = time_s;
      if (seconds > 0) passInterval(zone, time_s, seconds, exchange);
      writeAir(zone, time_s, air);
    },
    get track() {
      return zone.track;
    },
    get ledger() {
      return zone.ledger;
    },
    air_C: () => zone.heat.t1_C,
    closeAndClear: () => {
      const { ledger, track } = zone;
      const gaps = closeRoomBooks(ledger, zone.opened, storeOf(zone));
      zone.ledger = openRoomLedger();
      zone.track = emptyTrack();
      zone.opened = storeOf(zone);
      return { ledger, track, gaps };
    },
  };
}

function startZone(spec: RoomSpec): Zone {
  requireWithin("room volume [m3]", spec.volume_m3, 0.5, 2000);
  requireWithin("interval [s]", spec.every_s, 30, 900);
  requireWithin("moisture store", spec.moistureStore, 1, 100);
  const { air_C, humidityRatio } = spec.start;
  const volume_m3_kg = specificVolume_m3_kg(air_C, humidityRatio, ROOM_PRESSURE_kPa);
  const dryAir_kg = spec.volume_m3 / volume_m3_kg;
  const heat: TwoNode = {
    c1_J_K: dryAir_kg * ROOM_AIR_J_kg_K,
    c2_J_K: spec.quickMass_J_K,
    between_W_K: spec.surfaces_W_K,
    k1_W_K: 0,
    k2_W_K: spec.neighbours.reduce((sum, { walls_W_K }) => sum + walls_W_K, 0),
    s1_C: 0,
    s2_C: 0,
    q1_W: 0,
    q2_W: 0,
    t1_C: air_C,
    t2_C: air_C,
    mean1_C: air_C,
    mean2_C: air_C,
  };
  const air_kg = dryAir_kg * spec.moistureStore;
  const moist: MoistNode = { air_kg, flow_kg_s: 0, supply: 0, water_kg_s: 0, ratio: humidityRatio, mean: 0 };
  const flow_kg_s = { adjoining: 0, house: 0, outdoors: 0, ground: 0 };
  const zone = { spec, heat, moist, dryAir_kg, volume_m3_kg, flow_kg_s, ledger: openRoomLedger(), track: emptyTrack() };
  return { ...zone, opened: holds(heat, moist), last_s: 0 };
}

function emptyTrack(): RoomTrack {
  return { time_s: [], air_C: [], relativeHumidity: [], ran: [] };
}

function storeOf({ heat, moist }: Zone): RoomStore {
  return holds(heat, moist);
}

function holds(heat: TwoNode, moist: MoistNode): RoomStore {
  const water_kg = moist.air_kg * moist.ratio;
  return { heat_J: heat.c1_J_K * heat.t1_C + heat.c2_J_K * heat.t2_C + VAPORISATION_J_kg * water_kg, water_kg };
}

/** One interval, in the middle of which the neighbours are looked at. */
function passInterval(zone: Zone, time_s: number, seconds: number, exchange: Readonly<RoomExchange>): void {
  const { heat, moist, spec, ledger } = zone;
  const middle_s = time_s - seconds / 2;
  const ran = Math.min(1, exchange.ran_s / seconds);
  // A unit that blows outside takes nothing from the room but the air itself.
  const isInside = spec.ducts === undefined || spec.ducts.exhaust === "room";
  const taken_J = isInside ? exchange.taken_J : 0;
  const coil_kg = isInside ? exchange.condensed_kg : 0;
  letAirIn(zone, middle_s, ran);
  pullTogether(zone, middle_s);
  const sensible_J = taken_J - VAPORISATION_J_kg * coil_kg;
  heat.q1_W = spec.gains_W + (exchange.released_J - sensible_J) / seconds;
  const heater_J = passWithHeater(zone, seconds) * seconds;
  moist.water_kg_s = -coil_kg / seconds;
  passMoistNode(moist, seconds);
  bookNeighbours(zone, middle_s, seconds);
  ledger.heater_J += heater_J;
  ledger.gains_J += spec.gains_W * seconds;
  ledger.released_J += exchange.released_J;
  ledger.taken_J += taken_J;
  ledger.coil_kg += coil_kg;
  ledger.passed_J += heater_J + spec.gains_W * seconds + Math.abs(exchange.released_J) + Math.abs(taken_J);
  ledger.passed_kg += coil_kg;
  ledger.seconds += seconds;
  settleExcess(zone);
  note(zone, time_s, ran);
}

/** Air from each neighbour: cracks, openings, and what the ducts carry; a fan and a draught do not add up. */
function letAirIn({ spec, flow_kg_s, heat, volume_m3_kg }: Zone, time_s: number, ran: number): void {
  for (const { id, leak_m3_s, at_C } of spec.neighbours) {
    const isOpen = spec.openings?.to === id;
    const byItself = leak_m3_s + (isOpen && spec.openings ? spec.openings.flow_m3_s(heat.t1_C, at_C(time_s)) : 0);
    flow_kg_s[id] = Math.max(byItself, ducted_m3_s(spec, id) * ran) / volume_m3_kg;
  }
}

/** Air that the ducts bring into the room from a neighbour while the fan runs [m3/s]. */
function ducted_m3_s({ ducts }: RoomSpec, id: NeighbourId): number {
  if (ducts === undefined) return 0;
  const { intake, exhaust, makeUp, airflow_m3_s } = ducts;
  if (intake === id && exhaust === "room") return airflow_m3_s;
  return intake === "room" && exhaust !== "room" && makeUp === id ? airflow_m3_s : 0;
}

/** Sums what pulls at the air and at the quick mass. */
function pullTogether({ spec, flow_kg_s, heat, moist }: Zone, time_s: number): void {
  let [k1, s1, s2, flow, vapour] = [0, 0, 0, 0, 0];
  for (const { id, walls_W_K, at_C, humidityRatio } of spec.neighbours) {
    const there_C = at_C(time_s);
    const air_W_K = flow_kg_s[id] * ROOM_AIR_J_kg_K;
    k1 += air_W_K;
    s1 += air_W_K * there_C;
    s2 += walls_W_K * there_C;
    flow += flow_kg_s[id];
    vapour += flow_kg_s[id] * humidityRatio(time_s);
  }
  heat.k1_W_K = k1;
  heat.s1_C = k1 > 0 ? s1 / k1 : 0;
  heat.s2_C = heat.k2_W_K > 0 ? s2 / heat.k2_W_K : 0;
  moist.flow_kg_s = flow;
  moist.supply = flow > 0 ? vapour / flow : 0;
}

/** Lets the interval pass with as much of the heater as holds its setting on average. Returns its power [W]. */
function passWithHeater({ spec, heat }: Zone, seconds: number): number {
  const { t1_C, t2_C, q1_W } = heat;
  passTwoNode(heat, seconds);
  const { heater } = spec;
  if (heater === undefined || heat.mean1_C >= heater.setting_C) return 0;
  const without_C = heat.mean1_C;
  const passWith = (power_W: number) => {
    heat.t1_C = t1_C;
    heat.t2_C = t2_C;
    heat.q1_W = q1_W + power_W;
    passTwoNode(heat, seconds);
  };
  passWith(heater.most_W);
  if (heat.mean1_C <= heater.setting_C) return heater.most_W;
  // The equations are linear, so the power that is just enough follows from the two.
  const power_W = (heater.most_W * (heater.setting_C - without_C)) / (heat.mean1_C - without_C);
  passWith(power_W);
  return power_W;
}

function bookNeighbours({ spec, flow_kg_s, heat, moist, ledger }: Zone, time_s: number, seconds: number): void {
  for (const { id, walls_W_K, at_C, humidityRatio } of spec.neighbours) {
    const there_C = at_C(time_s);
    const air_kg = flow_kg_s[id] * seconds;
    const walls_J = walls_W_K * seconds * (there_C - heat.mean2_C);
    const water_kg = air_kg * (humidityRatio(time_s) - moist.mean);
    const air_J = air_kg * ROOM_AIR_J_kg_K * (there_C - heat.mean1_C);
    const vapour_J = VAPORISATION_J_kg * water_kg;
    ledger.from_J[id] += walls_J + air_J;
    ledger.vapour_J[id] += vapour_J;
    ledger.waterIn_kg += water_kg;
    ledger.passed_J += Math.abs(walls_J) + Math.abs(air_J) + Math.abs(vapour_J);
    ledger.passed_kg += Math.abs(water_kg);
  }
}

/** Water beyond saturation settles on the surfaces and gives its heat to them and to the air. */
function settleExcess({ heat, moist, ledger }: Zone): void {
  const most = saturationHumidityRatio(heat.t1_C, ROOM_PRESSURE_kPa);
  if (moist.ratio <= most) return;
  const capacity_J_K = heat.c1_J_K + heat.c2_J_K;
  // Saturation rises as the heat is given off: solved by steps on the secant, which closes in within a few.
  let rise_K = 0;
  for (let turn = 0; turn < SETTLING_TURNS; turn += 1) {
    const held = saturationHumidityRatio(heat.t1_C + rise_K, ROOM_PRESSURE_kPa);
    const steep = (saturationHumidityRatio(heat.t1_C + rise_K + 0.01, ROOM_PRESSURE_kPa) - held) / 0.01;
    const given_K = (VAPORISATION_J_kg * moist.air_kg * (moist.ratio - held)) / capacity_J_K;
    rise_K += (given_K - rise_K) / (1 + (VAPORISATION_J_kg * moist.air_kg * steep) / capacity_J_K);
  }
  const settled_kg = (rise_K * capacity_J_K) / VAPORISATION_J_kg;
  moist.ratio -= settled_kg / moist.air_kg;
  heat.t1_C += rise_K;
  heat.t2_C += rise_K;
  ledger.settled_kg += settled_kg;
  // The settled water carries no heat of its own, so nothing leaves the energy books.
}

const SETTLING_TURNS = 4;

function note({ track, heat, moist }: Zone, time_s: number, ran: number): void {
  track.time_s.push(time_s);
  track.air_C.push(heat.t1_C);
  track.relativeHumidity.push(relativeHumidityFromHumidityRatio(heat.t1_C, moist.ratio, ROOM_PRESSURE_kPa));
  track.ran.push(ran);
}

/** What the heat pump draws until the next interval, and what stands around the tank. */
function writeAir({ spec, heat, moist }: Zone, time_s: number, air: AirState): void {
  const from = spec.neighbours.find(({ id }) => id === spec.ducts?.intake);
  air.aroundTank_C = heat.t1_C;
  air.pressure_kPa = ROOM_PRESSURE_kPa;
  air.dryBulb_C = from ? from.at_C(time_s) : heat.t1_C;
  air.humidityRatio = from ? humidityAt(from, time_s) : moist.ratio;
}

function humidityAt({ humidityRatio, at_C }: Neighbour, time_s: number): number {
  return Math.min(humidityRatio(time_s), saturationHumidityRatio(at_C(time_s), ROOM_PRESSURE_kPa));
}
