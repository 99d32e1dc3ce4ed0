import { type NumberResult, q } from "../declaration/answer.ts";
import { numberResult } from "../declaration/number-result.ts";
import type { Source } from "../declaration/source.ts";
import { LOOP_BALANCE, type LoopCase, type LoopPlan } from "./circulation-loop.ts";
import type { WarmPipe } from "./pipe-heat-loss.ts";
import {
  COOLING_LAW,
  coolingTime_s,
  FOAM,
  heatPerMetre_J_mK,
  lossPerMetre_W_mK,
  STILL_AIR_FILM,
} from "./pipe-heat-loss.ts";
import { insideDiameter_m, outsideDiameter_m, PIPE_SOURCES } from "./pipe-table.ts";

/** What a hot pipe loses while it stands and while it circulates. */
type HeatId =
  | "cooldown_time"
  | "loop_heat_loss"
  | "loop_heat_per_day"
  | "loop_electricity_per_day"
  | "loop_cost_per_year"
  | "loop_turnovers"
  | "pump_flow";

/**
 * Time until the water that stands in a pipe is too cool to be of use.
 * @param pipe kind, size, insulation
 * @param hot_C temperature when the tap shuts [°C], above wanted_C
 * @param wanted_C coolest that is of use [°C]
 * @param air_C air around [°C]
 * @returns time [s]; without end where the air is as warm
 * @source pipe-heat-loss.ts, loss taken at the mean of both temperatures
 */
export function cooldown_s(pipe: WarmPipe, hot_C: number, wanted_C: number, air_C: number): number {
  const mean_C = (hot_C + wanted_C) / 2;
  const constant_s = heatPerMetre_J_mK(pipe, mean_C) / lossPerMetre_W_mK(pipe, mean_C, air_C);
  return coolingTime_s(hot_C, wanted_C, air_C, constant_s);
}

/** The cool-down with what went in; nothing where it never cools or was never warm enough. */
export function cooldownResults(
  pipe: WarmPipe,
  hot_C: number,
  wanted_C: number,
  air_C: number,
): readonly NumberResult<HeatId>[] {
  if (hot_C <= wanted_C || wanted_C <= air_C) return [];
  const inputs = {
    t_0: q("temperature", hot_C),
    t_1: q("temperature", wanted_C),
    t_air: q("temperature", air_C),
    d_in: q("dimension", insideDiameter_m(pipe.kind, pipe.size) ?? 0),
    d_out: q("dimension", outsideDiameter_m(pipe.size)),
    "UA (1 m)": q("heat_loss_coefficient", lossPerMetre_W_mK(pipe, (hot_C + wanted_C) / 2, air_C)),
  };
  const time = q("time", cooldown_s(pipe, hot_C, wanted_C, air_C));
  const equation = "τ = C/UA · ln((t_0 − t_air) / (t_1 − t_air))";
  return [numberResult("cooldown_time", time, equation, inputs, COOLING_LAW, ...lossSources(pipe))];
}

function lossSources(pipe: WarmPipe): readonly Source[] {
  return [STILL_AIR_FILM, ...(pipe.insulation === "none" ? [] : [FOAM]), PIPE_SOURCES[pipe.kind]];
}

/** What a circulation loop takes, and the flow that keeps it warm. */
export function loopResults(known: LoopCase, plan: LoopPlan, price_usd_kWh: number): readonly NumberResult<HeatId>[] {
  const Q = q("power", plan.loss_W);
  const E = q("energy", plan.heat_kWh_day);
  const W = q("energy", plan.electricity_kWh_day);
  const q_pump = q("water_flow", plan.pumpFlow_L_s);
  const hours = q("time", known.hours * 3600);
  const lost = {
    "UA (1 m)": q("heat_loss_coefficient", plan.loss_W_mK),
    L: q("length", known.length_m),
    t_mean: q("temperature", plan.mean_C),
    t_air: q("temperature", known.air_C),
  };
  const fall = q("temperature_difference", known.fall_K);
  const cost = q("money", plan.electricity_kWh_year * price_usd_kWh);
  const price = q("energy_price", price_usd_kWh);
  const results: NumberResult<HeatId>[] = [
    numberResult(
      "loop_heat_loss",
      Q,
      "Q = UA · L · (t_mean − t_air)",
      lost,
      STILL_AIR_FILM,
      ...lossSources(known.pipe),
    ),
    numberResult("loop_heat_per_day", E, "E = Q · h", { Q, h: hours }, LOOP_BALANCE),
    numberResult("loop_electricity_per_day", W, "W = E / COP", { E, COP: q("ratio", known.cop) }, LOOP_BALANCE),
    numberResult("loop_cost_per_year", cost, "365 · W · p", { W, p: price }, LOOP_BALANCE),
    numberResult("pump_flow", q_pump, "q = Q / (ρ · c · Δt)", { Q, Δt: fall }, LOOP_BALANCE),
  ];
  if (plan.turnovers === undefined || known.tank_L === undefined) return results;
  const inputs = { q: q_pump, h: hours, V: q("volume", known.tank_L) };
  return [
    ...results,
    numberResult("loop_turnovers", q("ratio", plan.turnovers), "n = q · h / V", inputs, LOOP_BALANCE),
  ];
}
