import type { Source } from "../../declaration/source.ts";

const FOOT_m = 0.3048;

/** Wall roughness of round ducts [m]. */
export const DUCT_ROUGHNESS_m = {
  /** Smooth plastic pipe, drawn tubing. */
  smooth: 1.5e-6,
  /** Galvanized steel with joints, medium smooth. */
  galvanized: 0.0003 * FOOT_m,
  /** Fibre-lined. */
  lined: 0.003 * FOOT_m,
  /** Flexible duct pulled fully straight; compression comes on top. */
  flex: 0.003 * FOOT_m,
} as const;
export type DuctMaterial = keyof typeof DUCT_ROUGHNESS_m;
export const DUCT_MATERIALS: readonly DuctMaterial[] = ["galvanized", "flex", "smooth", "lined"];
export const ROUGHNESS: Source = {
  basis: "from_memory",
  document: "ASHRAE Handbook - Fundamentals, duct design, roughness table",
  section:
    "galvanized 0.0003 ft (newer editions 0.0005), lined and stretched flexible 0.003 ft; others print 0.012 for flexible",
};

/** Loss of a fitting over the velocity pressure in its round duct [-]. */
export const FITTING_LOSS = {
  elbow_90_long: { coefficient: 0.11, basis: "published" },
  elbow_90_smooth: { coefficient: 0.15, basis: "from_memory" },
  elbow_90_short: { coefficient: 0.22, basis: "from_memory" },
  elbow_90_gored: { coefficient: 0.42, basis: "from_memory" },
  elbow_90_mitred: { coefficient: 1.2, basis: "from_memory" },
  elbow_45: { coefficient: 0.13, basis: "from_memory" },
  tee_branch: { coefficient: 1, basis: "from_memory" },
  reducer: { coefficient: 0.05, basis: "from_memory" },
  boot: { coefficient: 0.6, basis: "common_practice" },
  entry_flush: { coefficient: 0.5, basis: "from_memory" },
  entry_bellmouth: { coefficient: 0.03, basis: "from_memory" },
  exit: { coefficient: 1, basis: "computed" },
  wall_hood: { coefficient: 1.3, basis: "common_practice" },
  roof_cap: { coefficient: 1.3, basis: "common_practice" },
} as const satisfies Readonly<Record<string, { readonly coefficient: number; readonly basis: Source["basis"] }>>;
export type DuctFitting = keyof typeof FITTING_LOSS;
export const DUCT_FITTINGS: readonly DuctFitting[] = [
  "elbow_90_smooth",
  "elbow_90_long",
  "elbow_90_short",
  "elbow_90_gored",
  "elbow_90_mitred",
  "elbow_45",
  "tee_branch",
  "reducer",
  "boot",
  "entry_flush",
  "entry_bellmouth",
  "exit",
  "wall_hood",
  "roof_cap",
];
/**
 * Where the coefficients come from. The hood and the cap stand for what sheets of range hoods count them as, 30 ft of 6 in
 * duct: 0.022 x 30 ft / 0.5 ft = 1.3. The exit is the kinetic energy itself. 45 degrees count as 0.6 of 90.
 */
export const FITTING_COEFFICIENTS: Source = {
  basis: "from_memory",
  document: "ASHRAE Handbook - Fundamentals, duct design, fitting coefficients",
  section: "only the long 90° elbow (CD3-10, 7 gores, r/D 2.5) was read; boot, hood and cap are common practice",
};

/** Flexible duct as it is found on jobs [share]; pulled straight it is still 0.04, let go after pulling 0.15. */
export const FIELD_COMPRESSION = 0.3;
export const COMPRESSION_FOUND: Source = {
  basis: "published",
  document: "Trade article on flexible duct as installed",
  section: "released duct lies about 15 % short of stretched, duct in the field about 30 %",
};
