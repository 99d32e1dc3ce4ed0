import { type NumberResult, q } from "../declaration/answer.ts";
import { numberResult } from "../declaration/number-result.ts";
import type { Source } from "../declaration/source.ts";
import type { Recovery } from "../equipment/recovery.ts";
import { FIRST_HOUR } from "../equipment/test-procedure/rating-conditions.ts";
import { MIXING_BALANCE } from "../physics/mixing.ts";
import { BUILDING_AMERICA_USE } from "./daily-use.ts";
import { peakHourDemand_L, WORKSHEET_EDITIONS, type WorksheetEdition } from "./peak-hour-worksheet.ts";
import { SCORE_INTERVAL } from "./share-interval.ts";
import { SEED, type SizeCase, VALVE_C } from "./size-case.ts";
import type { SizeOutcome } from "./size-outcome.ts";
import { SHOWERS_A_PERSON } from "./use-habits-table.ts";

type SizeId =
  | "peak_hour_demand"
  | "first_hour_delivery"
  | "usable_volume_mixed"
  | "recovery_rate_heat_pump"
  | "recovery_rate_elements"
  | "lowest_outlet_temperature"
  | "shortfall_volume"
  | "chance_of_running_cold"
  | "sampling_error"
  | "recovery_time"
  | "energy_per_day"
  | "cop_day"
  | "storage_gain";
type Numbers = readonly NumberResult<SizeId>[];

const TANK_SIMULATION: Source = {
  basis: "computed",
  document: "Stratified tank, 12 layers, plug flow, minute by minute; energy books closed to 1e-9",
};
const FIRST_LAW: Source = { basis: "computed", document: "First law, water at constant density and heat capacity" };

/** What the busiest hour asks for, and what this tank gives in an hour and in one go. */
export function deliveryResults(known: SizeCase, outcome: SizeOutcome, edition: WorksheetEdition): Numbers {
  const t_want = q("temperature", known.run.wanted_C);
  const counts = Object.entries(known.uses).map(([use, count]) => [`n_${use}`, q("count", count)] as const);
  return [
    numberResult(
      "peak_hour_demand",
      q("volume", peakHourDemand_L(known.uses, edition)),
      "V = Σ n_i · V_i",
      Object.fromEntries(counts),
      WORKSHEET_EDITIONS[edition].source,
    ),
    numberResult(
      "first_hour_delivery",
      q("volume", outcome.firstHour_L),
      "V = Σ V_draw, t_out ≥ t_max − Δt",
      {
        ...temperaturesOf(known),
        q_draw: q("water_flow", FIRST_HOUR.flow_L_s),
        Δt: q("temperature_difference", FIRST_HOUR.outletFall_K),
      },
      TANK_SIMULATION,
      FIRST_HOUR.source,
    ),
    numberResult(
      "usable_volume_mixed",
      q("volume", outcome.usable_L),
      "V = Σ V_draw, t_out ≥ t_want, P = 0",
      { ...temperaturesOf(known), t_want, V_tank: q("volume", known.unit.tank.volume_L) },
      TANK_SIMULATION,
      MIXING_BALANCE,
    ),
    storageGain(known),
  ];
}

/** Mixed water more than from the same tank kept as hot as taps may get, which needs no mixing valve. */
function storageGain(known: SizeCase): NumberResult<SizeId> {
  const gain = (known.run.plan[0].setpoint_C - known.cold_C) / (VALVE_C - known.cold_C) - 1;
  const inputs = { ...temperaturesOf(known), t_tap: q("temperature", VALVE_C) };
  const equation = "(t_set − t_cold) / (t_tap − t_cold) − 1";
  return numberResult("storage_gain", q("share", gain), equation, inputs, MIXING_BALANCE);
}

/** How fast each source makes hot water, and how long all of it takes from cold. */
export function recoveryResults(known: SizeCase, { byHeatPump, byElements, recovery_s }: SizeOutcome): Numbers {
  const rate = (id: "recovery_rate_heat_pump" | "recovery_rate_elements", recovery: Recovery | undefined) =>
    recovery === undefined
      ? []
      : [
          numberResult(
            id,
            q("recovery", recovery.rate_L_s),
            "q = Q / (ρ · c · (t_set − t_cold))",
            { Q: q("power", recovery.heat_W), ...temperaturesOf(known), ...conditionsOf(known, id) },
            FIRST_LAW,
            known.unit.source,
          ),
        ];
  const time =
    recovery_s === undefined
      ? []
      : [
          numberResult(
            "recovery_time",
            q("time", recovery_s),
            "t(ΣP = 0), t_tank(0) = t_cold",
            { ...temperaturesOf(known), V_tank: q("volume", known.unit.tank.volume_L) },
            TANK_SIMULATION,
          ),
        ];
  return [...rate("recovery_rate_heat_pump", byHeatPump), ...rate("recovery_rate_elements", byElements), ...time];
}

function conditionsOf(known: SizeCase, id: SizeId) {
  if (id === "recovery_rate_elements") return { U: q("voltage", known.supply_V) };
  return { t_air: q("temperature", known.air_C), φ: q("share", known.humidity) };
}

/** What the sampled days came to. */
export function sampleResults(known: SizeCase, { risk, worstDay }: SizeOutcome): Numbers {
  const n = q("count", risk.days);
  const n_cold = q("count", risk.coldDays);
  const t_want = q("temperature", known.run.wanted_C);
  const sample = { n, seed: q("count", SEED), people: q("count", known.people) };
  const { electricity_kWh, delivered_kWh, systemCop } = risk.summary;
  const E = q("energy", electricity_kWh);
  const day = { day: q("count", risk.worstDay + 1) };
  const sources = [TANK_SIMULATION, SHOWERS_A_PERSON.source, BUILDING_AMERICA_USE] as const;
  const chance = numberResult(
    "chance_of_running_cold",
    q("share", risk.share),
    "p = n_cold / n",
    { n_cold, ...sample, t_want },
    ...sources,
  );
  const error = numberResult(
    "sampling_error",
    q("share", risk.error),
    "√(p′ (1 − p′) / n), p′ = (n_cold + 1) / (n + 2)",
    { n_cold, n, p_low: q("share", risk.low), p_high: q("share", risk.high) },
    SCORE_INTERVAL,
  );
  const shortfall = q("volume", risk.worstShortfall_L);
  return [
    chance,
    error,
    numberResult("shortfall_volume", shortfall, "max Σ V(t < t_want)", { ...sample, ...day, t_want }, ...sources),
    ...lowestOutlet(worstDay.lowestOutlet_C, day),
    numberResult("energy_per_day", q("energy", electricity_kWh / risk.days), "E / n", { E, n }, ...sources),
    numberResult(
      "cop_day",
      q("ratio", systemCop),
      "COP = E_out / E",
      { E_out: q("energy", delivered_kWh), E },
      TANK_SIMULATION,
      known.unit.source,
    ),
  ];
}

function lowestOutlet(lowest_C: number | undefined, day: { readonly day: ReturnType<typeof q> }): Numbers {
  if (lowest_C === undefined) return [];
  const lowest = q("temperature", lowest_C);
  return [numberResult("lowest_outlet_temperature", lowest, "min t_out, q_draw > 0", day, TANK_SIMULATION)];
}

function temperaturesOf(known: SizeCase) {
  return { t_set: q("temperature", known.run.plan[0].setpoint_C), t_cold: q("temperature", known.cold_C) };
}
