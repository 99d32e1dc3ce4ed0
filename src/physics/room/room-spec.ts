import { ATMOSPHERE_kPa } from "../water.ts";

/** What a room can trade heat and air with. */
export const NEIGHBOURS = ["adjoining", "house", "outdoors", "ground"] as const;
export type NeighbourId = (typeof NEIGHBOURS)[number];

/** One neighbour of the room: how much of the wall it holds, what air trickles in, and how warm and damp it is. */
export interface Neighbour {
  readonly id: NeighbourId;
  /** Conductance of the walls, floor and ceiling toward it, from the room's surfaces outward [W/K]. */
  readonly walls_W_K: number;
  /** Air that always comes in through cracks [m3/s]. */
  readonly leak_m3_s: number;
  readonly at_C: (time_s: number) => number;
  readonly humidityRatio: (time_s: number) => number;
}

/** Openings to one neighbour, such as a door and its grilles; how much air they pass in and out at two temperatures. */
export interface RoomOpenings {
  readonly to: NeighbourId;
  readonly flow_m3_s: (room_C: number, there_C: number) => number;
}

/** Where the heat pump takes its air from and blows it to, while it runs. */
export interface RoomDucts {
  readonly intake: NeighbourId | "room";
  readonly exhaust: NeighbourId | "room";
  readonly airflow_m3_s: number;
  /** Whose air comes into the room for what an exhaust duct carries off. */
  readonly makeUp: NeighbourId;
}

/** One well-mixed room with the unit in it. */
export interface RoomSpec {
  /** How often the room and the tank tell each other what happened [s]. */
  readonly every_s: number;
  readonly volume_m3: number;
  /** Between the air and all surfaces [W/K]. */
  readonly surfaces_W_K: number;
  /** Heat that surfaces and things hold for each kelvin, as far as they follow within hours [J/K]. */
  readonly quickMass_J_K: number;
  /** Moisture that air and surfaces hold together, over what the air alone holds [-], 1 or more. */
  readonly moistureStore: number;
  readonly neighbours: readonly Neighbour[];
  readonly openings?: RoomOpenings;
  readonly ducts?: RoomDucts;
  /** Keeps the room from falling under its setting, as far as its power goes. */
  readonly heater?: { readonly setting_C: number; readonly most_W: number };
  /** Heat from everything else in the room [W]. */
  readonly gains_W: number;
  readonly start: { readonly air_C: number; readonly humidityRatio: number };
}

/** Specific heat of damp air, per kilogram of dry air [J/(kg K)]: 1006 + 1860 x 0.007. */
export const ROOM_AIR_J_kg_K = 1019;
/** Heat of evaporation at 0 C, on which the enthalpy of damp air is counted [J/kg]. */
export const VAPORISATION_J_kg = 2.501e6;
export const ROOM_PRESSURE_kPa = ATMOSPHERE_kPa;
