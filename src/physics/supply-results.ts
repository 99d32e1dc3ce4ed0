import { type NameResult, type NumberResult, q, type Result } from "../declaration/answer.ts";
import { numberResult } from "../declaration/number-result.ts";
import type { Source } from "../declaration/source.ts";
import { FIXTURES, LOAD_TABLES } from "./fixture-unit-table.ts";
import { fixtureLoad, loadSource, steadyFlow_L_s } from "./fixture-units.ts";
import { CONTINUITY, DARCY_CHURCHILL } from "./pipe-flow.ts";
import { PIPE_SOURCES, type PipeSize, pipeMetal } from "./pipe-table.ts";
import { HYDROSTATICS, LOSSES, REGULATED, type SupplyCase, type SupplyPlan, type SupplyTrial } from "./supply-plan.ts";
import { COPPER_VELOCITY, PLASTIC_VELOCITY } from "./velocity-limit.ts";

/** The numbers of a supply plan, each with its equation, what went in, and its source. */
type SupplyId =
  | "fixture_units"
  | "fixture_units_hot"
  | "demand_flow"
  | "demand_flow_other"
  | "demand_flow_hot"
  | "pipe_size"
  | "pipe_size_hot"
  | "velocity"
  | "velocity_limit"
  | "velocity_hot"
  | "velocity_limit_hot"
  | "friction_loss"
  | "elevation_loss"
  | "other_losses"
  | "pressure_at_start"
  | "pressure_left"
  | "pressure_needed";
type Numbers = readonly NumberResult<SupplyId>[];

const FLOW_PRESSURE: Source = {
  basis: "published",
  document: "IPC",
  edition: "2018",
  section: "Table 604.3, flow pressure at the fixture",
};
const ENERGY_BALANCE: Source = { basis: "computed", document: "Pressure left over after height, losses and friction" };

/** Fixture units, and the demand by the table followed and by the other one. */
export function demandResults(known: SupplyCase, plan: SupplyPlan): Numbers {
  const units = q("ratio", plan.units.total);
  const hot = q("ratio", plan.units.hot);
  const loads = LOAD_TABLES[plan.other.code].source;
  const steady = q("water_flow", steadyFlow_L_s(known.hose_bibbs, known.code));
  const source = loadSource(known.counts, known.code, known.use);
  const flow = q("water_flow", plan.demand.flow_L_s);
  const other = q("water_flow", plan.other.demand.flow_L_s);
  const otherUnits = q("ratio", plan.other.units.total);
  return [
    numberResult("fixture_units", units, "Σ n · w", countInputs(known, "total"), source),
    numberResult("fixture_units_hot", hot, "Σ n · w_hot", countInputs(known, "hot"), source),
    numberResult("demand_flow", flow, "q(w) + q_steady", { w: units, q_steady: steady }, plan.demand.source),
    numberResult("demand_flow_other", other, "q(w)", { w: otherUnits }, plan.other.demand.source, loads),
    numberResult(
      "demand_flow_hot",
      q("water_flow", plan.hotDemand.flow_L_s),
      "q(w_hot)",
      { w_hot: hot },
      plan.hotDemand.source,
    ),
  ];
}

function countInputs({ counts, code, use, flush }: SupplyCase, part: "total" | "hot") {
  return Object.fromEntries(
    FIXTURES.filter((fixture) => counts[fixture] > 0).flatMap((fixture) => [
      [`n_${fixture}`, q("count", counts[fixture])],
      [`w_${fixture}`, q("ratio", fixtureLoad(fixture, code, use, flush)[part])],
    ]),
  );
}

/** The pipe that serves, or that was asked about, with its velocities. */
export function pipeResults(known: SupplyCase, plan: SupplyPlan, trial: SupplyTrial): readonly Result<SupplyId>[] {
  const limit = q("velocity", plan.coldLimit_m_s);
  const hotLimit = q("velocity", plan.hotLimit_m_s);
  const rule = pipeMetal(known.pipe) === "copper" ? COPPER_VELOCITY : PLASTIC_VELOCITY;
  const widths = PIPE_SOURCES[known.pipe];
  const v = q("velocity", trial.velocity_m_s);
  const v_hot = q("velocity", trial.hotVelocity_m_s);
  const Q = q("water_flow", plan.demand.flow_L_s);
  const Q_hot = q("water_flow", plan.hotDemand.flow_L_s);
  const main = { v, v_max: limit, p: q("pressure", trial.left_kPa), p_min: q("pressure", known.needed_kPa) };
  return [
    sizeResult("pipe_size", trial.size, "v ≤ v_max, p ≥ p_min", main, rule),
    ...(trial.hotFlow_L_s > 0
      ? [sizeResult("pipe_size_hot", trial.hotSize, "v ≤ v_max", { v: v_hot, v_max: hotLimit }, rule)]
      : []),
    numberResult("velocity", v, "v = Q / (π/4 · d²)", { Q, d: q("dimension", trial.inside_m) }, CONTINUITY, widths),
    numberResult("velocity_limit", limit, "v_max", { t: q("temperature", known.cold_C) }, rule),
    ...(trial.hotFlow_L_s > 0
      ? [
          numberResult(
            "velocity_hot",
            v_hot,
            "v = Q_hot / (π/4 · d²)",
            { Q_hot, d: q("dimension", trial.hotInside_m) },
            CONTINUITY,
            widths,
          ),
          numberResult("velocity_limit_hot", hotLimit, "v_max", { t: q("temperature", known.setpoint_C) }, rule),
        ]
      : []),
  ];
}

function sizeResult(
  id: "pipe_size" | "pipe_size_hot",
  size: PipeSize,
  equation: string,
  inputs: Readonly<Record<string, ReturnType<typeof q>>>,
  source: Source,
): NameResult<SupplyId> {
  const listed = Object.entries(inputs).map(([symbol, quantity]) => ({ symbol, quantity }));
  return { id, name: `${size} in`, how: { equation, inputs: listed, sources: [source] } };
}

/** Where the pressure goes between the street and the far fixture. */
export function pressureResults(known: SupplyCase, plan: SupplyPlan, trial: SupplyTrial): Numbers {
  const p_0 = q("pressure", plan.start_kPa);
  const rise = q("pressure", plan.rise_kPa);
  const losses = q("pressure", plan.loss_kPa);
  const friction = q("pressure", trial.mainFriction_kPa + trial.hotFriction_kPa);
  const isRegulated = plan.startedFrom === "regulated" || plan.startedFrom === "regulator_missing";
  const start = { p_street: q("pressure", known.residual_kPa ?? known.pressure_kPa) };
  const each = Object.fromEntries(
    LOSSES.filter((loss) => known.losses_kPa[loss] > 0).map((loss) => [loss, q("pressure", known.losses_kPa[loss])]),
  );
  const pipe = {
    L: q("length", known.length_m),
    L_hot: q("length", known.hot_length_m),
    f: q("share", known.fittings),
    Q: q("water_flow", plan.demand.flow_L_s),
    d: q("dimension", trial.inside_m),
  };
  const height = { h: q("length", known.rise_m) };
  const sums = { p_0, ρgh: rise, Σp: losses, Δp: friction };
  return [
    numberResult(
      "pressure_at_start",
      p_0,
      isRegulated ? "p_0 = 0.8 · p_regulator" : "p_0 = p_street",
      start,
      isRegulated ? REGULATED : ENERGY_BALANCE,
    ),
    numberResult("elevation_loss", rise, "ρ · g · h", height, HYDROSTATICS),
    numberResult("other_losses", losses, "Σ p", each, ENERGY_BALANCE),
    numberResult("friction_loss", friction, "Δp = Σ f_D · L · (1 + f)/d · ρ · v² / 2", pipe, DARCY_CHURCHILL),
    numberResult("pressure_left", q("pressure", trial.left_kPa), "p = p_0 − ρgh − Σp − Δp", sums, ENERGY_BALANCE),
    numberResult("pressure_needed", q("pressure", known.needed_kPa), "p_min", {}, FLOW_PRESSURE),
  ];
}
