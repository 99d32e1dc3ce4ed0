import { requireWithin } from "./require-within.ts";
import { ATMOSPHERE_kPa } from "./water.ts";

/**
 * Properties of moist air. Symbols as in the source: t dry bulb, t* wet bulb, p total pressure, W humidity ratio
 * (mass of water by mass of dry air), pws saturation pressure of water alone, f enhancement factor, x = f pws.
 *
 * Equations: ASHRAE Handbook - Fundamentals 2017, chapter 1, equations 5, 6, 20, 22, 24, 26, 30, 33, 35 and 3.
 * Enhancement factor: A. L. Buck, New equations for computing vapor pressure and enhancement factor,
 * Journal of Applied Meteorology 20 (1981) 1527, curves f_w5 and f_i5.
 *
 * Agreement with the chapter's printed Table 2 at 101.325 kPa: humidity ratio and enthalpy at saturation within 0.1 %
 * from -50 to 50 C. Not so at 85 C, near boiling: humidity ratio 0.8 % and enthalpy 1.1 % high; no room is that hot.
 * Without the factor f, as many programs do, the humidity ratio would run 0.4 to 0.6 % low.
 */
const KELVIN = 273.15;
/** Triple point of water [C]: below it the saturation curve is that over ice. */
const TRIPLE_POINT_C = 0.01;
/** Ratio of the molecular masses of water and dry air [-]. Chapter 1, eq. 20. */
const MASS_RATIO = 0.621945;
/** Gas constant of dry air [kJ/(kg K)]. Chapter 1, eq. 1. */
const DRY_AIR_GAS_kJ_kg_K = 0.287042;
/** Specific heats [kJ/(kg K)] and heats of vaporisation and sublimation [kJ/kg] at 0 C. Chapter 1, eq. 30, 33, 35. */
const DRY_AIR_kJ_kg_K = 1.006;
const VAPOUR_kJ_kg_K = 1.86;
const LIQUID_kJ_kg_K = 4.186;
const ICE_kJ_kg_K = 2.1;
const VAPORISATION_kJ_kg = 2501;
const SUBLIMATION_kJ_kg = 2830;
/** Heat of the phase change falls by this much for each kelvin of wet bulb [kJ/(kg K)]. Chapter 1, eq. 33 and 35. */
const LIQUID_FALL_kJ_kg_K = 2.326;
const ICE_FALL_kJ_kg_K = 0.24;
/** Driest air that the equations are asked for [-]; psychrometric charts end here. */
const DRIEST = 1e-7;
/** The wet bulb of bone-dry air at 90 C lies 58 K under it: a safe lower bracket [K]. */
const DEEPEST_WET_BULB_K = 65;
/** How closely a temperature is solved for [K], and after how many tries the bracket is certainly that small. */
const ROOT_TOLERANCE_K = 1e-7;
const MOST_TURNS = 300;
/** More than any wet bulb falls for each unit of missing humidity [K]: heat of sublimation over the specific heat of air. */
const DEPRESSION_PER_DEFICIT_K = 2900;
const COLDEST_C = -100;
const HOTTEST_C = 200;

/**
 * Pressure of water vapour that is in balance with liquid water, or with ice below the triple point.
 * @param t_C temperature [C], -100..200
 * @returns saturation pressure [kPa]
 * @source ASHRAE Handbook - Fundamentals 2017, ch. 1, eq. 5 (ice) and 6 (liquid)
 * @limits within 0.03 % of Table 3 from -60 to 150 C
 */
export function saturationPressure_kPa(t_C: number): number {
  requireWithin("temperature [C]", t_C, COLDEST_C, HOTTEST_C);
  const T = t_C + KELVIN;
  const lnPws_Pa =
    t_C <= TRIPLE_POINT_C
      ? -5.6745359e3 / T +
        6.3925247 +
        T * (-9.677843e-3 + T * (6.2215701e-7 + T * (2.0747825e-9 - T * 9.484024e-13))) +
        4.1635019 * Math.log(T)
      : -5.8002206e3 / T +
        1.3914993 +
        T * (-4.8640239e-2 + T * (4.1764768e-5 - T * 1.4452093e-8)) +
        6.5459673 * Math.log(T);
  return Math.exp(lnPws_Pa) / 1000;
}

/**
 * How much more vapour saturated air holds than the vapour pressure of water alone would say.
 * @param t_C temperature [C], -100..200
 * @param p_kPa total pressure [kPa], 50..120
 * @returns enhancement factor f [-], 1.003..1.006 near sea level
 * @source Buck 1981, f_w5 (liquid) and f_i5 (ice)
 * @limits fitted from -50 to 80 C; 0.05 %
 */
export function enhancementFactor(t_C: number, p_kPa: number): number {
  const P_hPa = p_kPa * 10;
  if (t_C <= TRIPLE_POINT_C) return 1 + 4.8e-4 + P_hPa * (3.47e-6 + 5.9e-10 * (t_C + 23.8 - 3.1e-2 * P_hPa) ** 2);
  return 1 + 4.1e-4 + P_hPa * (3.48e-6 + 7.4e-10 * (t_C + 30.6 - 3.8e-2 * P_hPa) ** 2);
}

/**
 * Humidity ratio of air that holds vapour of a given pressure.
 * @param pw_kPa vapour pressure [kPa], 0 to less than the total
 * @param p_kPa total pressure [kPa]
 * @returns W [kg/kg]
 * @source ASHRAE Handbook - Fundamentals 2017, ch. 1, eq. 20
 */
function humidityRatioFromVapour(pw_kPa: number, p_kPa: number): number {
  return Math.max(DRIEST, (MASS_RATIO * pw_kPa) / (p_kPa - pw_kPa));
}

/**
 * Humidity ratio of saturated air.
 * @param t_C temperature [C], -100..200, below boiling at this pressure
 * @param p_kPa total pressure [kPa], 50..120
 * @returns Ws [kg/kg]
 * @source ASHRAE Handbook - Fundamentals 2017, ch. 1, eq. 21, with the enhancement factor
 * @limits see the top of this file
 */
export function saturationHumidityRatio(t_C: number, p_kPa: number): number {
  requirePressure(p_kPa);
  const x_kPa = saturationPressure_kPa(t_C) * enhancementFactor(t_C, p_kPa);
  if (!(x_kPa < p_kPa)) throw new RangeError(`water boils at ${t_C} C under ${p_kPa} kPa`);
  return humidityRatioFromVapour(x_kPa, p_kPa);
}

/**
 * Humidity ratio from relative humidity.
 * @param t_C dry bulb [C]
 * @param rh relative humidity [share], 0..1
 * @param p_kPa total pressure [kPa], 50..120
 * @returns W [kg/kg]
 * @source ASHRAE Handbook - Fundamentals 2017, ch. 1, eq. 12, 20 and 22
 */
export function humidityRatioFromRelativeHumidity(t_C: number, rh: number, p_kPa: number): number {
  requireWithin("relative humidity", rh, 0, 1);
  requirePressure(p_kPa);
  const pw_kPa = rh * saturationPressure_kPa(t_C) * enhancementFactor(t_C, p_kPa);
  if (!(pw_kPa < p_kPa)) throw new RangeError(`water boils at ${t_C} C under ${p_kPa} kPa`);
  return humidityRatioFromVapour(pw_kPa, p_kPa);
}

/**
 * Relative humidity from humidity ratio.
 * @param t_C dry bulb [C]
 * @param W humidity ratio [kg/kg], 0..1
 * @param p_kPa total pressure [kPa], 50..120
 * @returns relative humidity [share]; above 1 where the air would be supersaturated
 * @source ASHRAE Handbook - Fundamentals 2017, ch. 1, eq. 12, 20 and 22, solved for the vapour pressure
 */
export function relativeHumidityFromHumidityRatio(t_C: number, W: number, p_kPa: number): number {
  requireHumidityRatio(W);
  requirePressure(p_kPa);
  return (p_kPa * W) / (MASS_RATIO + W) / (saturationPressure_kPa(t_C) * enhancementFactor(t_C, p_kPa));
}

/**
 * Humidity ratio from wet bulb.
 * @param t_C dry bulb [C]
 * @param wetBulb_C thermodynamic wet bulb [C], not above the dry bulb
 * @param p_kPa total pressure [kPa], 50..120
 * @returns W [kg/kg], never below 1e-7
 * @source ASHRAE Handbook - Fundamentals 2017, ch. 1, eq. 33 (liquid wick) and 35 (ice on the wick)
 */
export function humidityRatioFromWetBulb(t_C: number, wetBulb_C: number, p_kPa: number): number {
  requireWithin("wet bulb [C]", wetBulb_C, COLDEST_C, t_C);
  return Math.max(DRIEST, wetBulbBalance(t_C, wetBulb_C, p_kPa));
}

function wetBulbBalance(t_C: number, wet_C: number, p_kPa: number): number {
  const Ws = saturationHumidityRatio(wet_C, p_kPa);
  const sensible = DRY_AIR_kJ_kg_K * (t_C - wet_C);
  return wet_C >= 0
    ? ((VAPORISATION_kJ_kg - LIQUID_FALL_kJ_kg_K * wet_C) * Ws - sensible) /
        (VAPORISATION_kJ_kg + VAPOUR_kJ_kg_K * t_C - LIQUID_kJ_kg_K * wet_C)
    : ((SUBLIMATION_kJ_kg - ICE_FALL_kJ_kg_K * wet_C) * Ws - sensible) /
        (SUBLIMATION_kJ_kg + VAPOUR_kJ_kg_K * t_C - ICE_kJ_kg_K * wet_C);
}

/**
 * Wet bulb from humidity ratio.
 * @param t_C dry bulb [C], -60..90
 * @param W humidity ratio [kg/kg], not above saturation at the dry bulb
 * @param p_kPa total pressure [kPa], 50..120
 * @returns thermodynamic wet bulb [C], to 1e-6 K or better
 * @source equation 33 or 35 solved by secant steps that never leave their bracket
 */
export function wetBulb_C(t_C: number, W: number, p_kPa: number): number {
  requireWithin("dry bulb [C]", t_C, -60, 90);
  requireHumidityRatio(W);
  const Ws = saturationHumidityRatio(t_C, p_kPa);
  if (W >= Ws) {
    requireWithin("humidity ratio", W, 0, Ws * 1.001);
    return t_C;
  }
  const wanted = Math.max(W, DRIEST);
  const depression_K = Math.min(DEEPEST_WET_BULB_K, DEPRESSION_PER_DEFICIT_K * (Ws - wanted));
  const lowest_C = Math.max(COLDEST_C, t_C - depression_K);
  return solveRising((wet_C) => wetBulbBalance(t_C, wet_C, p_kPa) - wanted, lowest_C, t_C);
}

/**
 * Dew point from humidity ratio.
 * @param W humidity ratio [kg/kg], 1e-6..1
 * @param p_kPa total pressure [kPa], 50..120
 * @returns temperature at which this air is saturated [C], frost point below 0 C
 * @source definition Ws(dew point, p) = W, ASHRAE Handbook - Fundamentals 2017, ch. 1
 */
export function dewPoint_C(W: number, p_kPa: number): number {
  requireWithin("humidity ratio", W, 1e-6, 1);
  return solveRising((t_C) => Math.log(saturationHumidityRatio(t_C, p_kPa) / W), -80, 80);
}

/**
 * Enthalpy of moist air, zero for dry air and liquid water at 0 C.
 * @param t_C dry bulb [C]
 * @param W humidity ratio [kg/kg], 0..1
 * @returns h [kJ/kg of dry air]
 * @source ASHRAE Handbook - Fundamentals 2017, ch. 1, eq. 30
 */
export function enthalpy_kJ_kg(t_C: number, W: number): number {
  requireWithin("temperature [C]", t_C, COLDEST_C, HOTTEST_C);
  requireHumidityRatio(W);
  return DRY_AIR_kJ_kg_K * t_C + W * (VAPORISATION_kJ_kg + VAPOUR_kJ_kg_K * t_C);
}

/**
 * Temperature at which saturated air has a given enthalpy.
 * @param h_kJ_kg enthalpy [kJ/kg of dry air], -60..300
 * @param p_kPa total pressure [kPa], 50..120
 * @returns temperature [C], to 1e-6 K or better
 * @source eq. 21 and 30 solved by secant steps that never leave their bracket
 */
export function saturatedAirTemperature_C(h_kJ_kg: number, p_kPa: number): number {
  requireWithin("enthalpy [kJ/kg]", h_kJ_kg, -60, 300);
  return solveRising((t_C) => enthalpy_kJ_kg(t_C, saturationHumidityRatio(t_C, p_kPa)) - h_kJ_kg, -60, 60);
}

/**
 * Volume of moist air that holds one kilogram of dry air.
 * @param t_C dry bulb [C]
 * @param W humidity ratio [kg/kg], 0..1
 * @param p_kPa total pressure [kPa], 50..120
 * @returns v [m3/kg of dry air]
 * @source ASHRAE Handbook - Fundamentals 2017, ch. 1, eq. 26
 */
export function specificVolume_m3_kg(t_C: number, W: number, p_kPa: number): number {
  requireWithin("temperature [C]", t_C, COLDEST_C, HOTTEST_C);
  requireHumidityRatio(W);
  requirePressure(p_kPa);
  return (DRY_AIR_GAS_kJ_kg_K * (t_C + KELVIN) * (1 + W / MASS_RATIO)) / p_kPa;
}

/**
 * Pressure of the standard atmosphere at an altitude.
 * @param altitude_m height above sea level [m], -500..5000
 * @returns pressure [kPa]
 * @source ASHRAE Handbook - Fundamentals 2017, ch. 1, eq. 3
 */
export function standardPressure_kPa(altitude_m: number): number {
  requireWithin("altitude [m]", altitude_m, -500, 5000);
  return ATMOSPHERE_kPa * (1 - 2.25577e-5 * altitude_m) ** 5.2559;
}

function requirePressure(p_kPa: number): void {
  requireWithin("air pressure [kPa]", p_kPa, 50, 120);
}

function requireHumidityRatio(W: number): void {
  requireWithin("humidity ratio", W, 0, 1);
}

/**
 * Root of a rising function between two bounds. Secant steps through the last two points, as long as they stay inside the
 * bracket and it shrinks; a halving otherwise, so that a jump (liquid to ice at 0 C) is closed in on as surely as a root.
 */
function solveRising(f: (x: number) => number, low: number, high: number): number {
  let a = low;
  let b = high;
  let last = a;
  let lastF = f(a);
  let x = b;
  let fx = f(b);
  if (lastF >= 0) return a;
  if (fx <= 0) return b;
  for (let turn = 1; turn <= MOST_TURNS && b - a > ROOT_TOLERANCE_K; turn += 1) {
    const secant = x - (fx * (x - last)) / (fx - lastF);
    const isUsable = secant > a && secant < b && turn % 6 !== 0;
    last = x;
    lastF = fx;
    x = isUsable ? secant : (a + b) / 2;
    if (isUsable && Math.abs(x - last) < ROOT_TOLERANCE_K) return x;
    fx = f(x);
    if (fx < 0) a = x;
    else b = x;
  }
  return (a + b) / 2;
}
