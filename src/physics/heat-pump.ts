import { requireWithin } from "./require-within.ts";

/** Coefficients c1..c6 of f(x, y) = c1 + c2 x + c3 x² + c4 y + c5 y² + c6 x y. */
export type Biquadratic = readonly [c1: number, c2: number, c3: number, c4: number, c5: number, c6: number];

/** What the performance map of a heat pump needs; the data sheet of a unit holds all of it. */
export interface PerformanceData {
  readonly ratedHeat_W: number;
  readonly ratedCop: number;
  readonly ratingPoint: { readonly wetBulb_C: number; readonly water_C: number };
  readonly heatCurve: Biquadratic;
  readonly copCurve: Biquadratic;
  readonly fitted: { readonly wetBulb_C: readonly [number, number]; readonly water_C: readonly [number, number] };
}

/** A quadratic in water temperature: a + b y + c y². Mutable so that a new air state needs no allocation. */
interface Quadratic {
  a: number;
  b: number;
  c: number;
}

/**
 * A heat pump at one air state, ready to be asked at any water temperature. The air is folded into two quadratics once
 * for each air state, because water temperature changes every step and the air once an hour. Question and answer are
 * fields, so that asking costs no memory.
 */
export interface HeatPumpMap {
  readonly data: PerformanceData;
  /** Scales that make the curves 1 at the rating point, times the rated values [W] and [-]. */
  readonly heatScale_W: number;
  readonly copScale: number;
  readonly heat: Quadratic;
  readonly cop: Quadratic;
  /** True while the air's wet bulb lies outside the fitted range and the nearest edge stands in for it. */
  isAirClamped: boolean;
  /** Asked: water temperature at the condenser [C]. */
  water_C: number;
  /** Answered: heat into the water and compressor power [W]; both clamped to the fitted range. */
  heat_W: number;
  compressor_W: number;
}

/**
 * Value of a biquadratic curve.
 * @param curve coefficients c1..c6
 * @param x first variable, here air wet bulb [C]
 * @param y second variable, here water temperature at the condenser [C]
 * @returns multiplier of the rated value [-]
 * @source curve form common to published heat-pump water heater data: f = c1 + c2 x + c3 x² + c4 y + c5 y² + c6 x y
 * @limits valid where it was fitted and nowhere else
 */
export function evaluateBiquadratic(curve: Biquadratic, x: number, y: number): number {
  const [c1, c2, c3, c4, c5, c6] = curve;
  return c1 + c2 * x + c3 * x * x + c4 * y + c5 * y * y + c6 * x * y;
}

/**
 * Prepares a heat pump; it is at its rating point until `setAir` and `askMap` say otherwise.
 * @param data rated values, curves and the range they were fitted in
 * @returns the map at the rating air
 * @source scaling: f(x, y) / f(rating point), so that the rated values hold at the rating point exactly
 */
export function prepareMap(data: PerformanceData): HeatPumpMap {
  const { wetBulb_C, water_C } = data.ratingPoint;
  const map: HeatPumpMap = {
    data,
    heatScale_W: data.ratedHeat_W / evaluateBiquadratic(data.heatCurve, wetBulb_C, water_C),
    copScale: data.ratedCop / evaluateBiquadratic(data.copCurve, wetBulb_C, water_C),
    heat: { a: 0, b: 0, c: 0 },
    cop: { a: 0, b: 0, c: 0 },
    isAirClamped: false,
    water_C,
    heat_W: 0,
    compressor_W: 0,
  };
  setAir(map, wetBulb_C);
  askMap(map);
  return map;
}

/**
 * Tells the map what air the heat pump draws.
 * @param map changed in place
 * @param wetBulb_C wet bulb of the air at the coil [C], -60..60; clamped to the fitted range
 * @source the biquadratic with its x put in
 */
export function setAir(map: HeatPumpMap, wetBulb_C: number): void {
  requireWithin("wet bulb [C]", wetBulb_C, -60, 60);
  const [low, high] = map.data.fitted.wetBulb_C;
  const x = Math.min(high, Math.max(low, wetBulb_C));
  map.isAirClamped = x !== wetBulb_C;
  foldAir(map.heat, map.data.heatCurve, x, map.heatScale_W);
  foldAir(map.cop, map.data.copCurve, x, map.copScale);
}

function foldAir(into: Quadratic, curve: Biquadratic, x: number, scale: number): void {
  into.a = scale * (curve[0] + curve[1] * x + curve[2] * x * x);
  into.b = scale * (curve[3] + curve[5] * x);
  into.c = scale * curve[4];
}

/**
 * Answers for the water temperature in `water_C`: heat into the water and compressor power. Fan and controls are not in
 * the COP. Heat is never negative and COP never below 1, because compressor power itself ends up in the water.
 * @param map `water_C` in [C], clamped to the fitted range; `heat_W` and `compressor_W` out [W]
 * @source rated values times the scaled biquadratics; compressor power = heat / COP
 */
export function askMap(map: HeatPumpMap): void {
  const { heat, cop } = map;
  const [low, high] = map.data.fitted.water_C;
  const y = Math.min(high, Math.max(low, map.water_C));
  map.heat_W = Math.max(0, heat.a + y * (heat.b + y * heat.c));
  map.compressor_W = map.heat_W / Math.max(1, cop.a + y * (cop.b + y * cop.c));
}

/** True where the water temperature asked, or the present air, lies outside the fitted range. */
export function isClamped(map: HeatPumpMap): boolean {
  const [low, high] = map.data.fitted.water_C;
  return map.isAirClamped || map.water_C < low || map.water_C > high;
}
