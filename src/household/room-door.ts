import { flowThroughOpenings, type Opening } from "../physics/air/opening-network.ts";
import { FREE_SHARE, undercutArea_m2 } from "../physics/air/openings.ts";
import { ATMOSPHERE_kPa } from "../physics/water.ts";
import { toBase } from "../units/convert.ts";

/** The door between the heater and the space beside it. */
export const DOOR_KINDS = ["sealed", "plain", "louvred", "open"] as const;
export type DoorKind = (typeof DOOR_KINDS)[number];

/** What air can pass through: the door with the gap under it, and grilles low and high. */
export interface RoomDoor {
  readonly door: DoorKind;
  readonly undercut_m: number;
  /** Free areas [m2]. */
  readonly lowGrille_m2: number;
  readonly highGrille_m2: number;
}

const inches = (value: number) => toBase(value, "in");
/** A common interior door: 30 by 80 in. */
export const DOOR_WIDTH_m = inches(30);
export const DOOR_HEIGHT_m = inches(80);
/** Cracks at top and sides, each 1/8 in: field readings pass about three times what the usual undercut alone does. */
const CRACK_m = inches(1 / 8);
/** A door with gaskets and a sweep, about as if every crack were a hundredth of an inch. */
const GASKET_SHARE = 0.08;
const GRILLE_HEIGHT_m = inches(8);
/** Middle of a low and a high grille over the floor. */
const LOW_m = inches(8);
const HIGH_m = inches(76);
/** Exchange grows with the root of the temperature difference; it is worked out once at this one [K]. */
const WORKED_OUT_AT_K = 5;

/** Free area of a full louvred wooden door [m2]. */
export const LOUVRES_m2 = DOOR_WIDTH_m * DOOR_HEIGHT_m * FREE_SHARE.wood;

/** The openings of a door and its grilles, from the floor up. */
export function openingsOf({ door, undercut_m, lowGrille_m2, highGrille_m2 }: RoomDoor): readonly Opening[] {
  const grilles = [
    { area_m2: lowGrille_m2, from_m: LOW_m - GRILLE_HEIGHT_m / 2, to_m: LOW_m + GRILLE_HEIGHT_m / 2 },
    { area_m2: highGrille_m2, from_m: HIGH_m - GRILLE_HEIGHT_m / 2, to_m: HIGH_m + GRILLE_HEIGHT_m / 2 },
  ];
  return [...leafOf(door, undercut_m), ...grilles].filter(({ area_m2 }) => area_m2 > 0);
}

function leafOf(door: DoorKind, undercut_m: number): readonly Opening[] {
  const whole = { from_m: 0, to_m: DOOR_HEIGHT_m };
  if (door === "open") return [{ ...whole, area_m2: DOOR_WIDTH_m * DOOR_HEIGHT_m }];
  const share = door === "sealed" ? GASKET_SHARE : 1;
  const gap_m2 = undercutArea_m2(DOOR_WIDTH_m, door === "sealed" ? 0 : undercut_m);
  const cracks: readonly Opening[] = [
    { area_m2: gap_m2, from_m: 0, to_m: 0 },
    { ...whole, area_m2: 2 * DOOR_HEIGHT_m * CRACK_m * share },
    { area_m2: DOOR_WIDTH_m * CRACK_m * share, from_m: DOOR_HEIGHT_m, to_m: DOOR_HEIGHT_m },
  ];
  return door === "louvred" ? [...cracks, { ...whole, area_m2: LOUVRES_m2 }] : cracks;
}

/** Free area of everything [m2]. */
export function freeAreaOf(door: RoomDoor): number {
  return openingsOf(door).reduce((sum, { area_m2 }) => sum + area_m2, 0);
}

/**
 * Exchange through the openings at any two temperatures.
 * @param door what air can pass
 * @param there_C about how warm it is on the other side [C]
 * @returns flow each way [m3/s] by the temperatures of both sides
 * @source `flowThroughOpenings`, worked out at 5 K and scaled by the root of the difference, which the orifice law gives
 * @limits no wind, no fan of the house; within 5 % of the network itself from 1 to 20 K
 */
export function exchangeThrough(door: RoomDoor, there_C: number): (room_C: number, other_C: number) => number {
  const spaces = { room_C: there_C - WORKED_OUT_AT_K, other_C: there_C, pressure_kPa: ATMOSPHERE_kPa };
  const { in_kg_s } = flowThroughOpenings(openingsOf(door), spaces);
  const atOneKelvin_m3_s = in_kg_s / AIR_kg_m3 / Math.sqrt(WORKED_OUT_AT_K);
  return (room_C, other_C) => atOneKelvin_m3_s * Math.sqrt(Math.abs(room_C - other_C));
}

/** Air of a room near 18 C. */
const AIR_kg_m3 = 1.2;
