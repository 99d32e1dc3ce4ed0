import { housePressure_Pa, leakageFromChanges_m3_s } from "../physics/air/house-pressure.ts";
import { addedAir_m3_s, makeUpHeat_W } from "../physics/air/make-up-air.ts";
import {
  combinedLoss_dB,
  FIELD_ALLOWANCE_dB,
  levelAtDistance_dBA,
  levelBehind_dBA,
  PARTITION_LOSS_dB,
  powerLevel_dBA,
} from "../physics/air/sound.ts";
import { ROOM_PRESSURE_kPa } from "../physics/room/room-spec.ts";
import { areasOf, type RoomCase } from "./room-case.ts";
import type { RoomDay, StillRoom } from "./room-day.ts";
import { DOOR_HEIGHT_m, DOOR_WIDTH_m } from "./room-door.ts";
import { SHELLS } from "./room-shell-table.ts";
import type { HeatBill } from "./room-verdict.ts";

/** A house of middling size and tightness, where nobody measured it; common practice. */
export const USUAL_HOUSE = { volume_m3: 400, changes50_per_h: 7, naturalChanges_per_h: 0.35 } as const;
/** Sound of a unit whose sheet is silent: the middle of 45 to 55 dBA. */
export const USUAL_SOUND_dBA = 50;
/** Bare hard surfaces take up so much of the sound that meets them; common practice, 0.05 to 0.1. */
const BARE_ABSORPTION = 0.06;
/** A furnished hall or living room beside the heater [m2]; common practice. */
const HALL_ABSORPTION_m2 = 20;
const HOUR_s = 3600;
const J_PER_kWh = 3.6e6;

/** Air that leaves the house and is not brought back by a duct while the unit runs, above zero where it is blown out. */
export function netExhaust_m3_s({ set, where }: RoomCase, airflow_m3_s: number): number {
  const { choice, end } = set.ducts;
  if (end !== "outdoors" || !SHELLS[where].mayOpen) return 0;
  if (choice === "exhaust") return airflow_m3_s;
  return choice === "intake" ? -airflow_m3_s : 0;
}

/** How far the ducts move the pressure of a usual house [Pa]; below zero where they exhaust. */
export function houseMove_Pa(net_m3_s: number): number {
  const { volume_m3, changes50_per_h } = USUAL_HOUSE;
  const leakage = leakageFromChanges_m3_s(changes50_per_h, volume_m3);
  return -Math.sign(net_m3_s) * housePressure_Pa(Math.abs(net_m3_s), leakage);
}

/** Heat a day that heating of the house makes up on the winter day, and its part for outdoor air that ducts bring in. */
export interface HeatingPenalty {
  readonly total_kWh: number;
  readonly makeUp_kWh: number;
  readonly taken_kWh: number;
}

/**
 * What the unit costs the heating system on a winter day: heat that comes into the room from heated rooms and its own
 * heater beyond what comes without the unit, and heat for outdoor air that ducts bring into the house.
 * @source difference of two closed books of the same room; make-up air by `addedAir_m3_s` and `makeUpHeat_W`
 * @limits dry heat; the tank's own warmth is set against it, because it helps to heat the room
 */
export function heatingPenalty(known: RoomCase, day: RoomDay, still: StillRoom): HeatingPenalty {
  const { isAdjoiningHeated } = SHELLS[known.where];
  const heated = ({ from_J, heater_J }: RoomDay["ledger"]) =>
    heater_J + from_J.house + (isAdjoiningHeated ? from_J.adjoining : 0);
  const more_kWh = (heated(day.ledger) / day.days - heated(still.ledger)) / J_PER_kWh;
  const { makeUp_kWh, taken_kWh } = heatBill(known, day);
  return { total_kWh: more_kWh + makeUp_kWh, makeUp_kWh, taken_kWh };
}

/** Heat for outdoor air that unbalanced ducts bring into a usual house, and heat taken from the air, each a day. */
export function heatBill(known: RoomCase, day: RoomDay): HeatBill {
  const net_m3_s = netExhaust_m3_s(known, day.air.airflow_m3_s);
  const natural_m3_s = (USUAL_HOUSE.naturalChanges_per_h * USUAL_HOUSE.volume_m3) / HOUR_s;
  const added_m3_s = addedAir_m3_s(Math.abs(net_m3_s), natural_m3_s);
  const { house_C, outdoor_C } = known.weather.winter;
  const makeUp_W = makeUpHeat_W(added_m3_s, house_C, outdoor_C, ROOM_PRESSURE_kPa);
  const makeUp_kWh = (makeUp_W * day.summary.heatPumpRan_s) / day.days / J_PER_kWh;
  return { makeUp_kWh, taken_kWh: day.summary.takenFromAir_kWh / day.days };
}

/**
 * Sound outside the heater's room, some way off, door closed.
 * @param distance_m from the door or wall [m], 1..50
 * @returns level [dBA]
 * @source sound power from the sheet at 1 m, echo of a bare room, loss of wall and door, 6 dB for each doubling from 1 m
 * @limits within about 5 dB; a bedroom door closed takes another 15 dB; hum through floors is not in it
 */
export function soundOutside_dBA({ model, set, ceiling_m }: RoomCase, distance_m: number): number {
  const { walls_m2, floor_m2 } = areasOf(set.volume_m3, ceiling_m);
  const power_dBA = powerLevel_dBA(model?.sound_dBA ?? USUAL_SOUND_dBA, 1, 1);
  const atWall_dBA = power_dBA + 10 * Math.log10(4 / (BARE_ABSORPTION * (walls_m2 + 2 * floor_m2)));
  const door_m2 = DOOR_WIDTH_m * DOOR_HEIGHT_m;
  const leaf = { sealed: "solid_door", plain: "hollow_door", louvred: "louvred_door", open: "none" } as const;
  const wall_m2 = Math.max(door_m2, walls_m2 / 4);
  const parts = [
    { area_m2: wall_m2, loss_dB: PARTITION_LOSS_dB.stud_wall },
    { area_m2: door_m2, loss_dB: PARTITION_LOSS_dB[leaf[set.door.door]] },
  ];
  const loss_dB = Math.max(0, combinedLoss_dB(parts) - FIELD_ALLOWANCE_dB);
  const outside_dBA = levelBehind_dBA(Math.max(0, atWall_dBA), loss_dB, wall_m2 + door_m2, HALL_ABSORPTION_m2);
  return Math.max(0, levelAtDistance_dBA(Math.max(0, outside_dBA), 1, distance_m));
}
