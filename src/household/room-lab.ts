import { POLICIES } from "../equipment/policies.ts";
import { drawPattern, type UsageBin } from "../equipment/test-procedure/draw-patterns.ts";
import { RATING } from "../equipment/test-procedure/rating-conditions.ts";
import type { WaterHeater } from "../equipment/water-heater.ts";
import { openRoom } from "../physics/room/room-zone.ts";
import { type DrawRequest, listDraws } from "../physics/tank/draw-list.ts";
import { simulate } from "../physics/tank/simulate.ts";
import { areasOf } from "./room-case.ts";
import { MOISTURE_STORE, SURFACE_W_m2_K } from "./room-shell-table.ts";
import { ratioAt } from "./room-weather.ts";

/** A closed room built inside a laboratory, on its rating day. */
export interface LabRoom {
  readonly volume_m3: number;
  readonly bin: Extract<UsageBin, "medium" | "high">;
  /** Conductance of its walls, floor and ceiling, which the summary in print does not tell [W/(m2 K)]. */
  readonly walls_W_m2_K: number;
}

/**
 * COP that the laboratory lost from 700 to 450 ft³ [share]: 3.21 to 2.96 at 55 gal a day, 2.63 to 2.26 at 84. Published:
 * study of small rooms for a regional efficiency alliance (Larson Energy Research), as summarised in print.
 */
export const LAB_DROP = { medium: 1 - 2.96 / 3.21, high: 1 - 2.26 / 2.63 } as const;
/** The two walls between which the laboratory's lie: wallboard on studs, and insulated panels. */
export const LAB_WALLS_W_m2_K = { light: 2.5, insulated: 0.35 } as const;

const DAY_s = 86_400;
const DAYS = 2;
const CEILING_m = 2.44;
const LAB_LEAK_per_h = 0.1;
const WALLS_J_m2_K = 12_000;
const HOUR_s = 3600;

/**
 * COP of a unit in a laboratory's closed room: heat delivered over all electricity, on the federal draw pattern.
 * @param unit with a heat pump, 240 V or its first supply
 * @param lab room, pattern and walls
 * @returns COP of the day
 * @source the coupled simulation at 67.5 °F and 50 % outside the room, water 58 to 125 °F as in the rating test
 * @limits two days from a warm start, not run until they repeat; walls, tightness and the unit of the laboratory are not
 *   known; no pooling of cold air, no frost, no defrosting
 */
export function labCop(unit: WaterHeater, { volume_m3, bin, walls_W_m2_K }: LabRoom): number {
  const { walls_m2, floor_m2 } = areasOf(volume_m3, CEILING_m);
  const surfaces_m2 = walls_m2 + 2 * floor_m2;
  const ratio = ratioAt(RATING.ambient_C, RATING.relativeHumidity);
  const room = openRoom({
    every_s: 120,
    volume_m3,
    surfaces_W_K: surfaces_m2 * SURFACE_W_m2_K,
    quickMass_J_K: surfaces_m2 * WALLS_J_m2_K,
    moistureStore: MOISTURE_STORE,
    neighbours: [
      {
        id: "adjoining",
        walls_W_K: surfaces_m2 * walls_W_m2_K,
        leak_m3_s: (LAB_LEAK_per_h * volume_m3) / HOUR_s,
        at_C: () => RATING.ambient_C,
        humidityRatio: () => ratio,
      },
    ],
    gains_W: 0,
    start: { air_C: RATING.ambient_C, humidityRatio: ratio },
  });
  const draws = listDraws(Array.from({ length: DAYS }, (_, day) => patternOn(bin, day)).flat());
  const policy = unit.controls.policies.includes("heat_pump_first")
    ? POLICIES.heat_pump_first
    : POLICIES.heat_pump_only;
  const plan = [{ from_s: 0, policy, setpoint_C: RATING.outlet_C }] as const;
  const site = { supply_V: unit.elements[0]?.rated_V ?? 120, inlet_C: RATING.supply_C, air: room };
  return simulate(unit, site, { duration_s: DAYS * DAY_s, draws, plan }).summary.systemCop;
}

function patternOn(bin: UsageBin, day: number): readonly DrawRequest[] {
  return drawPattern(bin).map(({ start_s, volume_L, flow_L_s }) => ({
    start_s: start_s + day * DAY_s,
    duration_s: volume_L / flow_L_s,
    volume_L,
    wanted_C: 0,
    isMixed: false,
  }));
}

/** COP lost from one volume to a smaller one, everything else the same [share]. */
export function labDrop(unit: WaterHeater, large: LabRoom, small_m3: number): number {
  return 1 - labCop(unit, { ...large, volume_m3: small_m3 }) / labCop(unit, large);
}
