import type { Source } from "../declaration/source.ts";

/** Where a heater stands, as far as it decides what the room touches. */
export const ROOM_KINDS = ["closet", "utility_room", "basement", "garage"] as const;
export type RoomKind = (typeof ROOM_KINDS)[number];

export const USUAL_SHELL: Source = {
  basis: "common_practice",
  document: "Usual walls of such a room",
  section:
    "wallboard on studs 2.5, insulated wall 0.5, floor between storeys 2.0, wall in the ground 1.0, slab 0.5 W/m²K",
};

/** One part of the shell: its share of walls or of the floor, and how it conducts from the room's surface on [W/(m2 K)]. */
interface Part {
  readonly share: number;
  readonly u_W_m2_K: number;
}
type Toward = "adjoining" | "house" | "outdoors" | "ground";
interface Shell {
  readonly walls: Partial<Readonly<Record<Toward, Part>>>;
  readonly ceiling: readonly [Toward, number];
  readonly floor: readonly [Toward, number];
  /** Air that comes in by itself through cracks other than those of the door [changes an hour]. */
  readonly leaks_per_h: Partial<Readonly<Record<Toward, number>>>;
  /** Heat that surfaces hold within hours, by their area [J/(m2 K)]: wallboard 9, wood 12, concrete 60 thousand. */
  readonly quick_J_m2_K: number;
  /** True: the space behind the door is heated, so what comes from it must be made up there. */
  readonly isAdjoiningHeated: boolean;
  /** True: grilles and louvres to that space are of use and allowed. */
  readonly mayOpen: boolean;
}

const STUDS = 2.5;
const INSULATED = 0.5;
const STOREYS = 2;
const IN_GROUND = 1;
const SLAB = 0.5;

/**
 * Usual exposure of each kind of room; common practice throughout, changed by nobody yet.
 * The door of a garage leads to the house, and no air path may (the caution on garages says so).
 */
export const SHELLS: Readonly<Record<RoomKind, Shell>> = {
  closet: {
    walls: { adjoining: { share: 1, u_W_m2_K: STUDS } },
    ceiling: ["adjoining", STOREYS],
    floor: ["adjoining", STOREYS],
    leaks_per_h: { adjoining: 0.3 },
    quick_J_m2_K: 12_000,
    isAdjoiningHeated: true,
    mayOpen: true,
  },
  utility_room: {
    walls: { adjoining: { share: 0.75, u_W_m2_K: STUDS }, outdoors: { share: 0.25, u_W_m2_K: INSULATED } },
    ceiling: ["adjoining", STOREYS],
    floor: ["ground", SLAB],
    leaks_per_h: { adjoining: 0.2, outdoors: 0.15 },
    quick_J_m2_K: 20_000,
    isAdjoiningHeated: true,
    mayOpen: true,
  },
  basement: {
    walls: { adjoining: { share: 0.5, u_W_m2_K: STUDS }, ground: { share: 0.5, u_W_m2_K: IN_GROUND } },
    ceiling: ["house", STOREYS],
    floor: ["ground", SLAB],
    leaks_per_h: { adjoining: 0.2, outdoors: 0.1 },
    quick_J_m2_K: 30_000,
    isAdjoiningHeated: false,
    mayOpen: true,
  },
  garage: {
    walls: { house: { share: 0.25, u_W_m2_K: INSULATED }, outdoors: { share: 0.75, u_W_m2_K: 0.8 } },
    ceiling: ["outdoors", 0.3],
    floor: ["ground", SLAB],
    leaks_per_h: { outdoors: 1 },
    quick_J_m2_K: 30_000,
    isAdjoiningHeated: false,
    mayOpen: false,
  },
};

/** Heat that stored things hold, by the volume of the room [J/(m3 K)]; common practice, from none to three times as much. */
export const THINGS_J_m3_K = 3000;
/** Between air and surfaces, radiation included [W/(m2 K)]: still air inside a building, R-0.68, from memory. */
export const SURFACE_W_m2_K = 8.3;
/** Moisture held by air and surfaces together over that of the air: 15 in a house simulation protocol, from memory. */
export const MOISTURE_STORE = 15;
