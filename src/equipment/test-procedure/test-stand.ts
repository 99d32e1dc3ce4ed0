import { advanceTo, settleDebt } from "../../physics/tank/advance.ts";
import { byte, cell } from "../../physics/tank/cell.ts";
import { HEAT_PUMP, LOWER, UPPER } from "../../physics/tank/control.ts";
import { drawHotWater, makeOpenDraws, type OpenDraws } from "../../physics/tank/draw.ts";
import { type Engine, startEngine } from "../../physics/tank/engine.ts";
import { setPolicy } from "../../physics/tank/plan-course.ts";
import { meetRoom, type RoomAir, steadyAir } from "../../physics/tank/room-air.ts";
import { meanTemperature_C } from "../../physics/tank/tank-state.ts";
import { POLICIES, type Policy } from "../policies.ts";
import type { WaterHeater } from "../water-heater.ts";
import { RATING } from "./rating-conditions.ts";

/** A unit on the test stand, worked by hand: draw, wait, read. */
export interface TestStand {
  readonly unit: WaterHeater;
  readonly engine: Engine;
  readonly open: OpenDraws;
}

/** What one stretch of drawing gave. */
export interface Drawn {
  readonly volume_L: number;
  readonly mean_C: number;
}

/** The mode a unit is rated in: the one it is shipped in, which is the first of these that it offers. */
export function ratingPolicy(unit: WaterHeater): Policy {
  const shipped = (["heat_pump_first", "heat_pump_only", "elements_only"] as const).find((id) =>
    unit.controls.policies.includes(id),
  );
  if (shipped === undefined) throw new RangeError(`${unit.id} offers no mode that it could be rated in`);
  return POLICIES[shipped];
}

/** What a unit meets on the stand. */
export interface StandConditions {
  readonly setpoint_C: number;
  readonly supply_V: number;
  readonly inlet_C: number;
  readonly air: RoomAir;
}

function ratingConditions(unit: WaterHeater): StandConditions {
  return {
    setpoint_C: RATING.outlet_C,
    supply_V: ratingVolts(unit),
    inlet_C: RATING.supply_C,
    air: steadyAir(RATING.ambient_C, RATING.relativeHumidity),
  };
}

/** Sets a unit up, at rating conditions where no others are given, with a full tank that has just cut out. */
export function mountUnit(unit: WaterHeater, policy: Policy, conditions = ratingConditions(unit)): TestStand {
  const engine = startEngine(unit, {
    policy,
    setpoint_C: conditions.setpoint_C,
    supply_V: conditions.supply_V,
    inlet_C: conditions.inlet_C,
    roomAir: conditions.air,
    start_C: conditions.setpoint_C,
  });
  meetRoom(engine);
  const open = makeOpenDraws(1);
  open.target_C[0] = Number.POSITIVE_INFINITY;
  return { unit, engine, open };
}

/** A unit is rated at its own voltage. */
function ratingVolts(unit: WaterHeater): number {
  return unit.elements[0]?.rated_V ?? RATING.supply_V;
}

/** Draws at a flow for a time and lets the controls work meanwhile. */
export function drawFor(stand: TestStand, flow_L_s: number, seconds: number): Drawn {
  const { engine, open } = stand;
  const end_s = engine.now_s + seconds;
  open.flow_L_s[0] = flow_L_s;
  open.volume_L[0] = 0;
  open.warmth_L_C[0] = 0;
  open.count = 1;
  while (engine.now_s < end_s) {
    const until_s = Math.min(end_s, engine.now_s + READING_s);
    drawHotWater(engine, open, until_s - engine.now_s);
    advanceTo(engine, until_s);
  }
  open.count = 0;
  const volume_L = cell(open.volume_L, 0);
  return { volume_L, mean_C: cell(open.warmth_L_C, 0) / volume_L };
}

/** Draws of a rating test are stepped this finely [s]. */
const READING_s = 5;

/** Waits; controls work, water cools. */
export function waitUntil(stand: TestStand, until_s: number): void {
  advanceTo(stand.engine, until_s);
}

/** Cuts the power. */
export function switchOff(stand: TestStand): void {
  setPolicy(stand.engine, POLICIES.switched_off, RATING.outlet_C);
}

/** True while any source runs. */
export function isHeating({ engine }: TestStand): boolean {
  const { on } = engine.switches;
  return byte(on, HEAT_PUMP) === 1 || byte(on, UPPER) === 1 || byte(on, LOWER) === 1;
}

/** True while the upper element runs. */
export function isUpperHeating({ engine }: TestStand): boolean {
  return byte(engine.switches.on, UPPER) === 1;
}

/** Electricity used so far [J]. */
export function electricity_J({ engine }: TestStand): number {
  const { ledger } = engine;
  return ledger.compressor_J + ledger.fan_J + ledger.elementHeat_J + ledger.standby_J;
}

/** Mean tank temperature [C]. */
export function meanTank_C({ engine }: TestStand): number {
  settleDebt(engine);
  return meanTemperature_C(engine.tank);
}
