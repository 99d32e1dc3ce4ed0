import type { Books } from "../books/books.ts";
import type { ElectricityPlan, Incentive, PriceBook } from "../books/prices.ts";
import type { Source } from "../declaration/source.ts";
import type { ReportProgress } from "../declaration/topic.ts";
import { POLICIES } from "../equipment/policies.ts";
import { toBase } from "../units/convert.ts";
import { burnOldGas_kWh, simulateOldElectric } from "./old-heater.ts";
import { type Bill, priceGas, priceHours } from "./price-year.ts";
import { modesOf, type RunMode, type UnitCase } from "./unit-case.ts";
import { type SampledYear, sampleYear, simulateYear } from "./year.ts";

export const OLD_HEATERS = ["electric_tank", "gas_tank", "none"] as const;
type OldKind = (typeof OLD_HEATERS)[number];

/** Rated efficiency of old tanks whose label nobody read; common practice of their age. */
export const USUAL_OLD_EFFICIENCY = { electric_tank: 0.92, gas_tank: 0.58 } as const;
/** No storage tank of its kind was rated outside these. */
export const OLD_EFFICIENCY_LIMITS = { electric_tank: [0.7, 0.97], gas_tank: [0.45, 0.9] } as const;
export const USUAL_OLD_TANK_L = toBase(50, "gal");
export const OLD_HABIT: Source = { basis: "common_practice", document: "Usual rating of tanks of that age" };

/** What was told beside the unit and where it stands. */
export interface CostFacts {
  readonly people: number;
  readonly bathrooms: number;
  readonly wanted_C: number;
  readonly replaces: OldKind;
  readonly old_efficiency: number | undefined;
  readonly old_tank_L: number | undefined;
  readonly price_usd: number | undefined;
  readonly instead_usd: number;
  readonly incentives: boolean;
}

/** A year of one heater. */
interface HeaterYear {
  readonly energy_kWh: number;
  readonly bill: Bill;
  readonly emitted_kg: number;
  /** Days on which somebody ran cold; a gas tank's are not simulated. */
  readonly coldDays: number | undefined;
}
export interface ModeYear extends HeaterYear {
  readonly mode: RunMode;
  readonly coldDays: number;
  readonly cop: number;
  readonly heatFromAir_kWh: number;
  readonly hourly_kWh: Float64Array;
}
export interface OldYear extends HeaterYear {
  readonly kind: Exclude<OldKind, "none">;
  readonly efficiency: number;
}
/** What is paid for the change, and when it has come back. */
interface Purchase {
  readonly installed_usd: number;
  readonly incentives: readonly { readonly name: string; readonly amount_usd: number }[];
  readonly net_usd: number;
  readonly saving_usd: number;
  /** Nothing where the saving never pays it back. */
  readonly payback_years: number | undefined;
}
export interface CostPlan {
  readonly modes: readonly ModeYear[];
  readonly chosen: ModeYear;
  readonly old: OldYear | undefined;
  readonly purchase: Purchase | undefined;
  /** The chosen mode under every plan of the company. */
  readonly byPlan: readonly { readonly plan: ElectricityPlan; readonly total_usd: number }[];
}

/**
 * A unit's year in each of its modes beside the year of the heater that comes out.
 * @param known unit, place, setpoint, price plan
 * @param facts household, old heater, prices
 * @returns energy, cost, emissions and cold days of each, and what the change pays
 * @source `simulateYear`, `priceHours`; a gas tank by `burnOldGas_kWh`; payback = price / saving a year
 * @limits plain payback: no interest, price rises, upkeep or lifetimes
 */
export function planCost(known: UnitCase, facts: CostFacts, books: Books, report: ReportProgress): CostPlan {
  const modes = modesOf(known.model.heater.controls.policies);
  const total = modes.length + 2;
  const year = sampleYear({ people: facts.people, bathrooms: facts.bathrooms }, facts.wanted_C);
  report(1, total);
  const runs = modes.map((mode, index) => {
    const run = runMode(known, mode, year, books.prices);
    report(index + 2, total);
    return run;
  });
  const chosen = runs.find(({ mode }) => mode === known.mode);
  if (chosen === undefined) throw new Error(`${known.model.id} was not run in ${known.mode}`);
  const old = runOld(known, facts, year, books.prices);
  report(total, total);
  const byPlan = books.prices.electricity.map((plan) => ({
    plan,
    total_usd: priceHours(chosen.hourly_kWh, plan).total_usd,
  }));
  return { modes: runs, chosen, old, purchase: old && buy(known, facts, old, chosen, books.prices), byPlan };
}

function runMode(known: UnitCase, mode: RunMode, year: SampledYear, prices: PriceBook): ModeYear {
  const { model, place, supply_V, setpoint_C } = known;
  const plan = [{ from_s: 0, policy: POLICIES[mode], setpoint_C }] as const;
  const { summary, coldDays, hourly_kWh } = simulateYear({ unit: model.heater, place, supply_V, plan }, year);
  return {
    mode,
    energy_kWh: summary.electricity_kWh,
    bill: priceHours(hourly_kWh, known.plan),
    emitted_kg: summary.electricity_kWh * prices.emissions.electricity_kg_kWh,
    coldDays,
    cop: summary.systemCop,
    heatFromAir_kWh: summary.takenFromAir_kWh,
    hourly_kWh,
  };
}

function runOld(known: UnitCase, facts: CostFacts, year: SampledYear, prices: PriceBook): OldYear | undefined {
  const { replaces: kind, old_tank_L: tank_L = USUAL_OLD_TANK_L } = facts;
  if (kind === "none") return undefined;
  const { setpoint_C, place } = known;
  const efficiency = facts.old_efficiency ?? USUAL_OLD_EFFICIENCY[kind];
  if (kind === "gas_tank") {
    const daily_kWh = burnOldGas_kWh({ efficiency, setpoint_C, place }, year);
    const energy_kWh = daily_kWh.reduce((sum, gas_kWh) => sum + gas_kWh, 0);
    const bill = priceGas(daily_kWh, prices.gas_usd_kWh);
    return {
      kind,
      efficiency,
      energy_kWh,
      bill,
      emitted_kg: energy_kWh * prices.emissions.gas_kg_kWh,
      coldDays: undefined,
    };
  }
  const { summary, coldDays, hourly_kWh } = simulateOldElectric({ efficiency, setpoint_C, place, tank_L }, year);
  const energy_kWh = summary.electricity_kWh;
  const emitted_kg = energy_kWh * prices.emissions.electricity_kg_kWh;
  return { kind, efficiency, energy_kWh, bill: priceHours(hourly_kWh, known.plan), emitted_kg, coldDays };
}

function buy(known: UnitCase, facts: CostFacts, old: OldYear, chosen: ModeYear, prices: PriceBook): Purchase {
  const { unit_usd, installation_usd } = known.model.price;
  const installed_usd = facts.price_usd ?? unit_usd + installation_usd;
  const isCounted = facts.incentives && known.model.heater.heatPump !== undefined;
  const incentives = isCounted ? prices.incentives.map((one) => grantOf(one, installed_usd)) : [];
  const granted_usd = incentives.reduce((sum, { amount_usd }) => sum + amount_usd, 0);
  const net_usd = installed_usd - granted_usd - facts.instead_usd;
  const saving_usd = old.bill.total_usd - chosen.bill.total_usd;
  const payback_years = saving_usd > 0 ? Math.max(0, net_usd) / saving_usd : undefined;
  return { installed_usd, incentives, net_usd, saving_usd, payback_years };
}

/** A fixed sum, or a share of the full installed price up to its limit. */
function grantOf(incentive: Incentive, installed_usd: number): { readonly name: string; readonly amount_usd: number } {
  const { name, amount_usd = 0, share = 0, limit_usd = Number.POSITIVE_INFINITY } = incentive;
  return { name, amount_usd: Math.min(installed_usd, amount_usd + Math.min(limit_usd, share * installed_usd)) };
}
