/**
 * The stratified tank, simulated.
 *
 *     const result = simulate(unit, site, schedule);
 *     result.summary.shortfall_L      // water delivered too cold
 *     result.draws.lowest_C[7]        // the coldest moment of the eighth draw
 *     result.books.gapShare           // closed to 1e-9, or the run throws
 *
 * - `unit` is a data sheet (`equipment/water-heater.ts`): tank, elements, heat pump, sensors, wiring.
 * - `site` is where it stands: supply volts, inlet temperature, air, perhaps a mixing valve at the tank.
 * - `schedule` is what happens: how long, who draws what when (`listDraws`), and which mode at which setpoint from when
 *   on (`plan`; a mode is a policy of `equipment/policies.ts`).
 * - `options` are for charts and for doubters: a trace on a time grid (`makeTrace`), layers, steps, a start temperature.
 *
 * Pure: same input, same output, no clock, no random numbers. All memory is taken before the first step and after the
 * last. A year with 1-minute draws is the unit of work; `tests/bench/tank-year.ts` says what it costs.
 *
 * What is modelled: plug flow with a stirred zone at the inlet; conduction in water and wall; loss by area to the air
 * around the tank; warm water rising; two elements and a heat pump under one policy, with interlocks, dead bands,
 * shortest runs and rests, lock-outs by air and water temperature; power by supply voltage; the heat pump's map over air
 * wet bulb and water temperature; what it takes from the room, water included (`room-air.ts` is the seam).
 * What is not: heat held by the steel, expansion, circulation loops, defrosting, the first minutes of a compressor's run.
 */
import type { Policy } from "../../equipment/policies.ts";
import { findSheetProblems } from "../../equipment/sheet-problems.ts";
import type { WaterHeater } from "../../equipment/water-heater.ts";
import { requireWithin } from "../require-within.ts";
import { advanceTo, settleDebt } from "./advance.ts";
import { closeBooks, type EnergyBooks } from "./books.ts";
import { drawHotWater } from "./draw.ts";
import {
  changeDraws,
  closeAllDraws,
  type DrawFlow,
  type DrawRecords,
  nextDrawChange_s,
  prepareDrawFlow,
} from "./draw-flow.ts";
import type { Draws } from "./draw-list.ts";
import { type DrawModel, type Engine, type Pace, startEngine } from "./engine.ts";
import { followPlan, type PlanCourse, preparePlan } from "./plan-course.ts";
import { meetRoom, type RoomAir } from "./room-air.ts";
import { readSeries, type Series, seriesEvery_s } from "./series.ts";
import { type RunSummary, summariseRun } from "./summary.ts";
import type { WaterHeat } from "./tank-model.ts";
import { setLayers, storedHeat_J, writeLayers } from "./tank-state.ts";
import { makeTraceMark, type Trace, type TraceMark, writeTrace } from "./trace.ts";

export interface Site {
  /** Supply voltage at the unit [V]. */
  readonly supply_V: number;
  /** Temperature of the cold water, constant or by the day [C]. */
  readonly inlet_C: Series;
  readonly air: RoomAir;
  /** Setting of a mixing valve at the tank's outlet, where there is one [C]. */
  readonly mixingValve_C?: number;
}

/** From `from_s` on this mode holds this setpoint. */
export interface PlanStep {
  readonly from_s: number;
  readonly policy: Policy;
  readonly setpoint_C: number;
}

export interface Schedule {
  readonly duration_s: number;
  readonly draws: Draws;
  /** In order of time; the first step begins at 0. */
  readonly plan: readonly [PlanStep, ...PlanStep[]];
}

export interface RunOptions {
  /** Layers of the tank; 12 where absent. */
  readonly layers?: number;
  /** Temperature of the tank at the start: of all of it, or of each layer, bottom first [C]. The setpoint where absent. */
  readonly start_C?: number | ArrayLike<number>;
  /** A draw is short below what is wanted less this [K]; 0 where absent. */
  readonly allowance_K?: number;
  /** The run ends early once more water than this was too cold [L]; where absent, never. `summary.duration_s` tells. */
  readonly enoughShort_L?: number;
  /** Written by the run; see `makeTrace`. */
  readonly trace?: Trace;
  readonly water?: WaterHeat;
  readonly pace?: Pace;
  readonly drawModel?: DrawModel;
}

export interface RunResult {
  readonly summary: RunSummary;
  readonly draws: DrawRecords;
  readonly books: EnergyBooks;
  /** Layer temperatures at the end, bottom first [C]; may start another run. */
  readonly layersAtEnd_C: Float64Array;
}

/** Everything that moves a run along. */
interface Run {
  readonly engine: Engine;
  readonly flow: DrawFlow;
  readonly plan: PlanCourse;
  readonly inlet: Series;
  readonly inletEvery_s: number;
  readonly trace: Trace | undefined;
  readonly mark: TraceMark;
  readonly end_s: number;
  nextInlet_s: number;
  traced: number;
  /** Time up to which water has been drawn [s]; the tank's own time follows within `pace.drawing_s`. */
  now_s: number;
}

/**
 * Runs one unit at one site through a schedule.
 * @param unit data sheet; refused with every problem named when `findSheetProblems` has any
 * @param site supply 90..260 V, inlet 0.5..35 C, mixing valve 35..80 C
 * @param schedule up to ten years
 * @param options all may be left out
 * @returns summary, what each draw got, energy books, layers at the end
 * @throws RangeError for a broken sheet or a number out of range; Error if the energy books do not close
 * @source see the files of this folder
 */
export function simulate(unit: WaterHeater, site: Site, schedule: Schedule, options: RunOptions = {}): RunResult {
  checkInput(unit, site, schedule);
  const run = prepareRun(unit, site, schedule, options);
  const { engine, flow } = run;
  const storedAtStart_J = storedHeat_J(engine.tank);
  const { enoughShort_L = Number.POSITIVE_INFINITY } = options;
  while (run.now_s < run.end_s && flow.short_L <= enoughShort_L) {
    meetChanges(run);
    passTime(run);
  }
  advanceTo(engine, run.now_s);
  settleDebt(engine);
  meetRoom(engine);
  closeAllDraws(flow);
  const layersAtEnd_C = new Float64Array(engine.tank.model.layers);
  writeLayers(engine.tank, layersAtEnd_C, 0);
  return {
    summary: summariseRun(engine, schedule.draws, flow.records),
    draws: flow.records,
    books: closeBooks(engine.ledger, storedAtStart_J, storedHeat_J(engine.tank)),
    layersAtEnd_C,
  };
}

function checkInput(unit: WaterHeater, site: Site, schedule: Schedule): void {
  const problems = findSheetProblems(unit);
  if (problems.length > 0) {
    const list = problems.map((problem) => `${problem.field} is ${problem.value} (${problem.min} to ${problem.max})`);
    throw new RangeError(`data sheet of ${unit.id}: ${list.join("; ")}`);
  }
  requireWithin("supply [V]", site.supply_V, 90, 260);
  requireWithin("duration [s]", schedule.duration_s, 1, LONGEST_RUN_s);
  if (site.mixingValve_C !== undefined) requireWithin("mixing valve [C]", site.mixingValve_C, 35, 80);
}

const LONGEST_RUN_s = 10 * 366 * 86_400;

function prepareRun(unit: WaterHeater, site: Site, schedule: Schedule, options: RunOptions): Run {
  const { start_C, allowance_K = 0, trace, layers, water, pace, drawModel } = options;
  const [first] = schedule.plan;
  const engine = startEngine(unit, {
    policy: first.policy,
    setpoint_C: first.setpoint_C,
    supply_V: site.supply_V,
    inlet_C: readSeries(site.inlet_C, 0),
    roomAir: site.air,
    start_C: typeof start_C === "number" ? start_C : first.setpoint_C,
    ...(layers !== undefined && { layers }),
    ...(water && { water }),
    ...(pace && { pace }),
    ...(drawModel && { drawModel }),
  });
  if (start_C !== undefined && typeof start_C !== "number") setLayers(engine.tank, start_C);
  return {
    engine,
    flow: prepareDrawFlow(schedule.draws, site.mixingValve_C ?? Number.POSITIVE_INFINITY, allowance_K),
    plan: preparePlan(unit, schedule.plan),
    inlet: site.inlet_C,
    inletEvery_s: seriesEvery_s(site.inlet_C),
    trace,
    mark: makeTraceMark(),
    end_s: schedule.duration_s,
    nextInlet_s: 0,
    traced: 0,
    now_s: 0,
  };
}

/** Takes note of everything that changes at this moment; the tank is up to date where more than draws change. */
function meetChanges(run: Run): void {
  const { engine, now_s } = run;
  if (now_s >= engine.nextAir_s) {
    settleDebt(engine);
    meetRoom(engine);
  }
  if (now_s >= run.nextInlet_s) {
    engine.inlet_C = readSeries(run.inlet, now_s);
    run.nextInlet_s += run.inletEvery_s;
  }
  if (now_s >= run.plan.next_s) followPlan(run.plan, engine);
  changeDraws(run.flow, now_s);
}

/** The next moment at which something but draws changes from outside [s]. */
function nextChange_s(run: Run): number {
  const next_s = Math.min(run.end_s, run.engine.nextAir_s, run.nextInlet_s, run.plan.next_s);
  return run.trace ? Math.min(next_s, (run.traced + 1) * run.trace.every_s) : next_s;
}

/** Lets time pass to the next change. */
function passTime(run: Run): void {
  const { engine, flow, trace } = run;
  const change_s = nextChange_s(run);
  const until_s = Math.min(change_s, nextDrawChange_s(flow));
  if (flow.open.count === 0) rest(run, until_s);
  while (run.now_s < until_s) draw(run, until_s);
  if (until_s < change_s) return;
  advanceTo(engine, until_s);
  if (trace === undefined || run.traced >= trace.count) return;
  if (run.now_s < (run.traced + 1) * trace.every_s && run.now_s < run.end_s) return;
  settleDebt(engine);
  writeTrace(trace, run.traced, engine, run.mark);
  run.traced += 1;
}

/**
 * Draws for a minute at most. Water moves first and the tank's own time follows a minute later at most, so that a short
 * draw and the rest after it are one step.
 */
function draw(run: Run, until_s: number): void {
  const { engine, flow } = run;
  const full_s = engine.now_s + engine.pace.drawing_s;
  const next_s = Math.min(until_s, full_s);
  drawHotWater(engine, flow.open, next_s - run.now_s);
  run.now_s = next_s;
  if (next_s === full_s) advanceTo(engine, next_s);
}

/** Lets time pass in which nobody draws; a rest that is over within the minute waits with the draw before it. */
function rest(run: Run, until_s: number): void {
  const { engine } = run;
  if (until_s - engine.now_s >= engine.pace.drawing_s) advanceTo(engine, until_s);
  run.now_s = until_s;
}
