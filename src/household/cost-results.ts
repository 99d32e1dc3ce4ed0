import type { Books } from "../books/books.ts";
import { type NumberResult, q } from "../declaration/answer.ts";
import type { Chart, ChartSeries } from "../declaration/chart.ts";
import { numberResult } from "../declaration/number-result.ts";
import type { Source } from "../declaration/source.ts";
import { STORAGE_BALANCE } from "../physics/gas-tank.ts";
import { DAYS_A_YEAR, MONTHS_A_YEAR } from "./calendar.ts";
import type { CostPlan, OldYear } from "./cost-plan.ts";
import { MAINS_TEMPERATURE } from "./mains-temperature.ts";
import type { Bill } from "./price-year.ts";
import { bookSource, type UnitCase } from "./unit-case.ts";
import { SHOWERS_A_PERSON } from "./use-habits-table.ts";
import { SIMULATED_YEAR, YEAR_SEED } from "./year.ts";

type CostId =
  | "energy_per_year"
  | "cost_per_year"
  | "emissions"
  | "cop_year"
  | "cold_days"
  | "saving_per_year"
  | "emissions_saved"
  | "net_price"
  | "payback";
type Numbers = readonly NumberResult<CostId>[];

/** What the unit's own year comes to. */
export function yearResults(known: UnitCase, { chosen }: CostPlan, people: number, books: Books): Numbers {
  const E = q("energy", chosen.energy_kWh);
  const n = q("count", DAYS_A_YEAR);
  const sample = { n, people: q("count", people), seed: q("count", YEAR_SEED) };
  const t_set = q("temperature", known.setpoint_C);
  const { prices } = books;
  const perkWh = q("emission", prices.emissions.electricity_kg_kWh);
  const factors = { ...bookSource(books.company, "emission factors"), edition: prices.emissions.setOn };
  const sources = [SIMULATED_YEAR, SHOWERS_A_PERSON.source, MAINS_TEMPERATURE, known.model.heater.source] as const;
  return [
    numberResult("energy_per_year", E, "E = Σ_h P_h · 1 h", { ...sample, t_set }, ...sources),
    numberResult(
      "cost_per_year",
      q("money", chosen.bill.total_usd),
      "C = Σ_h E_h · p_h",
      { E },
      priceSource(known, books),
      SIMULATED_YEAR,
    ),
    numberResult("emissions", q("emission", chosen.emitted_kg), "m = E · f", { E, "f (1 kWh)": perkWh }, factors),
    numberResult("cop_year", q("ratio", chosen.cop), "COP = Q_delivered / E", { E }, SIMULATED_YEAR),
    numberResult("cold_days", q("count", chosen.coldDays), "n_cold = days with ≥ 1 L under t_want", sample, ...sources),
  ];
}

/** What the change saves and when it has paid for itself; nothing where nothing comes out. */
export function savingResults(known: UnitCase, { chosen, old, purchase }: CostPlan, books: Books): Numbers {
  if (old === undefined || purchase === undefined) return [];
  const C_old = q("money", old.bill.total_usd);
  const C = q("money", chosen.bill.total_usd);
  const saving = q("money", purchase.saving_usd);
  const net = q("money", purchase.net_usd);
  const granted = purchase.incentives.reduce((sum, { amount_usd }) => sum + amount_usd, 0);
  const by = [SIMULATED_YEAR, ...oldSources(old), priceSource(known, books)] as const;
  const bought = { P: q("money", purchase.installed_usd), G: q("money", granted) };
  const P_other = q("money", purchase.installed_usd - granted - purchase.net_usd);
  const results: NumberResult<CostId>[] = [
    numberResult("saving_per_year", saving, "S = C_old − C", { C_old, C }, ...by),
    numberResult(
      "emissions_saved",
      q("emission", old.emitted_kg - chosen.emitted_kg),
      "m_old − m",
      { m_old: q("emission", old.emitted_kg), m: q("emission", chosen.emitted_kg) },
      { ...bookSource(books.company, "emission factors"), edition: books.prices.emissions.setOn },
    ),
    numberResult("net_price", net, "N = P − G − P_other", { ...bought, P_other }, priceSource(known, books)),
  ];
  if (purchase.payback_years === undefined) return results;
  const years = q("ratio", purchase.payback_years);
  return [...results, numberResult("payback", years, "t = N / S", { N: net, S: saving }, PLAIN_PAYBACK)];
}

const PLAIN_PAYBACK: Source = { basis: "computed", document: "Plain payback, without interest or price rises" };

function priceSource({ plan }: UnitCase, { company, prices }: Books): Source {
  return { ...bookSource(company, plan.name), edition: prices.setOn };
}

function oldSources({ kind }: OldYear): readonly Source[] {
  return kind === "gas_tank" ? [STORAGE_BALANCE] : [];
}

/** Cost by month, of the unit and of the heater that comes out. */
export function costChart({ chosen, old }: CostPlan): Chart {
  const series = [monthBars("new_heater", chosen.bill), ...(old ? [monthBars("old_heater", old.bill)] : [])];
  return { id: "cost_by_month", xKind: "month", series };
}

function monthBars(id: string, { months_usd }: Bill): ChartSeries {
  const months = Array.from({ length: MONTHS_A_YEAR }, (_, index) => index + 1);
  return { id, mark: "bar", kind: "money", x: months, y: months_usd };
}
