import { askMap } from "../heat-pump.ts";
import { byte, cell, whole } from "./cell.ts";
import { checkWater, isBarred, meetAir, watchWater } from "./condenser.ts";
import { decide, HEAT_PUMP, LOWER, measureExcess, SWITCH_TOLERANCE_K, type Switches, UPPER } from "./control.ts";
import type { CondenserState, Engine } from "./engine.ts";
import { exchangeHeat } from "./exchange.ts";
import {
  CONDENSER_FROM,
  CONDENSER_TO,
  findPlaces,
  heatAlongCondenser,
  LOWER_SENSOR,
  spreadCondenser,
  stirAlongCondenser,
  UPPER_ELEMENT,
  UPPER_SENSOR,
} from "./places.ts";
import { settle } from "./settle.ts";
import { writeStep } from "./write-step.ts";

/** No step is cut shorter than this on the way to a switching point [s]. */
const SHORTEST_STEP_s = 1;
/** A heat pump that gives almost nothing still has a condenser a little warmer than the water (share of rated heat). */
const LEAST_LOAD = 0.05;
/** Tries to hit a switching point before the nearest miss past it is taken. */
const MOST_TRIES = 12;

/**
 * Lets time pass without a draw: heat sources run as the policy says, water cools, warm water rises.
 *
 * Steps are as long as nothing happens. A step that carries a sensor past a switching point is taken back and cut so
 * that the sensor ends within 0.005 K of it. Inside a step the heat comes half before and half after the exchange with
 * the room, and the heat pump is asked at the temperature in the middle, so the error falls with the square of the step.
 * @param engine moved on
 * @param until_s time to stop at [s]
 * @limits against steps of 5 s a year's electricity differs by 0.1 % on average and 0.5 % at most, and its cold days by
 * one or two on average and six at most, because which draw meets which run of the compressor is a matter of minutes
 */
export function advanceTo(engine: Engine, until_s: number): void {
  const { step, switches } = engine;
  while (engine.now_s < until_s) {
    const left_s = until_s - engine.now_s;
    switches.now_s = engine.now_s;
    step.seconds = left_s;
    prepareStep(engine);
    stepToSwitch(engine);
    engine.owed_s = engine.exchange.seconds > 0 ? 0 : engine.owed_s + step.seconds;
    writeStep(engine);
    engine.now_s = step.seconds === left_s ? until_s : engine.now_s + step.seconds;
  }
}

/** Decides what runs, and shortens the step in hand to what that allows. */
function prepareStep(engine: Engine): void {
  const { condenser, switches, step } = engine;
  if (engine.isMoved) noticeMove(engine);
  if (condenser && (condenser.isWaterHot || byte(switches.on, HEAT_PUMP) === 1)) checkWater(engine, condenser);
  const isDue = engine.isUndecided || isBarred(condenser) !== engine.isBarred || switches.now_s >= switches.timer_s;
  // Far from every switching point a decision would change nothing.
  if (isDue || switches.excess_K >= -SWITCH_TOLERANCE_K) decideAnew(engine);
  if (condenser?.isAirStale && byte(switches.on, HEAT_PUMP) === 1) meetAir(engine, condenser);
  const longest_s = isHeating(switches) ? engine.pace.heating_s : engine.pace.idle_s;
  const timer_s = Math.max(SHORTEST_STEP_s, switches.timer_s - switches.now_s);
  step.seconds = Math.min(step.seconds, longest_s, timer_s);
  step.excess_K = switches.excess_K;
}

/** Finds everything again after a draw. */
function noticeMove(engine: Engine): void {
  const { places, tank, switches, condenser } = engine;
  engine.isMoved = false;
  findPlaces(places, tank);
  readSensors(engine);
  measureExcess(switches);
  if (condenser && (condenser.isWaterHot || byte(switches.on, HEAT_PUMP) === 1)) watchWater(engine, condenser);
}

function decideAnew(engine: Engine): void {
  const { condenser, switches } = engine;
  if (condenser) {
    spreadCondenser(engine.places, engine.tank);
    checkWater(engine, condenser);
  }
  engine.isUndecided = false;
  engine.isBarred = isBarred(condenser);
  decide(engine.control, switches, engine.isBarred);
  measureExcess(switches);
}

function isHeating({ on }: Switches): boolean {
  return byte(on, HEAT_PUMP) === 1 || byte(on, UPPER) === 1 || byte(on, LOWER) === 1;
}

/** Brings the switches' readings up to date with the tank, whose places must be. */
export function readSensors(engine: Engine): void {
  const { slugs, sensorShare } = engine.places;
  const { t_C: t } = engine.tank;
  const { sensor_C } = engine.switches;
  for (let sensor = LOWER_SENSOR; sensor <= UPPER_SENSOR; sensor += 1) {
    const slug = whole(slugs, sensor);
    const low_C = cell(t, slug);
    sensor_C[sensor] = low_C + cell(sensorShare, sensor) * (cell(t, slug + 1) - low_C);
  }
  sensor_C[2] = (cell(sensor_C, LOWER_SENSOR) + cell(sensor_C, UPPER_SENSOR)) / 2;
}

/** Takes the step in hand, cut at a switching point. */
function stepToSwitch(engine: Engine): void {
  const { tank, saved_C, step, switches } = engine;
  for (let i = tank.first; i <= tank.last; i += 1) saved_C[i] = cell(tank.t_C, i);
  takeStep(engine);
  if (switches.excess_K > SWITCH_TOLERANCE_K && step.seconds > SHORTEST_STEP_s) cutStep(engine);
}

/** Takes the step back and looks for the length that ends at the switching point (false position, bracket kept). */
function cutStep(engine: Engine): void {
  const { step, switches } = engine;
  let low_s = 0;
  let low_K = Math.min(step.excess_K, -SWITCH_TOLERANCE_K);
  let high_s = step.seconds;
  let high_K = switches.excess_K;
  for (let turn = 0; turn < MOST_TRIES; turn += 1) {
    const span_s = high_s - low_s;
    const share = Math.min(0.98, Math.max(0.02, -low_K / (high_K - low_K)));
    step.seconds = Math.max(SHORTEST_STEP_s, low_s + span_s * share);
    retakeStep(engine);
    if (Math.abs(switches.excess_K) <= SWITCH_TOLERANCE_K) return;
    if (step.seconds === SHORTEST_STEP_s || span_s < SHORTEST_STEP_s) return;
    // The end that stays is halved from the third try on, so that the bracket closes from both sides.
    if (switches.excess_K > 0) {
      high_s = step.seconds;
      high_K = switches.excess_K;
      if (turn > 1) low_K /= 2;
    } else {
      low_s = step.seconds;
      low_K = switches.excess_K;
      if (turn > 1) high_K /= 2;
    }
  }
  step.seconds = high_s;
  retakeStep(engine);
}

function retakeStep(engine: Engine): void {
  const { tank, saved_C } = engine;
  for (let i = tank.first; i <= tank.last; i += 1) tank.t_C[i] = cell(saved_C, i);
  takeStep(engine);
}

/** One step of heating, exchange and rising; what it did stands in `step` and `exchange`. */
function takeStep(engine: Engine): void {
  const { tank, switches, exchange, condenser } = engine;
  const isHeatPumpOn = byte(switches.on, HEAT_PUMP) === 1;
  if (condenser && isHeatPumpOn) heatPumpStep(engine, condenser);
  else if (isHeating(switches)) {
    heatElements(engine);
    settle(tank);
    exchangeIfDue(engine);
    heatElements(engine);
    settle(tank);
  } else {
    exchangeIfDue(engine);
    if (exchange.seconds > 0) settle(tank);
  }
  readSensors(engine);
  measureExcess(switches);
  if (condenser === undefined || !(isHeatPumpOn || condenser.isWaterHot)) return;
  watchWater(engine, condenser);
  if (isHeatPumpOn)
    switches.excess_K = Math.max(switches.excess_K, engine.places.water_C - condenser.sheet.waterLimit.highest_C);
}

/** The same with the heat pump, which gives the whole step the heat and power of the temperature in its middle. */
function heatPumpStep(engine: Engine, condenser: CondenserState): void {
  const { tank, places, step } = engine;
  const { map } = condenser;
  askAtWater(engine, condenser);
  if (step.seconds <= engine.pace.drawing_s) {
    shortHeatPumpStep(engine, condenser);
    return;
  }
  const firstHalf_J = (map.heat_W * step.seconds) / 2;
  places.heat_J = firstHalf_J;
  heatAlong(engine, condenser);
  heatElements(engine);
  exchangeIfDue(engine);
  settle(tank);
  askAtWater(engine, condenser);
  step.heatPumpHeat_J = map.heat_W * step.seconds;
  step.compressor_J = map.compressor_W * step.seconds;
  places.heat_J = step.heatPumpHeat_J - firstHalf_J;
  heatAlong(engine, condenser);
  heatElements(engine);
  settle(tank);
}

/** A step so short that the middle's temperature may be estimated: the water that takes the heat rises evenly. */
function shortHeatPumpStep(engine: Engine, condenser: CondenserState): void {
  const { tank, places, step } = engine;
  const { map } = condenser;
  const { heights } = places;
  const warmed = places.covered * (cell(heights, CONDENSER_TO) - cell(heights, CONDENSER_FROM));
  map.water_C = places.water_C + (map.heat_W * step.seconds) / (2 * warmed * tank.model.layer_J_K);
  askMap(map);
  step.heatPumpHeat_J = map.heat_W * step.seconds;
  step.compressor_J = map.compressor_W * step.seconds;
  places.heat_J = step.heatPumpHeat_J;
  heatAlong(engine, condenser);
  heatElements(engine);
  heatElements(engine);
  settle(tank);
  exchangeIfDue(engine);
  if (engine.exchange.seconds > 0) settle(tank);
}

/** Spreads the condenser over the water as it is, and asks the map at the temperature that it feels. */
function askAtWater({ places, tank }: Engine, { map, sheet }: CondenserState): void {
  places.approach_K = sheet.condenser.approach_K * Math.max(LEAST_LOAD, map.heat_W / sheet.ratedHeat_W);
  spreadCondenser(places, tank);
  map.water_C = places.water_C;
  askMap(map);
}

/** Heat flow for this step and what is owed; in the short steps of a draw it may wait, because it is slow. */
function exchangeIfDue(engine: Engine): void {
  const { exchange, step } = engine;
  const seconds = engine.owed_s + step.seconds;
  const mayWait = step.seconds <= engine.pace.drawing_s && seconds < engine.pace.exchange_s;
  exchange.seconds = mayWait ? 0 : seconds;
  exchange.lost_J = 0;
  if (mayWait) return;
  exchange.air_C = engine.air.aroundTank_C;
  exchangeHeat(engine.tank, exchange);
}

/** Makes up for heat flow that waited; to be called before the tank is looked at from outside. */
export function settleDebt(engine: Engine): void {
  const { exchange, ledger, given, tank } = engine;
  if (engine.owed_s === 0) return;
  exchange.seconds = engine.owed_s;
  exchange.air_C = engine.air.aroundTank_C;
  exchangeHeat(tank, exchange);
  settle(tank);
  ledger.lost_J += exchange.lost_J;
  given.released_J += exchange.lost_J;
  engine.owed_s = 0;
  engine.isMoved = true;
}

function heatAlong(engine: Engine, condenser: CondenserState): void {
  heatAlongCondenser(engine.places, engine.tank);
  if (condenser.sheet.condenser.kind === "pumped") stirAlongCondenser(engine.places, engine.tank);
}

/** Half a step's heat of the elements that are on. */
function heatElements(engine: Engine): void {
  const { tank, switches, places, power_W, step } = engine;
  for (let source = UPPER; source <= LOWER; source += 1) {
    if (byte(switches.on, source) === 0) continue;
    const slug = whole(places.slugs, UPPER_ELEMENT + source - UPPER);
    const heat_J = (cell(power_W, source) * step.seconds) / 2;
    tank.t_C[slug] = cell(tank.t_C, slug) + heat_J / (tank.model.layer_J_K * cell(tank.size, slug));
  }
}
