import { q } from "../../declaration/answer.ts";
import { numberResult } from "../../declaration/number-result.ts";
import type { Source } from "../../declaration/source.ts";
import { POLICIES } from "../../equipment/policies.ts";
import { recoverByElements } from "../../equipment/recovery.ts";
import { cell } from "../../physics/tank/cell.ts";
import { listDraws } from "../../physics/tank/draw-list.ts";
import { steadyAir } from "../../physics/tank/room-air.ts";
import { simulate } from "../../physics/tank/simulate.ts";
import { STUDY_WATER } from "../../physics/tank/tank-model.ts";
import type { ExpectedFacts, ExpectedReading } from "./known.ts";
import { machineNow, workAt } from "./machine-now.ts";

const FIRST_LAW: Source = { basis: "computed", document: "First law, tank taken as evenly warm, loss left out" };
const SIMULATED: Source = { basis: "computed", document: "Simulated tank, every source off" };
const WATER_J_L_K = STUDY_WATER.density_kg_L * STUDY_WATER.specificHeat_J_kg_K;
const HOUR_s = 3600;
/** The draw trial ends when the outlet has fallen by so much: 25 °F. */
const TRIAL_FALL_K = 25 / 1.8;
/** The tank is drawn in so many equal portions; the answer is right to half of one. */
const PORTIONS = 200;
const MORE_THAN_ALL = 1.2;
/** A faucet and a wide open tub [L/s]; other flows are no trial. */
const DRAW_L_s = [0.02, 0.7] as const;
const ROOM_C = 20;
const ROOM_HUMIDITY = 0.5;
const ANY_SUPPLY_V = 240;

/** How much the whole tank warms in an hour on the source that runs, on the supply that its plate asks for. */
export const tankRiseInAnHour: ExpectedReading = {
  quantity: "temperature_difference",
  compute: (known) => {
    const heat_W = heatRunning_W(known);
    if (heat_W === undefined || known.unit === undefined) return undefined;
    const { volume_L } = known.unit.tank;
    const inputs = { Q: q("heat_rate", heat_W), V: q("volume", volume_L) };
    const rise_K = (heat_W * HOUR_s) / (volume_L * WATER_J_L_K);
    const equation = "ΔT = Q · 1 h / (rho · c · V)";
    return numberResult(
      "tank_rise_in_an_hour",
      q("temperature_difference", rise_K),
      equation,
      inputs,
      FIRST_LAW,
      known.unit.source,
    );
  },
};

/** Litres that a hot tank gives at the measured flow before its outlet has fallen by 25 °F. */
export const drawToCold: ExpectedReading = {
  quantity: "volume",
  compute: (known) => {
    const { unit, cold_C, setpoint_C, draw_L_s } = known;
    if (unit === undefined || cold_C === undefined || setpoint_C === undefined || draw_L_s === undefined)
      return undefined;
    const [least, most] = DRAW_L_s;
    if (draw_L_s < least || draw_L_s > most || setpoint_C - TRIAL_FALL_K <= cold_C) return undefined;
    const inputs = {
      V: q("volume", unit.tank.volume_L),
      t_set: q("temperature", setpoint_C),
      t_cold: q("temperature", cold_C),
      flow: q("water_flow", draw_L_s),
      fall: q("temperature_difference", TRIAL_FALL_K),
    };
    const volume_L = drawnHot_L({ ...known, unit, cold_C, setpoint_C, draw_L_s });
    return numberResult(
      "draw_to_cold",
      q("volume", volume_L),
      "V(t_outlet ≥ t_set − fall)",
      inputs,
      SIMULATED,
      unit.source,
    );
  },
};

/** How much warmer the water comes back from the outdoor unit at the measured flow of the loop. */
export const loopRise: ExpectedReading = {
  quantity: "temperature_difference",
  compute: (known) => {
    const machine = machineNow(known);
    const { unit, water_C, loop_L_s } = known;
    if (machine === undefined || unit === undefined || water_C === undefined || !loop_L_s) return undefined;
    const { heat_W } = workAt(machine, water_C);
    const inputs = { Q: q("heat_rate", heat_W), flow: q("water_flow", loop_L_s) };
    const rise_K = heat_W / (WATER_J_L_K * loop_L_s);
    const equation = "ΔT = Q / (rho · c · flow)";
    return numberResult("loop_rise", q("temperature_difference", rise_K), equation, inputs, FIRST_LAW, unit.source);
  },
};

function heatRunning_W(known: ExpectedFacts): number | undefined {
  const { unit, running, plate_V, cold_C, setpoint_C, water_C } = known;
  if (unit === undefined) return undefined;
  if (running === "elements") {
    const isKnown = plate_V !== undefined && cold_C !== undefined && setpoint_C !== undefined && setpoint_C > cold_C;
    return isKnown ? recoverByElements(unit, plate_V, cold_C, setpoint_C)?.heat_W : undefined;
  }
  const machine = machineNow(known);
  if (running !== "heat_pump" || machine === undefined || water_C === undefined) return undefined;
  return workAt(machine, water_C).heat_W;
}

type Trial = Required<Pick<ExpectedFacts, "unit" | "cold_C" | "setpoint_C" | "draw_L_s">> & ExpectedFacts;

function drawnHot_L({ unit, cold_C, setpoint_C, draw_L_s, air_C, airHumidity }: Trial): number {
  const portion_L = (unit.tank.volume_L * MORE_THAN_ALL) / PORTIONS;
  const duration_s = portion_L / draw_L_s;
  const wanted_C = setpoint_C - TRIAL_FALL_K;
  const draws = listDraws(
    Array.from({ length: PORTIONS }, (_, place) => ({
      start_s: place * duration_s,
      duration_s,
      volume_L: portion_L,
      wanted_C,
      isMixed: false,
    })),
  );
  const site = {
    supply_V: ANY_SUPPLY_V,
    inlet_C: cold_C,
    air: steadyAir(air_C ?? ROOM_C, airHumidity ?? ROOM_HUMIDITY),
  };
  const plan = [{ from_s: 0, policy: POLICIES.switched_off, setpoint_C }] as const;
  const { draws: drawn } = simulate(unit, site, { duration_s: PORTIONS * duration_s + 1, draws, plan });
  const first = Array.from({ length: PORTIONS }, (_, place) => place).find(
    (place) => cell(drawn.lowest_C, place) < wanted_C,
  );
  return ((first ?? PORTIONS) + 0.5) * portion_L;
}
