import { q } from "../../declaration/answer.ts";
import { numberResult } from "../../declaration/number-result.ts";
import type { Source } from "../../declaration/source.ts";
import { condensateVolume_L } from "../../physics/air/condensate-drain.ts";
import { condensatePerHeat_kg_J } from "../../physics/cooling-coil.ts";
import { enthalpy_kJ_kg, specificVolume_m3_kg } from "../../physics/moist-air.ts";
import type { ExpectedFacts, ExpectedReading } from "./known.ts";
import { type MachineNow, machineNow, workAt } from "./machine-now.ts";

/** Real power over volts times amperes of a small compressor on its run capacitor. */
const POWER_FACTOR = 0.92;
const POWER_FACTOR_FOUND: Source = {
  basis: "from_memory",
  document: "Single-phase compressors with run capacitor",
  section: "power factor 0.85 to 0.98",
};
const COIL: Source = {
  basis: "computed",
  document: "Bypass-factor method",
  section: "ASHRAE Handbook - Fundamentals, psychrometrics of cooling coils",
};
const HOUR_s = 3600;
/** Less than this in an hour is a coil that stays as good as dry: there is nothing to compare with [L]. */
const LEAST_CONDENSATE_L = 0.05;

/** Current of compressor, fan and controls at this air and water. */
export const heatPumpCurrent: ExpectedReading = {
  quantity: "current",
  compute: (known) => {
    const machine = machineNow(known);
    const supply_V = known.supply_V ?? known.plate_V;
    if (machine === undefined || known.unit === undefined || known.water_C === undefined || !supply_V) return undefined;
    const { compressor_W } = workAt(machine, known.water_C);
    const rest_W = machine.sheet.fan_W + known.unit.controls.standby_W;
    const inputs = {
      P_compressor: q("power", compressor_W),
      P_rest: q("power", rest_W),
      V: q("voltage", supply_V),
      pf: q("ratio", POWER_FACTOR),
    };
    const current_A = (compressor_W + rest_W) / (supply_V * POWER_FACTOR);
    const equation = "I = (P_compressor + P_rest) / (V · pf)";
    return numberResult(
      "heat_pump_current",
      q("current", current_A),
      equation,
      inputs,
      known.unit.source,
      POWER_FACTOR_FOUND,
    );
  },
};

/** How much the air cools across the coil, what condenses taken off. */
export const airSplit: ExpectedReading = {
  quantity: "temperature_difference",
  compute: (known) => {
    const coil = coilNow(known);
    if (coil === undefined || known.unit === undefined) return undefined;
    const { machine, cooling_W, airflow_m3_s, condensate_kg_s } = coil;
    const { dryBulb_C, humidityRatio, pressure_kPa } = machine.air;
    const air_kg_s = airflow_m3_s / specificVolume_m3_kg(dryBulb_C, humidityRatio, pressure_kPa);
    const leaving_kJ_kg = enthalpy_kJ_kg(dryBulb_C, humidityRatio) - cooling_W / 1000 / air_kg_s;
    const leavingRatio = humidityRatio - condensate_kg_s / air_kg_s;
    const split_K = dryBulb_C - dryBulbAt_C(leaving_kJ_kg, leavingRatio);
    const inputs = {
      Q_coil: q("heat_rate", cooling_W),
      airflow: q("airflow", airflow_m3_s),
      t_in: q("temperature", dryBulb_C),
      RH_in: q("share", known.airHumidity ?? 0),
      condensate: q("volume", condensateVolume_L(condensate_kg_s * HOUR_s)),
    };
    const equation = "t_in − t(h_in − Q_coil / m, w_in − condensate / m)";
    return numberResult("air_split", q("temperature_difference", split_K), equation, inputs, COIL, known.unit.source);
  },
};

/** Water that condenses in an hour of steady running; nothing is expected of a coil that stays dry. */
export const condensateInAnHour: ExpectedReading = {
  quantity: "volume",
  compute: (known) => {
    const coil = coilNow(known);
    if (coil === undefined || known.unit === undefined) return undefined;
    const inputs = {
      Q_coil: q("heat_rate", coil.cooling_W),
      airflow: q("airflow", coil.airflow_m3_s),
      t_in: q("temperature", coil.machine.air.dryBulb_C),
      RH_in: q("share", known.airHumidity ?? 0),
    };
    const volume_L = condensateVolume_L(coil.condensate_kg_s * HOUR_s);
    if (volume_L < LEAST_CONDENSATE_L) return undefined;
    const equation = "V = m_touched · (w_in − w_surface) · 1 h / rho";
    return numberResult("condensate_in_an_hour", q("volume", volume_L), equation, inputs, COIL, known.unit.source);
  },
};

interface CoilNow {
  readonly machine: MachineNow;
  readonly cooling_W: number;
  readonly airflow_m3_s: number;
  readonly condensate_kg_s: number;
}

/** Heat that the coil takes is heat into the water less the compressor's power. */
function coilNow(known: ExpectedFacts): CoilNow | undefined {
  const machine = machineNow(known);
  if (machine === undefined || known.water_C === undefined) return undefined;
  const { heat_W, compressor_W } = workAt(machine, known.water_C);
  const cooling_W = heat_W - compressor_W;
  const airflow_m3_s = known.airflow_m3_s ?? machine.sheet.airflow_m3_s;
  const perHeat = condensatePerHeat_kg_J(machine.air, cooling_W, airflow_m3_s, machine.sheet.coilBypass);
  return { machine, cooling_W, airflow_m3_s, condensate_kg_s: perHeat * cooling_W };
}

/** Enthalpy of moist air is a straight line over temperature. */
function dryBulbAt_C(enthalpy: number, humidityRatio: number): number {
  const atZero = enthalpy_kJ_kg(0, humidityRatio);
  return (enthalpy - atZero) / (enthalpy_kJ_kg(1, humidityRatio) - atZero);
}
