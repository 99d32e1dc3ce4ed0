import type { Source } from "../../declaration/source.ts";
import { requireWithin } from "../require-within.ts";
import type { AirState } from "./air-state.ts";
import { type DuctKit, kitLoss } from "./duct-kit.ts";

export interface FanPoint {
  readonly airflow_m3_s: number;
  /** Pressure left for ducts at this airflow [Pa]. */
  readonly pressure_Pa: number;
}

/** What is known of the unit's fan: a curve, or the one point that most sheets print. */
export type Fan =
  | { readonly kind: "curve"; readonly points: readonly [FanPoint, FanPoint, ...FanPoint[]] }
  | { readonly kind: "point"; readonly rated_m3_s: number; readonly available_Pa: number };

/** Airflow at which ducts take what the fan gives. */
export interface AirflowLeft {
  readonly airflow_m3_s: number;
  /** Of the airflow with no ducts at all [share]. */
  readonly share: number;
  /** What the ducts take at this airflow [Pa]. */
  readonly loss_Pa: number;
  /**
   * balanced = fan and ducts meet; full = the ducts take less than the fan has to spare, the unit keeps its airflow;
   * beyond_sheet = the ducts take more than the curve's first point gives, whose pressure stands in for the rest;
   * blocked = the fan gives no pressure.
   */
  readonly end: "balanced" | "full" | "beyond_sheet" | "blocked";
}

/** Pressure for ducts that a unit made for ducts is taken to have, where its sheet is silent [Pa]: 0.2 in w.c. */
export const USUAL_STATIC_Pa = 49.8;
export const USUAL_STATIC: Source = {
  basis: "common_practice",
  document: "Pressure for ducts where the sheet is silent",
  section: "0.2 in w.c.; the sheet of the unit decides",
};

const MOST_m3_s = 5;
const MOST_Pa = 2000;
const HALVINGS = 60;
/** Less than this share of the fan's airflow is none. */
const NO_FLOW = 1e-6;
const NOTHING: FanPoint = { airflow_m3_s: 0, pressure_Pa: 0 };

/**
 * Airflow left once ducts are put on a unit.
 * @param fan a curve of at least two points with rising airflow [m3/s], 0..5, and pressure [Pa], 0..2000; or rated airflow
 *   and the pressure available at it
 * @param kit ducts in a row
 * @param air density and viscosity of the air in the ducts
 * @returns airflow [m3/s], its share of the airflow without ducts, and how the answer came about
 * @throws RangeError where the points do not rise in airflow
 * @source kit loss = fan pressure, closed in on by halving from the side of large airflow, the stable crossing
 * @limits a fan known by one point is taken to give no more pressure at less airflow, which is cautious; a curve is for
 *   standard air, and thin air moves the same volume at less pressure
 */
export function airflowLeft(fan: Fan, kit: DuctKit, air: AirState): AirflowLeft {
  const points = fan.kind === "curve" ? fan.points : [ratedPoint(fan)];
  requireRising(points);
  const [first, last] = [points[0] ?? NOTHING, points[points.length - 1] ?? NOTHING];
  const loss_Pa = (flow_m3_s: number) => kitLoss(flow_m3_s, kit, air).total_Pa;
  const surplus_Pa = (flow_m3_s: number) => fanPressure_Pa(points, flow_m3_s) - loss_Pa(flow_m3_s);
  const answer = (airflow_m3_s: number, end: AirflowLeft["end"]): AirflowLeft => ({
    airflow_m3_s,
    share: airflow_m3_s / last.airflow_m3_s,
    loss_Pa: loss_Pa(airflow_m3_s),
    end: airflow_m3_s < NO_FLOW * last.airflow_m3_s ? "blocked" : end,
  });
  if (surplus_Pa(last.airflow_m3_s) >= 0) return answer(last.airflow_m3_s, "full");
  for (let i = points.length - 2; i >= 0; i -= 1) {
    const [low_m3_s, high_m3_s] = [points[i]?.airflow_m3_s ?? 0, points[i + 1]?.airflow_m3_s ?? 0];
    if (surplus_Pa(low_m3_s) >= 0) return answer(whereSpent(surplus_Pa, low_m3_s, high_m3_s), "balanced");
  }
  const airflow_m3_s = whereSpent(surplus_Pa, 0, first.airflow_m3_s);
  return answer(airflow_m3_s, fan.kind === "point" ? "balanced" : "beyond_sheet");
}

/** Pressure that a fan gives [Pa]: straight lines between its points, the first and last held beyond them. */
function fanPressure_Pa(points: readonly FanPoint[], flow_m3_s: number): number {
  let before = points[0] ?? NOTHING;
  for (const point of points) {
    if (flow_m3_s <= point.airflow_m3_s) {
      const span_m3_s = point.airflow_m3_s - before.airflow_m3_s;
      const along = span_m3_s > 0 ? Math.max(0, (flow_m3_s - before.airflow_m3_s) / span_m3_s) : 0;
      return before.pressure_Pa + along * (point.pressure_Pa - before.pressure_Pa);
    }
    before = point;
  }
  return before.pressure_Pa;
}

function ratedPoint(fan: { readonly rated_m3_s: number; readonly available_Pa: number }): FanPoint {
  return { airflow_m3_s: fan.rated_m3_s, pressure_Pa: fan.available_Pa };
}

function requireRising(points: readonly FanPoint[]): void {
  let before_m3_s = -1;
  for (const { airflow_m3_s, pressure_Pa } of points) {
    requireWithin("airflow_m3_s", airflow_m3_s, 0, MOST_m3_s);
    requireWithin("pressure_Pa", pressure_Pa, 0, MOST_Pa);
    if (airflow_m3_s <= before_m3_s) throw new RangeError("the points of a fan curve rise in airflow");
    before_m3_s = airflow_m3_s;
  }
  requireWithin("largest airflow_m3_s", before_m3_s, Number.MIN_VALUE, MOST_m3_s);
}

/** Largest airflow at which pressure is left, between one with and one without. */
function whereSpent(surplus_Pa: (flow_m3_s: number) => number, low_m3_s: number, high_m3_s: number): number {
  let [low, high] = [low_m3_s, high_m3_s];
  for (let turn = 0; turn < HALVINGS; turn += 1) {
    const middle = (low + high) / 2;
    if (surplus_Pa(middle) >= 0) low = middle;
    else high = middle;
  }
  return low;
}
