import type { Books } from "../books/books.ts";
import { q } from "../declaration/answer.ts";
import { commonFacts } from "../declaration/common-facts.ts";
import { numberResult } from "../declaration/number-result.ts";
import type { CatalogueModel } from "../equipment/catalogue.ts";
import { runFirstHour } from "../equipment/test-procedure/first-hour.ts";
import { FIRST_HOUR } from "../equipment/test-procedure/rating-conditions.ts";
import { mountUnit } from "../equipment/test-procedure/test-stand.ts";
import { peakHourDemand_L, WORKSHEET_EDITIONS } from "./peak-hour-worksheet.ts";
import { planSize } from "./size-case.ts";

/** What is known of a house before days are sampled. */
interface FirstLook {
  readonly unit: CatalogueModel;
  readonly people: number;
  readonly setpoint_C: number;
  readonly supply_V: number | undefined;
  readonly place: string | undefined;
}
/** The busiest hour: what the household asks for, and what the tank gives with the house's own water and air [L]. */
export interface BusiestHour {
  readonly demand_L: number;
  readonly delivery_L: number;
}

/** Bathrooms and days weigh on sampled days alone, which nobody runs here. */
const NOT_SAMPLED = { bathrooms: 1, days: 1 } as const;
const UNTOLD = {
  ...{ bedrooms: undefined, tank_L: undefined, element_W: undefined, heat_pump_W: undefined, cold_C: undefined },
  ...{ month: undefined, air_C: undefined, mode: undefined, mixing_valve: undefined, shower: undefined },
  ...{ shave: undefined, hand_dishes: undefined, dishwasher: undefined, clothes_washer: undefined },
};

/**
 * The quick look at a size that a visit ends with: the worksheet of the busiest hour against the federal first-hour draw,
 * run with the coldest water and air of the place. Which days run cold is for the sampled days of the size.
 * @source US DOE first-hour rating worksheet, present edition (from memory); 10 CFR 430 subpart B appendix E for the draw
 */
export function lookAtBusiestHour({ unit, people, setpoint_C, supply_V, place }: FirstLook, books: Books): BusiestHour {
  const known = planSize(
    {
      ...NOT_SAMPLED,
      ...UNTOLD,
      ...{ model: unit.id, people, setpoint_C, supply_V, place },
      wanted_C: commonFacts.wanted.default.value,
    },
    books,
  );
  const { run, cold_C: inlet_C } = known;
  const { policy, setpoint_C: kept_C } = run.plan[0];
  const stand = mountUnit(known.unit, policy, {
    ...{ setpoint_C: kept_C, supply_V: known.supply_V, inlet_C },
    air: run.site.air,
  });
  return {
    demand_L: peakHourDemand_L(known.uses, "present"),
    delivery_L: runFirstHour(known.unit, stand).firstHour_L,
  };
}

/** The busiest hour as numbers of an answer. */
export function busiestHourResults({ demand_L, delivery_L }: BusiestHour) {
  const { source } = WORKSHEET_EDITIONS.present;
  return [
    numberResult("peak_hour_demand", q("volume", demand_L), "V = Σ n_i · V_i", {}, source),
    numberResult(
      "first_hour_delivery",
      q("volume", delivery_L),
      "V = Σ V_draw, t_out ≥ t_max − Δt",
      { q_draw: q("water_flow", FIRST_HOUR.flow_L_s), Δt: q("temperature_difference", FIRST_HOUR.outletFall_K) },
      FIRST_HOUR.source,
    ),
  ] as const;
}
