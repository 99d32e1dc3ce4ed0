import type { Source } from "../declaration/source.ts";
import { toBase } from "../units/convert.ts";
import { requireWithin } from "./require-within.ts";

/** Heat and losses of a storage heater over a day; the quantities were read, the form is from memory. */
export const STORAGE_BALANCE: Source = {
  basis: "from_memory",
  document: "Lutz and others, energy equation of storage water heaters, as on a national laboratory's method page",
  edition: "1996",
  section: "daily energy use, equations 5 and 6",
};

/** A storage heater as the daily energy equation sees it. */
export interface StorageHeater {
  /** Share of the input that reaches the water while the heater runs. */
  readonly recovery: number;
  readonly input_W: number;
  /** Heat that the tank loses for each kelvin above the air, all the time [W/K]. */
  readonly loss_W_K: number;
}
/** Conditions and water of the day that a heater was rated in. */
export interface RatedDay {
  readonly tank_C: number;
  readonly air_C: number;
  /** Heat that the day's hot water carried [kWh]. */
  readonly delivered_kWh: number;
}

const HOURS_A_DAY = 24;
const W_A_kW = 1000;
/** Burner of a usual 40 to 50 gal gas tank: common practice. */
const GAS_INPUT_W = toBase(40_000, "Btu_h");
/** Burner and flue: common practice for a plain flue, from memory for a condensing tank. */
const PLAIN_RECOVERY = 0.78;
const CONDENSING_RECOVERY = 0.95;
/** No tank with a plain flue is rated higher, from memory. */
const CONDENSING_ABOVE = 0.72;

/**
 * The heat that a tank loses while it stands, from its rated efficiency.
 * @param efficiency rated efficiency: heat delivered over energy used in the rated day, below `recovery`
 * @param recovery share of the input that reaches the water, 0.5..1
 * @param input_W input [W], 500..100,000
 * @param day the rated day
 * @returns loss coefficient [W/K]
 * @source UA = Q (1/E - 1/R) / ((T_tank - T_air) (24 h - Q / (R P))): the daily balance solved for UA
 * @limits puts all that the rating lost beyond the recovery efficiency down to standing loss
 */
export function lossFromRating_W_K(efficiency: number, recovery: number, input_W: number, day: RatedDay): number {
  requireWithin("recovery efficiency", recovery, 0.5, 1);
  requireWithin("rated efficiency", efficiency, 0.2, recovery);
  requireWithin("input [W]", input_W, 500, 100_000);
  const delivered_Wh = day.delivered_kWh * W_A_kW;
  const idle_h = HOURS_A_DAY - delivered_Wh / (recovery * input_W);
  return (delivered_Wh * (1 / efficiency - 1 / recovery)) / ((day.tank_C - day.air_C) * idle_h);
}

/**
 * A gas tank from its rated efficiency alone.
 * @param efficiency rated efficiency (uniform energy factor), 0.4..0.9
 * @param day the rated day
 * @source recovery 0.78 for a plain flue, common practice; 0.95 for condensing tanks, from memory
 */
export function gasTank(efficiency: number, day: RatedDay): StorageHeater {
  const recovery = efficiency > CONDENSING_ABOVE ? CONDENSING_RECOVERY : PLAIN_RECOVERY;
  const loss_W_K = lossFromRating_W_K(efficiency, recovery, GAS_INPUT_W, day);
  return { recovery, input_W: GAS_INPUT_W, loss_W_K };
}

/**
 * Energy that a storage heater takes in a day.
 * @param heater recovery efficiency, input and loss
 * @param delivered_kWh heat that the day's hot water carries away [kWh], 0..500
 * @param tank_C temperature of the tank [C]
 * @param air_C air around it [C]
 * @returns energy used [kWh]
 * @source E = Q/R (1 - UA dT / P) + 24 h UA dT: what the tank loses while it runs is in R already; Lutz and others
 * @limits a tank of one temperature; agrees with the simulation of a plain electric tank within a few percent (tests)
 */
export function storageDay_kWh(heater: StorageHeater, delivered_kWh: number, tank_C: number, air_C: number): number {
  requireWithin("heat delivered [kWh]", delivered_kWh, 0, 500);
  const loss_W = heater.loss_W_K * (tank_C - air_C);
  const running_kWh = (delivered_kWh / heater.recovery) * (1 - loss_W / heater.input_W);
  return running_kWh + (HOURS_A_DAY * loss_W) / W_A_kW;
}
