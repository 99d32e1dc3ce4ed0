import type { Books } from "../books/books.ts";
import { type NumberResult, q } from "../declaration/answer.ts";
import { numberResult } from "../declaration/number-result.ts";
import type { Source } from "../declaration/source.ts";
import { type AwayPlan, GROWTH_RANGE_C, GROWTH_SOURCE, type Hold } from "./away-plan.ts";
import { bookSource, type UnitCase } from "./unit-case.ts";

type AwayId =
  | "hold_temperature"
  | "reheat_lead"
  | "saving"
  | "energy_saved"
  | "energy_left_alone"
  | "energy_away"
  | "growth_time"
  | "coolest_tank";
type Numbers = readonly NumberResult<AwayId>[];

const AWAY_SIMULATION: Source = {
  basis: "computed",
  document: "Tank simulation without draws, from leaving to coming back",
};
const AWAY_MODE: Source = {
  basis: "common_practice",
  document: "Away modes of such units: safe from frost, cooler than germs like it",
};

/** The numbers of an absence, each with its equation, what went in, and its source. */
export function awayResults(known: UnitCase, plan: AwayPlan, absence_s: number, books: Books): Numbers {
  const { leftAlone, hold } = plan;
  const E_alone = q("energy", leftAlone.energy_kWh);
  const setting = {
    t_set: q("temperature", known.setpoint_C),
    t_air: q("temperature", plan.air_C),
    T: q("time", absence_s),
  };
  const sources = [AWAY_SIMULATION, known.model.heater.source] as const;
  const alone = numberResult("energy_left_alone", E_alone, "E = Σ_h P_h · 1 h", setting, ...sources);
  if (hold === undefined) return [alone];
  const E_hold = q("energy", hold.energy_kWh);
  const prices = { ...bookSource(books.company, known.plan.name), edition: books.prices.setOn };
  const C_alone = q("money", leftAlone.cost_usd);
  const C_hold = q("money", hold.cost_usd);
  return [
    ...temperatureOf(hold),
    numberResult(
      "reheat_lead",
      q("time", hold.lead_s),
      "t_lead = t(ΣP = 0), t_tank(0) = t_cooled",
      setting,
      ...sources,
    ),
    numberResult("saving", q("money", C_alone.value - C_hold.value), "C_alone − C_hold", { C_alone, C_hold }, prices),
    numberResult(
      "energy_saved",
      q("energy", E_alone.value - E_hold.value),
      "E_alone − E_hold",
      { E_alone, E_hold },
      AWAY_SIMULATION,
    ),
    alone,
    numberResult("energy_away", E_hold, "E = Σ_h P_h · 1 h, reheating with it", setting, ...sources),
    numberResult(
      "growth_time",
      q("time", hold.growth_s),
      "Σ 1 h, t_low ≤ t_mean ≤ t_high",
      { t_low: q("temperature", GROWTH_RANGE_C[0]), t_high: q("temperature", GROWTH_RANGE_C[1]) },
      GROWTH_SOURCE,
      AWAY_SIMULATION,
    ),
    numberResult("coolest_tank", q("temperature", hold.coolest_C), "min t_mean", setting, AWAY_SIMULATION),
  ];
}

function temperatureOf({ hold_C }: Hold): Numbers {
  if (hold_C === undefined) return [];
  const hold = q("temperature", hold_C);
  return [numberResult("hold_temperature", hold, "t_frost < t_hold < t_growth", { t_hold: hold }, AWAY_MODE)];
}
