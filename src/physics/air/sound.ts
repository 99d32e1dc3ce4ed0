import type { Source } from "../../declaration/source.ts";
import { requireWithin } from "../require-within.ts";

export const SPREADING: Source = {
  basis: "published",
  document: "Engineering reference page on sound propagation",
  section: "Lp = Lw + 10 log(Q / 4πr² + 4 / R), free field and room",
};
export const HEATER_SOUND: Source = {
  basis: "published",
  document: "ENERGY STAR guide and program requirements for water heaters",
  section: "45 to 55 dBA; limit 55 dBA in version 5.0",
};

/** What stands between heater and bedroom, and how many decibels it takes [dB]. */
export const PARTITION_LOSS_dB = {
  none: 0,
  louvred_door: 10,
  hollow_door: 20,
  solid_door: 27,
  stud_wall: 33,
  insulated_wall: 36,
  block_wall: 45,
} as const;
export type Partition = keyof typeof PARTITION_LOSS_dB;
export const PARTITIONS: readonly Partition[] = [
  "none",
  "louvred_door",
  "hollow_door",
  "solid_door",
  "stud_wall",
  "insulated_wall",
  "block_wall",
];
export const PARTITION_LOSSES: Source = {
  basis: "common_practice",
  document: "Sound classes of doors and walls as trade pages print them",
  section:
    "hollow door 20 to 25, solid door 27 to 30, wallboard on studs 33; louvred door, filled wall, block from memory",
};
/**
 * A sound class is measured with more high tones than a compressor has, and installed doors leak: fewer decibels are
 * counted on [dB]. Common practice.
 */
export const FIELD_ALLOWANCE_dB = 5;

const MOST_dBA = 150;
const NEAREST_m = 0.1;
const FARTHEST_m = 1000;

/**
 * Level at another distance in the open, or where a room hardly echoes.
 * @param level_dBA measured level [dBA], 0..150
 * @param measured_m distance it was measured at [m], 0.1..1000
 * @param distance_m distance asked for [m], 0.1..1000
 * @returns level [dBA], 6 dB less for each doubling
 * @source 20 log of the ratio of distances
 * @limits free field: between hard walls it falls much less, see `levelInRoom_dBA`
 */
export function levelAtDistance_dBA(level_dBA: number, measured_m: number, distance_m: number): number {
  requireLevel(level_dBA);
  requireWithin("measured_m", measured_m, NEAREST_m, FARTHEST_m);
  requireWithin("distance_m", distance_m, NEAREST_m, FARTHEST_m);
  return level_dBA - 20 * Math.log10(distance_m / measured_m);
}

/**
 * Sound power from a level measured over a floor.
 * @param level_dBA measured level [dBA], 0..150
 * @param measured_m distance [m], 0.1..1000
 * @param surfaces reflecting planes beside the source: 1 floor, 2 floor and wall, 3 corner
 * @returns sound power level [dBA]
 * @source Lw = Lp - 10 log(Q / 4 pi r^2), Q = 2, 4 or 8
 */
export function powerLevel_dBA(level_dBA: number, measured_m: number, surfaces: 1 | 2 | 3): number {
  requireLevel(level_dBA);
  return level_dBA - 10 * Math.log10(directShare(measured_m, surfaces));
}

/**
 * Level in the room in which the source stands.
 * @param power_dBA sound power level [dBA], 0..150
 * @param distance_m distance from it [m], 0.1..1000
 * @param surfaces reflecting planes beside it: 1 floor, 2 floor and wall, 3 corner
 * @param absorption_m2 absorption area of the room [m2], 0.1..10000: surface times mean absorption, bare rooms 0.05 to 0.1
 * @returns level [dBA], direct and reflected together
 * @source Lp = Lw + 10 log(Q / 4 pi r^2 + 4 / A); the room constant is taken as the absorption area, which is cautious
 */
export function levelInRoom_dBA(
  power_dBA: number,
  distance_m: number,
  surfaces: 1 | 2 | 3,
  absorption_m2: number,
): number {
  requireLevel(power_dBA);
  requireWithin("absorption_m2", absorption_m2, 0.1, 10_000);
  return power_dBA + 10 * Math.log10(directShare(distance_m, surfaces) + 4 / absorption_m2);
}

/**
 * Level on the far side of a wall or door.
 * @param source_dBA level in the room of the source, near the wall [dBA], 0..150
 * @param loss_dB what the wall or door takes [dB], 0..80
 * @param partition_m2 its area [m2], 0.1..1000
 * @param absorption_m2 absorption area of the receiving room [m2], 0.1..10000
 * @returns level in the receiving room [dBA], never above the source
 * @source L2 = L1 - R + 10 log(S / A), definition of the sound reduction index (ISO 16283, from memory)
 * @limits diffuse rooms; sound also goes round through floors, ducts and gaps
 */
export function levelBehind_dBA(
  source_dBA: number,
  loss_dB: number,
  partition_m2: number,
  absorption_m2: number,
): number {
  requireLevel(source_dBA);
  requireWithin("loss_dB", loss_dB, 0, 80);
  requireWithin("partition_m2", partition_m2, 0.1, 1000);
  requireWithin("absorption_m2", absorption_m2, 0.1, 10_000);
  return Math.min(source_dBA, source_dBA - loss_dB + 10 * Math.log10(partition_m2 / absorption_m2));
}

/**
 * Loss of a wall with a door or a gap in it.
 * @param parts area [m2], above 0, and loss [dB], 0..80, of each
 * @returns loss of the whole [dB]
 * @source R = 10 log(sum S / sum(S 10^(-Ri/10)))
 */
export function combinedLoss_dB(parts: readonly { readonly area_m2: number; readonly loss_dB: number }[]): number {
  let [area_m2, open_m2] = [0, 0];
  for (const part of parts) {
    requireWithin("area_m2", part.area_m2, Number.MIN_VALUE, 1000);
    requireWithin("loss_dB", part.loss_dB, 0, 80);
    area_m2 += part.area_m2;
    open_m2 += part.area_m2 * 10 ** (-part.loss_dB / 10);
  }
  requireWithin("parts", parts.length, 1, 100);
  return 10 * Math.log10(area_m2 / open_m2);
}

/**
 * Level of several sounds at once.
 * @param levels_dBA levels at the same place [dBA], each -50..150, at least one
 * @returns level [dBA]
 * @source 10 log of the sum of 10^(L/10)
 */
export function sumLevels_dBA(levels_dBA: readonly number[]): number {
  requireWithin("levels", levels_dBA.length, 1, 1000);
  let sum = 0;
  for (const level_dBA of levels_dBA) {
    requireWithin("level_dBA", level_dBA, -50, MOST_dBA);
    sum += 10 ** (level_dBA / 10);
  }
  return 10 * Math.log10(sum);
}

/** The way from a heater to a room where somebody sleeps. */
export interface SoundPath {
  /** Level as the sheet gives it [dBA], and the distance it was measured at [m]. */
  readonly level_dBA: number;
  readonly measured_m: number;
  /** Absorption areas of the heater's room and of the bedroom [m2]. */
  readonly heaterRoom_m2: number;
  readonly bedroom_m2: number;
  /** Wall and door between the two [m2, dB]. */
  readonly between: readonly { readonly area_m2: number; readonly loss_dB: number }[];
  /** What further doors and floors on the way take [dB]. */
  readonly further_dB: number;
}

/**
 * Level in a bedroom from a heater in another room.
 * @param path as above; level [dBA], 0..150; distances [m]; areas [m2]; losses [dB]
 * @returns level [dBA]; what else sounds there comes on top by `sumLevels_dBA`
 * @source sound power from the sheet over a floor, echoing field 4 / A of the heater's room, `combinedLoss_dB` less
 *   FIELD_ALLOWANCE_dB, `levelBehind_dBA`
 * @limits an estimate within about 5 dB; hum through floor and pipes is not in it
 */
export function levelInBedroom_dBA(path: SoundPath): number {
  requireWithin("heaterRoom_m2", path.heaterRoom_m2, 0.1, 10_000);
  requireWithin("further_dB", path.further_dB, 0, 100);
  const power_dBA = powerLevel_dBA(path.level_dBA, path.measured_m, 1);
  const atWall_dBA = Math.max(0, power_dBA + 10 * Math.log10(4 / path.heaterRoom_m2));
  const loss_dB = Math.max(0, combinedLoss_dB(path.between) - FIELD_ALLOWANCE_dB);
  const wall_m2 = path.between.reduce((sum, part) => sum + part.area_m2, 0);
  return Math.max(0, levelBehind_dBA(atWall_dBA, loss_dB, wall_m2, path.bedroom_m2) - path.further_dB);
}

/** Q / (4 pi r^2) [1/m2], Q doubling with each plane. */
function directShare(distance_m: number, surfaces: 1 | 2 | 3): number {
  requireWithin("distance_m", distance_m, NEAREST_m, FARTHEST_m);
  return 2 ** surfaces / (4 * Math.PI * distance_m ** 2);
}

function requireLevel(level_dBA: number): void {
  requireWithin("level_dBA", level_dBA, 0, MOST_dBA);
}
