import { POLICIES } from "../../src/equipment/policies.ts";
import { type DrawRequest, type Draws, listDraws } from "../../src/physics/tank/draw-list.ts";
import { airSeries, steadyAir } from "../../src/physics/tank/room-air.ts";
import { type RunOptions, simulate } from "../../src/physics/tank/simulate.ts";
import { INTEGRATED_80 } from "../fixtures/water-heaters.ts";
import type { BenchRow } from "./bench-row.ts";

/** Budget: 60 ms for a simulated year where a bare fixed-step loop of that size takes 35 ms, so as a ratio of one run. */
const BUDGET_RATIO = 60 / 35;
const DAYS = 365;
const DAY_s = 86_400;
const MINUTES = DAYS * 1440;
const ROUNDS = 9;

/** A household of four, invented: 3 showers, 58 small draws, a dishwasher and every other day the laundry. */
export function drawYear(days: number, seed: number): Draws {
  let state = seed;
  const random = () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
  const minute = (from_h: number, hours: number) => Math.floor((from_h + random() * hours) * 60) * 60;
  const requests: DrawRequest[] = [];
  for (let day = 0; day < days; day += 1) {
    const add = (start_s: number, duration_s: number, volume_L: number, wanted_C: number, isMixed: boolean) =>
      requests.push({ start_s: day * DAY_s + start_s, duration_s, volume_L, wanted_C, isMixed });
    for (const from_h of [6, 6, 18])
      add(minute(from_h, 3), 420 + Math.floor(random() * 240), 50 + random() * 20, 40.5, true);
    for (let k = 0; k < 58; k += 1) add(minute(6, 17), 20 + Math.floor(random() * 60), 1 + random() * 4, 40, true);
    add(20 * 3600, 180, 6, 49, false);
    if (day % 2 === 0) add(minute(18, 3), 240, 25, 40, false);
  }
  return listDraws(requests);
}

/** Air by the hour, with a day's and a year's swing, so that the wet bulb is solved and the coil condenses. */
const AIR = airSeries({
  every_s: 3600,
  dryBulb_C: Float64Array.from(
    { length: DAYS * 24 },
    (_, h) => 17 - 5 * Math.cos((2 * Math.PI * h) / 8760) - Math.cos((2 * Math.PI * h) / 24),
  ),
  relativeHumidity: new Float64Array(DAYS * 24).fill(0.55),
});
const INLET = {
  every_s: DAY_s,
  values: Float64Array.from({ length: DAYS }, (_, day) => 12 - 6 * Math.cos((2 * Math.PI * day) / 365)),
};

function simulateDays(days: number, draws: Draws, options: RunOptions = {}, air = AIR) {
  const site = { supply_V: 240, inlet_C: INLET, air };
  const plan = [{ from_s: 0, policy: POLICIES.heat_pump_first, setpoint_C: 52 }] as const;
  return simulate(INTEGRATED_80, site, { duration_s: days * DAY_s, draws, plan }, options);
}

/**
 * What the simulated year is measured against: the plainest loop that moves 12 layers through a year of minutes, with
 * flow, conduction, loss and a thermostat, and nothing else.
 */
export function bareYear(): number {
  const t_C = new Float64Array(12).fill(50);
  const next_C = new Float64Array(12);
  let on = 0;
  for (let minute = 0; minute < MINUTES; minute += 1) {
    const flow = minute % 1440 > 400 && minute % 1440 < 500 ? 0.3 : 0;
    on += (t_C[2] ?? 0) < 48 ? 1 : 0;
    for (let i = 0; i < 12; i += 1) {
      const t = t_C[i] ?? 0;
      const below = i > 0 ? (t_C[i - 1] ?? 0) : 12;
      const above = i < 11 ? (t_C[i + 1] ?? 0) : t;
      const heat = on % 2 === 1 && i < 4 ? 0.05 : 0;
      next_C[i] = t + flow * (below - t) + 0.001 * (above - 2 * t + (i > 0 ? below : t)) + 0.0005 * (20 - t) + heat;
    }
    for (let i = 0; i < 12; i += 1) t_C[i] = next_C[i] ?? 0;
  }
  return (t_C[5] ?? 0) + on;
}

/** Processor time of the quickest of some rounds [ms]; both sides take turns, so that a busy machine is busy for both. */
function race(ours: () => void, bare: () => void): { readonly ours_ms: number; readonly bare_ms: number } {
  const best = { ours_ms: Number.POSITIVE_INFINITY, bare_ms: Number.POSITIVE_INFINITY };
  for (let round = 0; round < ROUNDS; round += 1) {
    best.ours_ms = Math.min(best.ours_ms, cpu_ms(ours));
    best.bare_ms = Math.min(best.bare_ms, cpu_ms(bare));
  }
  return best;
}

function cpu_ms(work: () => void): number {
  const start = process.cpuUsage();
  work();
  return process.cpuUsage(start).user / 1000;
}

/** The simulated year against the bare loop, what fine fixed steps cost, and how cost grows with layers and days. */
export async function benchTankYear(): Promise<{ readonly rows: readonly BenchRow[] }> {
  const year = drawYear(DAYS, 1);
  const row = (name: string, budget: string, most: number, run: () => void): BenchRow => {
    const { ours_ms, bare_ms } = race(run, bareYear);
    const ratio = ours_ms / bare_ms;
    return { name, unit: "ms", door: ours_ms, bare: bare_ms, ratio, budget, isKept: ratio <= most };
  };
  const some = (days: number, layers: number) => {
    const draws = drawYear(days, 1);
    return () => simulateDays(days, draws, { layers });
  };
  return {
    rows: [
      row("a year, 12 layers, air by the hour", `<= ${BUDGET_RATIO.toFixed(2)} x`, BUDGET_RATIO, () =>
        simulateDays(DAYS, year),
      ),
      row("a year, 12 layers, air that stays", `<= ${BUDGET_RATIO.toFixed(2)} x`, BUDGET_RATIO, () =>
        simulateDays(DAYS, year, {}, EVEN_AIR),
      ),
      row("a year in fixed steps of a minute", "none", Number.POSITIVE_INFINITY, () =>
        simulateDays(DAYS, year, { pace: MINUTE_STEPS }),
      ),
      row("a year, 24 layers", "<= 2 x of 12", BUDGET_RATIO * 2, some(DAYS, 24)),
      row("a year, 48 layers", "<= 4 x of 12", BUDGET_RATIO * 4, some(DAYS, 48)),
      row("30 days, 12 layers", "<= 1/10 year", BUDGET_RATIO / 10, some(30, 12)),
      row("90 days, 12 layers", "<= 3/10 year", (BUDGET_RATIO * 3) / 10, some(90, 12)),
      heapRow(year),
    ],
  };
}

const MINUTE_STEPS = { idle_s: 60, heating_s: 60, drawing_s: 60, exchange_s: 0 };

/** The same air all day, as topics have it; by the hour a wet bulb has to be solved for each. */
const EVEN_AIR = steadyAir(17, 0.55);

/** Memory that a year leaves on the heap while it runs, beside the records it returns: bytes for each step. */
function heapRow(year: Draws): BenchRow {
  const before = process.memoryUsage().heapUsed;
  const { summary } = simulateDays(DAYS, year, {}, EVEN_AIR);
  const bytes = Math.max(0, process.memoryUsage().heapUsed - before) / summary.steps;
  return {
    name: "heap for each step",
    unit: "B",
    door: bytes,
    bare: 16,
    ratio: bytes / 16,
    budget: "<= 4 x one boxed number",
    isKept: bytes <= 64,
  };
}
