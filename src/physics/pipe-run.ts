import { frictionDrop_kPa, LIKELY_FACTOR, pipeContents_L, plugFlowWait_s, velocity_m_s } from "./pipe-flow.ts";

/** A length of one pipe. */
export interface Segment {
  readonly inside_m: number;
  readonly length_m: number;
}
export interface PipeRun {
  readonly segments: readonly Segment[];
  readonly contents_L: number;
  /** Plug flow: the shortest wait there can be. */
  readonly wait_s: number;
  readonly likely_s: number;
  readonly likelyWaste_L: number;
  readonly narrowest_m: number;
  /** Velocity in the narrowest segment. */
  readonly velocity_m_s: number;
  readonly drop_kPa: number;
}

/**
 * Adds up a run of pipe from heater to fixture.
 * @param segments lengths of pipe, at least one
 * @param flow_L_s flow [L/s], above 0, to 100
 * @param water_C water temperature [°C], 0..100
 * @returns contents [L], waits [s], velocity [m/s] and friction [kPa]
 * @source pipe-flow.ts
 * @limits straight pipe; no fittings, valves or height
 */
export function planRun(segments: readonly Segment[], flow_L_s: number, water_C: number): PipeRun {
  const contents_L = sum(segments.map(({ inside_m, length_m }) => pipeContents_L(inside_m, length_m)));
  const wait_s = plugFlowWait_s(contents_L, flow_L_s);
  const narrowest_m = Math.min(...segments.map(({ inside_m }) => inside_m));
  return {
    segments,
    contents_L,
    wait_s,
    likely_s: wait_s * LIKELY_FACTOR,
    likelyWaste_L: contents_L * LIKELY_FACTOR,
    narrowest_m,
    velocity_m_s: velocity_m_s(flow_L_s, narrowest_m),
    drop_kPa: sum(segments.map(({ inside_m, length_m }) => frictionDrop_kPa(flow_L_s, inside_m, length_m, water_C))),
  };
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
