import type { Policy, Sensor, SourceRule } from "../../equipment/policies.ts";
import type { HeatSource, WaterHeater } from "../../equipment/water-heater.ts";
import { byte, cell } from "./cell.ts";

/** Places of the three sources in every array of this folder. */
export const HEAT_PUMP = 0;
export const UPPER = 1;
export const LOWER = 2;
export const SOURCES = 3;
const SOURCE_INDEX: Readonly<Record<HeatSource, number>> = { heat_pump: HEAT_PUMP, upper: UPPER, lower: LOWER };
const SENSOR_INDEX: Readonly<Record<Sensor, number>> = { lower: 0, upper: 1, mean: 2 };
export const SENSORS = 3;

/** A switching point counts as reached this near to it [K]; it is also how closely a step is cut to it. */
export const SWITCH_TOLERANCE_K = 0.005;
const NEVER = Number.POSITIVE_INFINITY;

/** A policy at a setpoint, as plain arrays for the interpreter: one entry for each rule that this unit can follow. */
export interface ControlState {
  readonly rules: number;
  readonly source: Uint8Array;
  readonly sensor: Uint8Array;
  readonly start_C: Float64Array;
  readonly stop_C: Float64Array;
  readonly after_s: Float64Array;
  readonly onlyWithoutHeatPump: Uint8Array;
  /** 1 while a rule wants its source. */
  readonly wants: Uint8Array;
  /** When the start condition of a rule began to hold [s], or infinity. */
  readonly shortSince_s: Float64Array;
  /** 1 where row and column never run together. */
  readonly apart: Uint8Array;
  readonly shortestRun_s: number;
  readonly shortestRest_s: number;
}

/** What runs, since when, and what the sensors read; outlives a change of mode. */
export interface Switches {
  readonly on: Uint8Array;
  readonly changed_s: Float64Array;
  readonly sensor_C: Float64Array;
  /** Each sensor's nearest switching points, below and above [C]; between them a decision would change nothing. */
  readonly below_C: Float64Array;
  readonly above_C: Float64Array;
  readonly starts: Float64Array;
  /** Present time [s]. */
  now_s: number;
  /** Earliest time at which a timer may change the decision [s], or infinity. */
  timer_s: number;
  /** How far a sensor is past the next switching point; below zero, how near [K]. */
  excess_K: number;
}

export function makeSwitches(): Switches {
  return {
    on: new Uint8Array(SOURCES),
    changed_s: new Float64Array(SOURCES).fill(Number.NEGATIVE_INFINITY),
    sensor_C: new Float64Array(SENSORS),
    below_C: new Float64Array(SENSORS),
    above_C: new Float64Array(SENSORS),
    starts: new Float64Array(SOURCES),
    now_s: 0,
    timer_s: NEVER,
    excess_K: 0,
  };
}

/**
 * Turns a policy into arrays for one unit and one setpoint; rules for sources that the unit lacks are left out.
 * @throws where a rule would stop below where it starts, which no thermostat can do
 */
export function prepareControl(unit: WaterHeater, policy: Policy, setpoint_C: number): ControlState {
  const rules = policy.rules.filter((rule) => hasSource(unit, rule.source));
  const start = rules.map((rule) => startTemperature_C(rule, unit, setpoint_C));
  const stop = rules.map((rule) => ("at_C" in rule.stop ? rule.stop.at_C : setpoint_C - rule.stop.under_K));
  rules.forEach((rule, i) => {
    if (!((stop[i] ?? 0) > (start[i] ?? 0) + 2 * SWITCH_TOLERANCE_K))
      throw new RangeError(`${policy.id}: ${rule.source} would stop at or below where it starts`);
  });
  const apart = new Uint8Array(SOURCES * SOURCES);
  for (const [a, b] of [...unit.controls.interlocks, ...policy.oneAtATime]) {
    apart[SOURCE_INDEX[a] * SOURCES + SOURCE_INDEX[b]] = 1;
    apart[SOURCE_INDEX[b] * SOURCES + SOURCE_INDEX[a]] = 1;
  }
  return {
    rules: rules.length,
    source: Uint8Array.from(rules, (rule) => SOURCE_INDEX[rule.source]),
    sensor: Uint8Array.from(rules, (rule) => SENSOR_INDEX[rule.sensor]),
    start_C: Float64Array.from(start),
    stop_C: Float64Array.from(stop),
    after_s: Float64Array.from(rules, (rule) => rule.after_s),
    onlyWithoutHeatPump: Uint8Array.from(rules, (rule) => (rule.onlyWithoutHeatPump ? 1 : 0)),
    wants: new Uint8Array(rules.length),
    shortSince_s: new Float64Array(rules.length).fill(NEVER),
    apart,
    shortestRun_s: unit.heatPump?.shortestRun_s ?? 0,
    shortestRest_s: unit.heatPump?.shortestRest_s ?? 0,
  };
}

/**
 * Takes over from another mode or setpoint: a source that runs goes on where the new mode would not have stopped it.
 * @param control the mode that begins; its memory is cleared
 * @param switches what runs, with fresh sensor readings
 */
export function adoptControl(control: ControlState, switches: Switches): void {
  control.shortSince_s.fill(NEVER);
  for (let rule = 0; rule < control.rules; rule += 1) {
    const isOn = byte(switches.on, byte(control.source, rule)) === 1;
    const isShort = cell(switches.sensor_C, byte(control.sensor, rule)) < cell(control.stop_C, rule);
    control.wants[rule] = isOn && isShort && byte(control.onlyWithoutHeatPump, rule) === 0 ? 1 : 0;
  }
}

function hasSource(unit: WaterHeater, source: HeatSource): boolean {
  if (source === "heat_pump") return unit.heatPump !== undefined;
  return unit.elements.some((element) => element.place === source);
}

function startTemperature_C(rule: SourceRule, unit: WaterHeater, setpoint_C: number): number {
  if ("at_C" in rule.start) return rule.start.at_C;
  if ("under_K" in rule.start) return setpoint_C - rule.start.under_K;
  const { upper, lower } = unit.controls.deadBand_K;
  if (rule.sensor === "mean") return setpoint_C - (upper + lower) / 2;
  return setpoint_C - (rule.sensor === "upper" ? upper : lower);
}

/**
 * Decides what runs now.
 * @param control the policy at its setpoint
 * @param switches what ran until now, with the time and fresh sensor readings; changed in place
 * @param isHeatPumpBarred true where the unit has no heat pump, or air or water temperature locks it out
 */
export function decide(control: ControlState, switches: Switches, isHeatPumpBarred: boolean): void {
  switches.timer_s = NEVER;
  const wanted = readRules(control, switches, isHeatPumpBarred);
  let granted = 0;
  if (timedHeatPump(control, switches, isHeatPumpBarred, (wanted & (1 << HEAT_PUMP)) !== 0))
    // A compressor in its shortest run is not pushed aside by an element.
    granted = byte(switches.on, HEAT_PUMP) === 1 ? grant(control, granted, HEAT_PUMP) : granted;
  for (let rule = 0; rule < control.rules; rule += 1) {
    const source = byte(control.source, rule);
    if ((wanted & (1 << source)) === 0 || byte(control.wants, rule) === 0) continue;
    if (source === HEAT_PUMP && !mayStart(control, switches, isHeatPumpBarred)) continue;
    granted = grant(control, granted, source);
  }
  for (let source = 0; source < SOURCES; source += 1) switchTo(switches, source, (granted >> source) & 1);
  noteSwitchingPoints(control, switches);
}

/** Updates every rule's latch; returns the wanted sources as bits. */
function readRules(control: ControlState, switches: Switches, isHeatPumpBarred: boolean): number {
  let wanted = 0;
  for (let rule = 0; rule < control.rules; rule += 1) {
    const t_C = cell(switches.sensor_C, byte(control.sensor, rule));
    if (byte(control.wants, rule) === 1) {
      if (t_C >= cell(control.stop_C, rule) - SWITCH_TOLERANCE_K) control.wants[rule] = 0;
    } else if (t_C > cell(control.start_C, rule) + SWITCH_TOLERANCE_K) control.shortSince_s[rule] = NEVER;
    else wait(control, switches, rule);
    if (byte(control.wants, rule) === 0) continue;
    if (byte(control.onlyWithoutHeatPump, rule) === 1 && !isHeatPumpBarred) continue;
    wanted |= 1 << byte(control.source, rule);
  }
  return wanted;
}

function wait(control: ControlState, switches: Switches, rule: number): void {
  const { now_s } = switches;
  if (cell(control.shortSince_s, rule) === NEVER) control.shortSince_s[rule] = now_s;
  const due_s = cell(control.shortSince_s, rule) + cell(control.after_s, rule);
  if (now_s < due_s) setTimer(switches, due_s);
  else {
    control.wants[rule] = 1;
    control.shortSince_s[rule] = NEVER;
  }
}

/** True where the compressor must go on because its shortest run is not over. */
function timedHeatPump(control: ControlState, switches: Switches, isBarred: boolean, isWanted: boolean): boolean {
  if (isBarred || byte(switches.on, HEAT_PUMP) === 0) return false;
  const free_s = cell(switches.changed_s, HEAT_PUMP) + control.shortestRun_s;
  if (switches.now_s >= free_s) return false;
  if (!isWanted) setTimer(switches, free_s);
  return true;
}

/** True where the compressor is allowed on: not barred, and running already or rested long enough. */
function mayStart(control: ControlState, switches: Switches, isBarred: boolean): boolean {
  if (isBarred) return false;
  if (byte(switches.on, HEAT_PUMP) === 1) return true;
  const rested_s = cell(switches.changed_s, HEAT_PUMP) + control.shortestRest_s;
  if (switches.now_s >= rested_s) return true;
  setTimer(switches, rested_s);
  return false;
}

function grant(control: ControlState, granted: number, source: number): number {
  for (let other = 0; other < SOURCES; other += 1)
    if ((granted >> other) & 1 && byte(control.apart, source * SOURCES + other) === 1) return granted;
  return granted | (1 << source);
}

function switchTo(switches: Switches, source: number, on: number): void {
  if (byte(switches.on, source) === on) return;
  switches.on[source] = on;
  switches.changed_s[source] = switches.now_s;
  if (on === 1) switches.starts[source] = cell(switches.starts, source) + 1;
}

function setTimer(switches: Switches, due_s: number): void {
  if (due_s < switches.timer_s) switches.timer_s = due_s;
}

/** Notes each sensor's nearest switching points as the rules now stand. */
function noteSwitchingPoints(control: ControlState, switches: Switches): void {
  const { below_C, above_C } = switches;
  below_C.fill(Number.NEGATIVE_INFINITY);
  above_C.fill(NEVER);
  for (let rule = 0; rule < control.rules; rule += 1) {
    const sensor = byte(control.sensor, rule);
    const start_C = cell(control.start_C, rule);
    if (byte(control.wants, rule) === 1) above_C[sensor] = Math.min(cell(above_C, sensor), cell(control.stop_C, rule));
    // A rule that waits has a timer; only water that has come back would change it.
    else if (cell(control.shortSince_s, rule) < NEVER)
      above_C[sensor] = Math.min(cell(above_C, sensor), start_C + 2 * SWITCH_TOLERANCE_K);
    else below_C[sensor] = Math.max(cell(below_C, sensor), start_C);
  }
}

/** Works out how far the sensors are past their nearest switching points, into `excess_K`. */
export function measureExcess(switches: Switches): void {
  const { sensor_C, below_C, above_C } = switches;
  let excess = Number.NEGATIVE_INFINITY;
  for (let sensor = 0; sensor < SENSORS; sensor += 1) {
    const t_C = cell(sensor_C, sensor);
    const under_K = cell(below_C, sensor) - t_C;
    const over_K = t_C - cell(above_C, sensor);
    if (under_K > excess) excess = under_K;
    if (over_K > excess) excess = over_K;
  }
  switches.excess_K = excess;
}
