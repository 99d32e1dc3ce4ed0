import type { Source } from "../../declaration/source.ts";
import { requireWithin } from "../require-within.ts";

/** Share of a sharp-edged opening that the jet fills, times its velocity coefficient [-]. Common textbook value. */
export const SHARP_CD = 0.6;
export const ORIFICE: Source = { basis: "computed", document: "Orifice flow, Cd A sqrt(2 Δp / ρ)", section: "Cd 0.6" };

/** Free share of the face of a grille, where its maker does not say. */
export const FREE_SHARE = { metal: 0.75, wood: 0.25, open: 1 } as const;
export type GrilleKind = keyof typeof FREE_SHARE;
export const GRILLE_KINDS: readonly GrilleKind[] = ["metal", "wood", "open"];
export const FREE_SHARES: Source = {
  basis: "published",
  document: "NFPA 54",
  section:
    "9.3.7.1 as quoted: metal louvres 75 %, wood 25 % where the free area is not known (older prints 60 to 75 and 20 to 25)",
};

const LARGEST_m2 = 100;
const MOST_Pa = 10_000;
const MOST_m3_s = 50;

/**
 * Airflow through an opening.
 * @param area_m2 free area [m2], 0..100
 * @param drop_Pa pressure difference [Pa], 0..10000
 * @param density_kg_m3 of the air that flows, above 0
 * @param cd discharge coefficient [-], 0.1..1
 * @returns airflow [m3/s]
 * @source Cd A sqrt(2 dp / rho)
 */
export function orificeFlow_m3_s(area_m2: number, drop_Pa: number, density_kg_m3: number, cd = SHARP_CD): number {
  requireOpening(area_m2, density_kg_m3, cd);
  requireWithin("drop_Pa", drop_Pa, 0, MOST_Pa);
  return cd * area_m2 * Math.sqrt((2 * drop_Pa) / density_kg_m3);
}

/**
 * Pressure that an airflow needs to pass an opening, a grille for instance.
 * @param area_m2 free area [m2], above 0, to 100
 * @param flow_m3_s airflow [m3/s], 0..50
 * @param density_kg_m3 of the air that flows, above 0
 * @param cd discharge coefficient [-], 0.1..1
 * @returns pressure difference [Pa]
 * @source the same equation solved for dp
 */
export function orificeDrop_Pa(area_m2: number, flow_m3_s: number, density_kg_m3: number, cd = SHARP_CD): number {
  requireOpening(area_m2, density_kg_m3, cd);
  requireWithin("area_m2", area_m2, Number.MIN_VALUE, LARGEST_m2);
  requireWithin("flow_m3_s", flow_m3_s, 0, MOST_m3_s);
  return (density_kg_m3 / 2) * (flow_m3_s / (cd * area_m2)) ** 2;
}

/**
 * Free area that an airflow needs at a pressure difference that is allowed.
 * @param flow_m3_s airflow [m3/s], 0..50
 * @param drop_Pa pressure difference [Pa], above 0, to 10000
 * @param density_kg_m3 of the air that flows, above 0
 * @param cd discharge coefficient [-], 0.1..1
 * @returns free area [m2]
 * @source the same equation solved for the area
 */
export function areaForFlow_m2(flow_m3_s: number, drop_Pa: number, density_kg_m3: number, cd = SHARP_CD): number {
  requireOpening(0, density_kg_m3, cd);
  requireWithin("flow_m3_s", flow_m3_s, 0, MOST_m3_s);
  requireWithin("drop_Pa", drop_Pa, Number.MIN_VALUE, MOST_Pa);
  return flow_m3_s / (cd * Math.sqrt((2 * drop_Pa) / density_kg_m3));
}

/**
 * Free area of a grille or louvre from its face.
 * @param face_m2 face area [m2], 0..100
 * @param kind metal, wood or a bare opening
 * @returns free area [m2]
 * @source FREE_SHARES
 */
export function freeArea_m2(face_m2: number, kind: GrilleKind): number {
  requireWithin("face_m2", face_m2, 0, LARGEST_m2);
  return face_m2 * FREE_SHARE[kind];
}

/**
 * Face of the grille or louvre that has a free area.
 * @param free_m2 free area [m2], 0..100
 * @param kind metal, wood or a bare opening
 * @returns face area [m2]
 * @source FREE_SHARES
 */
export function faceArea_m2(free_m2: number, kind: GrilleKind): number {
  requireWithin("free_m2", free_m2, 0, LARGEST_m2);
  return free_m2 / FREE_SHARE[kind];
}

/**
 * Gap under a door.
 * @param doorWidth_m [m], 0.3..5
 * @param gap_m between door and floor [m], 0..0.3
 * @returns area [m2]
 * @source width times gap
 * @limits carpet closes it; leaks around the door add up to twice as much again (field readings)
 */
export function undercutArea_m2(doorWidth_m: number, gap_m: number): number {
  requireWithin("doorWidth_m", doorWidth_m, 0.3, 5);
  requireWithin("gap_m", gap_m, 0, 0.3);
  return doorWidth_m * gap_m;
}

/**
 * One opening that lets through as much as several in a row.
 * @param areas_m2 free areas that the same air passes one after the other [m2], each above 0
 * @returns area [m2]
 * @source losses add: 1 / A^2 = sum of 1 / Ai^2
 */
export function areasInRow_m2(areas_m2: readonly number[]): number {
  let sum = 0;
  for (const area_m2 of areas_m2) {
    requireWithin("area_m2", area_m2, Number.MIN_VALUE, LARGEST_m2);
    sum += area_m2 ** -2;
  }
  return sum ** -0.5;
}

function requireOpening(area_m2: number, density_kg_m3: number, cd: number): void {
  requireWithin("area_m2", area_m2, 0, LARGEST_m2);
  requireWithin("density_kg_m3", density_kg_m3, 0.1, 5);
  requireWithin("cd", cd, 0.1, 1);
}
