import { q } from "../../declaration/answer.ts";
import { numberResult } from "../../declaration/number-result.ts";
import type { Source } from "../../declaration/source.ts";
import type { WaterHeater } from "../../equipment/water-heater.ts";
import { powerAtVoltage_W } from "../../physics/heating-element.ts";
import { STUDY_WATER } from "../../physics/tank/tank-model.ts";
import type { ExpectedFacts, ExpectedReading } from "./known.ts";
import { type MachineNow, machineNow, workAt } from "./machine-now.ts";

const DAY_BALANCE: Source = {
  basis: "computed",
  document: "Energy balance of a day",
  section: "hot water and loss of the tank, by the heat pump alone where there is one",
};
const WATER_J_L_K = STUDY_WATER.density_kg_L * STUDY_WATER.specificHeat_J_kg_K;
const DAY_s = 86_400;
const J_PER_kWh = 3.6e6;
/** The map bends so little over this many equal parts of the rise that more change nothing in four digits. */
const PARTS = 50;

/** Electricity that this household's hot water should take in a day. */
export const energyPerDay: ExpectedReading = {
  quantity: "energy",
  compute: (known) => {
    const day = dayOf(known);
    if (day === undefined) return undefined;
    const { unit, heat_J, cop, standby_J } = day;
    const inputs = {
      Q_day: q("energy", heat_J / J_PER_kWh),
      COP: q("ratio", cop),
      E_standby: q("energy", standby_J / J_PER_kWh),
    };
    const energy_kWh = (heat_J / cop + standby_J) / J_PER_kWh;
    return numberResult(
      "energy_per_day",
      q("energy", energy_kWh),
      "E = Q_day / COP + E_standby",
      inputs,
      DAY_BALANCE,
      unit.source,
    );
  },
};

/** Time that its heat source should run in a day. */
export const runTimePerDay: ExpectedReading = {
  quantity: "time",
  compute: (known) => {
    const day = dayOf(known);
    if (day === undefined) return undefined;
    const { unit, heat_J, heat_W } = day;
    const inputs = { Q_day: q("energy", heat_J / J_PER_kWh), Q_source: q("heat_rate", heat_W) };
    const run_s = Math.min(DAY_s, heat_J / heat_W);
    return numberResult("run_time_per_day", q("time", run_s), "t = Q_day / Q_source", inputs, DAY_BALANCE, unit.source);
  },
};

interface Day {
  readonly unit: WaterHeater;
  readonly heat_J: number;
  readonly standby_J: number;
  /** Heat over electricity, fan included, and mean heat while it runs. */
  readonly cop: number;
  readonly heat_W: number;
}

function dayOf(known: ExpectedFacts): Day | undefined {
  const { unit, cold_C, setpoint_C, hotUse_L, air_C } = known;
  if (unit === undefined || cold_C === undefined || setpoint_C === undefined) return undefined;
  if (hotUse_L === undefined || air_C === undefined || setpoint_C <= cold_C) return undefined;
  const machine = machineNow(known);
  if (unit.heatPump !== undefined && machine === undefined) return undefined;
  const source = machine ? byHeatPump(machine, cold_C, setpoint_C) : byElement(known, unit);
  if (source === undefined) return undefined;
  const lost_J = unit.tank.heatLoss_W_K * Math.max(0, setpoint_C - air_C) * DAY_s;
  return {
    unit,
    heat_J: hotUse_L * WATER_J_L_K * (setpoint_C - cold_C) + lost_J,
    standby_J: unit.controls.standby_W * DAY_s,
    ...source,
  };
}

/** Mean of the rise from cold to the setpoint, or to the sheet's water limit where that is lower. */
function byHeatPump(machine: MachineNow, cold_C: number, setpoint_C: number): Pick<Day, "cop" | "heat_W"> {
  const warmest_C = Math.min(setpoint_C, machine.sheet.waterLimit.highest_C);
  let [seconds, electric] = [0, 0];
  for (let part = 0; part < PARTS; part += 1) {
    const { heat_W, compressor_W } = workAt(machine, cold_C + ((warmest_C - cold_C) * (part + 0.5)) / PARTS);
    seconds += 1 / heat_W / PARTS;
    electric += (compressor_W + machine.sheet.fan_W) / heat_W / PARTS;
  }
  return { cop: 1 / electric, heat_W: 1 / seconds };
}

function byElement({ plate_V }: ExpectedFacts, { elements }: WaterHeater): Pick<Day, "cop" | "heat_W"> | undefined {
  const [element] = elements;
  if (element === undefined) return undefined;
  return { cop: 1, heat_W: powerAtVoltage_W(element.rated_W, element.rated_V, plate_V ?? element.rated_V) };
}
