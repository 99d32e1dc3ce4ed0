import { type NumberResult, q } from "../declaration/answer.ts";
import { numberResult } from "../declaration/number-result.ts";
import { CONTINUITY, DARCY_CHURCHILL, LIKELY_WAIT, PLUG_FLOW } from "./pipe-flow.ts";
import type { PipeRun } from "./pipe-run.ts";
import { PIPE_SOURCES, type PipeKind } from "./pipe-table.ts";
import { IAPWS_IF97 } from "./water.ts";
import { IAPWS_LIQUID_WATER } from "./water-viscosity.ts";

/** The numbers of a run of pipe, each with its equation, what went in, and its source. */
type RunId = "pipe_volume" | "wait_time" | "wait_time_likely" | "volume_wasted" | "velocity" | "pressure_drop";

/** What must be known of the run beside its segments. */
export interface RunCase {
  readonly pipe: PipeKind;
  readonly flow_L_s: number;
  readonly water: "hot" | "cold";
  /** Temperature of the water in the pipe. */
  readonly water_C: number;
}

/** How long hot water takes, and what is run off meanwhile. */
export function waitResults({ pipe, flow_L_s }: RunCase, run: PipeRun): readonly NumberResult<RunId>[] {
  const V = q("volume", run.contents_L);
  const Q = q("water_flow", flow_L_s);
  const t = q("time", run.wait_s);
  return [
    contents(pipe, run),
    numberResult("wait_time", t, "t = V / Q", { V, Q }, PLUG_FLOW),
    numberResult("wait_time_likely", q("time", run.likely_s), "1.2 · t", { t }, LIKELY_WAIT),
    { ...numberResult("volume_wasted", V, "V … 1.2 · V", { V }, PLUG_FLOW, LIKELY_WAIT), upTo: run.likelyWaste_L },
  ];
}

/** How fast the water runs and what it loses to friction. */
export function flowResults(known: RunCase, run: PipeRun): readonly NumberResult<RunId>[] {
  const Q = q("water_flow", known.flow_L_s);
  const d = q("dimension", run.narrowest_m);
  const velocity = q("velocity", run.velocity_m_s);
  const inputs = { Q, t: q("temperature", known.water_C), ...runInputs(run) };
  return [
    ...(known.water === "cold" ? [contents(known.pipe, run)] : []),
    numberResult("velocity", velocity, "v = Q / (π/4 · d²)", { Q, d }, CONTINUITY, PIPE_SOURCES[known.pipe]),
    numberResult(
      "pressure_drop",
      q("pressure", run.drop_kPa),
      "Δp = Σ f · L/d · ρ · v² / 2",
      inputs,
      DARCY_CHURCHILL,
      IAPWS_IF97,
      IAPWS_LIQUID_WATER,
    ),
  ];
}

function contents(pipe: PipeKind, run: PipeRun): NumberResult<RunId> {
  const V = q("volume", run.contents_L);
  return numberResult("pipe_volume", V, "V = Σ π/4 · d² · L", runInputs(run), PIPE_SOURCES[pipe]);
}

function runInputs({ segments }: PipeRun) {
  return Object.fromEntries(
    segments.flatMap(({ inside_m, length_m }, index) => [
      [`d_${index + 1}`, q("dimension", inside_m)],
      [`L_${index + 1}`, q("length", length_m)],
    ]),
  );
}
