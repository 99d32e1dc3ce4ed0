import type { Books } from "../books/books.ts";
import type { FindingOf, FindingSpecs } from "../declaration/answer.ts";
import { q } from "../declaration/answer.ts";
import { OUR_HABIT } from "../declaration/common-facts.ts";
import type { Assumption } from "../declaration/facts.ts";
import type { Source } from "../declaration/source.ts";
import { type LoopCase, type LoopPlan, planLoop } from "../physics/circulation-loop.ts";
import { type Insulation, insulationR, type WarmPipe } from "../physics/pipe-heat-loss.ts";
import { cooldown_s } from "../physics/pipe-heat-results.ts";
import type { PipeKind, PipeSize } from "../physics/pipe-table.ts";
import { toBase } from "../units/convert.ts";
import { assumePrice } from "./loop-price.ts";

/** What is taken where nobody says otherwise. */
const USUAL = { air_C: toBase(70, "F"), fall_K: toBase(10, "F_diff"), hours: 24, cop: 3 };
const USUAL_COP: Source = { basis: "from_memory", document: "Heat-pump water heaters in use, COP 2 to 3.5" };
const SECONDS_PER_HOUR = 3600;
/** There and back. */
const LOOP_TO_RUN = 2;
/** Resistance that the energy code asks for, and from which size. Source: IECC 2021 R403.5.2, read. */
const R_ASKED = 3;
const THIN_PIPES: readonly PipeSize[] = ["3/8", "1/2", "5/8"];
/** A pump that moves the tank this often a day leaves no cold layer at the bottom (common practice). */
const STIRS_FROM = 4;

/** The facts about warmth, some of them not told. */
interface WarmthFacts {
  readonly pipe: PipeKind;
  readonly size: PipeSize;
  readonly length_m: number;
  readonly setpoint_C: number;
  readonly wanted_C: number;
  readonly insulation: Insulation | undefined;
  readonly air_C: number | undefined;
  readonly loop: boolean | undefined;
  readonly loop_length_m: number | undefined;
  readonly loop_fall_K: number | undefined;
  readonly loop_hours_s: number | undefined;
  readonly cop: number | undefined;
  readonly tank_L: number | undefined;
  readonly price_usd_kWh: number | undefined;
}
export interface Warmth {
  readonly pipe: WarmPipe;
  readonly air_C: number;
  readonly loop?: { readonly known: LoopCase; readonly plan: LoopPlan; readonly price_usd_kWh: number };
  /** Values that nobody told, by fact. */
  readonly assumed: Readonly<Record<string, Assumption>>;
}

export const WARMTH_FINDINGS = {
  cools_in: { time: "time", wanted: "temperature", air: "temperature" },
  stays_useful: { wanted: "temperature" },
  never_useful: { hot: "temperature", wanted: "temperature" },
  bare_pipe: { asked: "ratio" },
  insulation_thin: { r: "ratio", asked: "ratio" },
  loop_costs: { heat: "power", electricity: "energy", money: "money" },
  loop_stirs: { times: "ratio" },
  loop_feeds_branch: {},
  loop_without_branch: {},
  loop_on_demand: {},
  still_air: {},
} as const satisfies FindingSpecs;
type F = FindingOf<typeof WARMTH_FINDINGS>;

/** Fills in what was not told and plans the loop, where there is one. */
export function planWarmth(facts: WarmthFacts, books: Books): Warmth {
  const { insulation = "none", air_C = USUAL.air_C } = facts;
  const pipe = { kind: facts.pipe, size: facts.size, insulation };
  const habit = (value: number | string): Assumption => ({ value, source: OUR_HABIT });
  const assumed = {
    ...(facts.insulation === undefined && { insulation: habit(insulation) }),
    ...(facts.air_C === undefined && { air: habit(air_C) }),
  };
  if (facts.loop !== true) return { pipe, air_C, assumed };
  const price = assumePrice(books);
  const length_m = facts.loop_length_m ?? LOOP_TO_RUN * facts.length_m;
  const known = {
    pipe,
    length_m,
    hot_C: facts.setpoint_C,
    fall_K: facts.loop_fall_K ?? USUAL.fall_K,
    air_C,
    hours: facts.loop_hours_s === undefined ? USUAL.hours : facts.loop_hours_s / SECONDS_PER_HOUR,
    cop: facts.cop ?? USUAL.cop,
    tank_L: facts.tank_L,
  };
  return {
    pipe,
    air_C,
    loop: { known, plan: planLoop(known), price_usd_kWh: facts.price_usd_kWh ?? Number(price.value) },
    assumed: {
      ...assumed,
      ...(facts.loop_length_m === undefined && { loop_length: habit(length_m) }),
      ...(facts.loop_fall_K === undefined && { loop_fall: habit(known.fall_K) }),
      ...(facts.loop_hours_s === undefined && { loop_hours: habit(known.hours * SECONDS_PER_HOUR) }),
      ...(facts.cop === undefined && { cop: { value: known.cop, source: USUAL_COP } }),
      ...(facts.price_usd_kWh === undefined && { price }),
    },
  };
}

/** What is worth saying about the warmth of the pipe. */
export function warmthFindings(facts: WarmthFacts, warmth: Warmth, hasBranch: boolean): readonly F[] {
  const found: F[] = [coolingFinding(facts, warmth), ...insulationFindings(warmth.pipe)];
  if (warmth.loop !== undefined) found.push(...loopFindings(warmth.loop, hasBranch));
  found.push({ code: "still_air", data: {} });
  return found;
}

function coolingFinding({ setpoint_C, wanted_C }: WarmthFacts, { pipe, air_C }: Warmth): F {
  const wanted = q("temperature", wanted_C);
  if (setpoint_C <= wanted_C) return { code: "never_useful", data: { hot: q("temperature", setpoint_C), wanted } };
  if (wanted_C <= air_C) return { code: "stays_useful", data: { wanted } };
  const time = q("time", cooldown_s(pipe, setpoint_C, wanted_C, air_C));
  return { code: "cools_in", data: { time, wanted, air: q("temperature", air_C) } };
}

function insulationFindings(pipe: WarmPipe): readonly F[] {
  if (THIN_PIPES.includes(pipe.size)) return [];
  const asked = q("ratio", R_ASKED);
  if (pipe.insulation === "none") return [{ code: "bare_pipe", data: { asked } }];
  const r = insulationR(pipe);
  return r < R_ASKED ? [{ code: "insulation_thin", data: { r: q("ratio", r), asked } }] : [];
}

function loopFindings({ plan, price_usd_kWh, known }: NonNullable<Warmth["loop"]>, hasBranch: boolean): readonly F[] {
  const data = {
    heat: q("power", plan.loss_W),
    electricity: q("energy", plan.electricity_kWh_day),
    money: q("money", plan.electricity_kWh_year * price_usd_kWh),
  };
  const found: F[] = [{ code: "loop_costs", data }];
  if (plan.turnovers !== undefined && plan.turnovers >= STIRS_FROM)
    found.push({ code: "loop_stirs", data: { times: q("ratio", plan.turnovers) } });
  found.push({ code: hasBranch ? "loop_feeds_branch" : "loop_without_branch", data: {} });
  if (known.hours === USUAL.hours) found.push({ code: "loop_on_demand", data: {} });
  return found;
}
