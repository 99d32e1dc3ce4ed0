/**
 * Moving air, US units.
 *
 * FRICTION: round galvanized duct, roughness 0.0003 ft, in w.c. per 100 ft, by the Colebrook equation outside the project;
 * tolerance 0.5 %. CHART: reading of a public friction chart (8 to 14 % above the equation), tolerance 15 %.
 * WORKED: example of a university course on fluids, 6000 cfm in 80 ft of 28 in duct, f 0.01545, 0.064 in w.c.; tolerance 3 %.
 * SHEET: published calculation sheet after ASHRAE duct design, SI.
 * FLEX: correction for compressed flexible duct, 8 in, ASHRAE Handbook - Fundamentals (formula from memory), tolerance 0.1 %;
 * FLEX_MEASURED: Abushakra, Walker, Sherman (LBNL): moderate compression about 4 times, heavy near 10 times, 6 to 10 in.
 */
export const FRICTION = [
  { inside_in: 6, flow_cfm: 150, drop_in_wc: 0.17333 },
  { inside_in: 8, flow_cfm: 150, drop_in_wc: 0.04273 },
  { inside_in: 8, flow_cfm: 350, drop_in_wc: 0.19982 },
] as const;
export const CHART = { inside_in: 20, flow_cfm: 4000, drop_in_wc: 0.23, velocity_ft_min: 1850 } as const;
export const WORKED = {
  inside_in: 28,
  flow_cfm: 6000,
  length_ft: 80,
  drop_in_wc: 0.064,
  velocity_ft_min: 1400,
} as const;
export const SHEET = {
  diameter_m: 0.2545,
  velocity_m_s: 7.14,
  reynolds: 120_727,
  velocity_Pa: 31,
  factor: 0.0191,
  drop_Pa_m: 2.3,
} as const;
export const FLEX = [
  { compression: 0.04, times: 1.847 },
  { compression: 0.15, times: 4.175 },
  { compression: 0.3, times: 7.35 },
] as const;
export const FLEX_MEASURED = { moderate: 4, heavy: 10 } as const;

/**
 * OPENINGS: orifice with Cd 0.6 and 1.2 kg/m3 at 3 Pa, computed outside the project; tolerance 0.1 %.
 * UNDERCUT_PRACTICE: practice note for a 30 in door. UNDERCUT_FIELD_cfm: measured through a 1/2 in undercut at 3 Pa, leaks
 * around the door included: three times the orifice.
 * FREE_SHARES: NFPA 54, 9.3.7.1 as quoted.
 */
export const OPENINGS = [
  { area_in2: 144, flow_cfm: 264.1 },
  { area_in2: 240, flow_cfm: 440.17 },
] as const;
export const UNDERCUTS = [
  { gap_in: 0.5, area_in2: 15, flow_cfm: 27.51 },
  { gap_in: 0.75, area_in2: 22.5, flow_cfm: 41.27 },
] as const;
export const UNDERCUT_PRACTICE = { gap_in: 0.5, flow_cfm: 25 } as const;
export const UNDERCUT_FIELD_cfm = 80;
export const FREE_SHARES = { metal: 0.75, wood: 0.25 } as const;

/**
 * STACK_SHORTCUT: Q = 9.4 A sqrt(h dT), published shortcut for equal openings, A ft2, h ft between them, dT F.
 * ASHRAE Handbook - Fundamentals 1997, p. 25.13, eq. 37: Q = Cd A sqrt(2 g H (Ti - To) / Ti), H to the neutral level.
 */
export const STACK_SHORTCUT = { area_ft2: 1, height_ft: 8, difference_F: 10, flow_cfm: 84.08 } as const;
export function ashraeStack_m3_s(cd: number, area_m2: number, toNeutral_m: number, warm_C: number, cold_C: number) {
  return cd * area_m2 * Math.sqrt((2 * 9.80665 * toNeutral_m * (warm_C - cold_C)) / (warm_C + 273.15));
}

/** HOUSE: 50 (Q / Q50)^(1/0.65), worked by hand to two figures. */
export const HOUSE = [
  { exhaust_cfm: 150, leakage50_cfm: 1500, pressure_Pa: 1.4 },
  { exhaust_cfm: 150, leakage50_cfm: 700, pressure_Pa: 4.7 },
] as const;
/** Dry heat of an airflow in the trade's shortcut: Btu/h = 1.08 cfm dF, standard air. */
export const SENSIBLE = 1.08;

/** U.S. Standard Atmosphere 1976, sea level, 15 C. Standard air of the trade: 0.075 lb/ft3, Re = 8.56 D V. */
export const SEA_LEVEL = { t_C: 15, density_kg_m3: 1.225, viscosity_Pa_s: 1.7894e-5 } as const;
export const STANDARD = { density_lb_ft3: 0.075, reynolds_in_fpm: 8.56 } as const;

/** Blocked airflow, NREL laboratory report on integrated units: roughly 3 to 15 % less COP at 1/3 and 2/3 (from memory). */
export const BLOCKED = { thirds: [1, 2], copLoss: [0.03, 0.15] } as const;

/** Sums and distances as tutorials on decibels print them. */
export const SUMS = [
  { levels: [62, 73], sum: 73.3 },
  { levels: [68, 65], sum: 69.8 },
  { levels: [60, 60], sum: 63 },
  { levels: [70, 75], sum: 76.2 },
] as const;
export const FARTHER = { level: 90, from_m: 1, to_m: 4, farther: 78 } as const;
/** Lp = Lw - 20 log r - 11 around a source in the open; over a floor 3 dB more. Engineering reference page. */
export const SPHERE_dB = 11;
/** Building pages: hollow door 20 to 25, wallboard on studs 33. */
export const SOUND_CLASSES = { hollow: [20, 25], stud: 33 } as const;

/** IPC Table 314.2.2 as copied (UMC alike): inside diameter [in] up to tons of cooling. IPC 314.2.1: 1/8 in per foot. */
export const DRAINS = [
  { tons: 0.3, inside_in: 0.75 },
  { tons: 20, inside_in: 0.75 },
  { tons: 21, inside_in: 1 },
  { tons: 40, inside_in: 1 },
  { tons: 90, inside_in: 1.25 },
  { tons: 125, inside_in: 1.5 },
  { tons: 250, inside_in: 2 },
] as const;
export const SLOPE_in_per_ft = 1 / 8;
/** 30 % latent of 3240 Btu/h: 0.9 lb/h, 0.11 gal/h. */
export const CONDENSATE = { mass_lb: 0.9, volume_gal: 0.11 } as const;
