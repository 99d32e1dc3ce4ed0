import type { Books } from "../books/books.ts";
import { type AnswerTable, type FindingOf, type FindingSpecs, type NumberResult, q } from "../declaration/answer.ts";
import { numberResult } from "../declaration/number-result.ts";
import type { Source } from "../declaration/source.ts";
import type { CatalogueModel } from "../equipment/catalogue.ts";
import type { Quantity } from "../units/quantity-kinds.ts";
import { DAYS_A_YEAR } from "./calendar.ts";
import { MAINS_TEMPERATURE } from "./mains-temperature.ts";
import { needsValve, type PickCase, SETTING_REASONS } from "./pick-case.ts";
import {
  type Breach,
  footprintLoad_kPa,
  fullMass_kg,
  heightNeeded_m,
  LIMIT_REASONS,
  LIMITS,
  type LimitId,
  SOUND_FALL,
  soundAt_dBA,
  toldOf,
} from "./pick-limits.ts";
import type { Chance, Finalist, ModelTrials } from "./pick-trials.ts";
import { SCORE_INTERVAL } from "./share-interval.ts";
import { SEED } from "./size-case.ts";
import { bookSource } from "./unit-case.ts";
import { SHOWERS_A_PERSON } from "./use-habits-table.ts";
import { SIMULATED_YEAR, YEAR_SEED } from "./year.ts";

type PickId =
  | "cost_per_year"
  | "energy_per_year"
  | "cop_year"
  | "chance_of_running_cold"
  | "sampling_error"
  | "height_needed"
  | "full_mass"
  | "footprint_load"
  | "sound_at_bedroom";
type Numbers = readonly NumberResult<PickId>[];

const COLD_WITH = { share: "share", setpoint: "temperature", limit: "share" } as const;
/** How the cells of the tables are worded. */
export const PICK_CELLS = {
  ...LIMIT_REASONS,
  ...SETTING_REASONS,
  cold_heat_pump_first: COLD_WITH,
  cold_heat_pump_only: COLD_WITH,
  cold_both_together: COLD_WITH,
  cold_elements_only: COLD_WITH,
  heat_pump_first: {},
  heat_pump_only: {},
  both_together: {},
  elements_only: {},
  remark_needs_valve: {},
  remark_has_valve: {},
  remark_close: { low: "share", high: "share" },
  remark_valve_and_close: { low: "share", high: "share" },
  remark_none: {},
  limit_of: { limit: "fact" },
} as const satisfies FindingSpecs;
type Cell = FindingOf<typeof PICK_CELLS>;

const DAYS_SIMULATED: Source = {
  basis: "computed",
  document: "Sampled days of one month through the tank simulation, one after the other",
};
const SHEET_AND_WATER: Source = { basis: "computed", document: "Empty mass and 1 kg of cold water a litre" };

/** What the best pick's own year and sample came to. */
export function runResults(known: PickCase, best: Finalist, model: CatalogueModel, books: Books): Numbers {
  const { facts, plan, people, season } = known;
  const E = q("energy", best.energy_kWh);
  const t_set = q("temperature", best.setpoint_C);
  const n_people = q("count", people);
  const year = { n: q("count", DAYS_A_YEAR), people: n_people, seed: q("count", YEAR_SEED), t_set };
  const n = q("count", best.days);
  const n_cold = q("count", best.coldDays);
  const month = { t_cold: q("temperature", season.cold_C), t_air: q("temperature", season.air_C) };
  const sample = {
    n_cold,
    n,
    people: n_people,
    seed: q("count", SEED),
    ...month,
    t_want: q("temperature", facts.wanted_C),
  };
  const prices = { ...bookSource(books.company, plan.name), edition: books.prices.setOn };
  const sheet = model.heater.source;
  const range = { p_low: q("share", best.low), p_high: q("share", best.high) };
  return [
    numberResult("cost_per_year", q("money", best.cost_usd), "C = Σ_h E_h · p_h", { E }, prices, SIMULATED_YEAR),
    numberResult("energy_per_year", E, "E = Σ_h P_h · 1 h", year, SIMULATED_YEAR, MAINS_TEMPERATURE, sheet),
    numberResult("cop_year", q("ratio", best.cop), "COP = Q_delivered / E", { E }, SIMULATED_YEAR, sheet),
    numberResult(
      "chance_of_running_cold",
      q("share", best.share),
      "p = n_cold / n",
      sample,
      DAYS_SIMULATED,
      SHOWERS_A_PERSON.source,
      MAINS_TEMPERATURE,
    ),
    numberResult(
      "sampling_error",
      q("share", best.error),
      "√(p′ (1 − p′) / n), p′ = (n_cold + 1) / (n + 2)",
      { n_cold, n, ...range },
      SCORE_INTERVAL,
    ),
  ];
}

/** What the best pick asks of the spot. */
export function bodyResults({ facts }: PickCase, model: CatalogueModel): Numbers {
  const { height_m, clearanceAbove_m, emptyMass_kg, width_m } = model.body;
  const m = q("mass", fullMass_kg(model));
  const sheet = model.heater.source;
  const heights = { h: q("dimension", height_m), h_above: q("dimension", clearanceAbove_m) };
  const masses = { m_empty: q("mass", emptyMass_kg), V: q("volume", model.heater.tank.volume_L) };
  const heard_dBA = facts.bedroom_m === undefined ? undefined : soundAt_dBA(model, facts);
  const sound: Numbers =
    heard_dBA === undefined
      ? []
      : [
          numberResult(
            "sound_at_bedroom",
            q("sound", heard_dBA),
            "L = L_1m − 20 log₁₀(r / 1 m)",
            { L_1m: q("sound", model.sound_dBA ?? 0), r: q("length", facts.bedroom_m ?? 0) },
            SOUND_FALL,
            sheet,
          ),
        ];
  return [
    numberResult("height_needed", q("dimension", heightNeeded_m(model)), "h + h_above", heights, sheet),
    numberResult("full_mass", m, "m = m_empty + ρ · V", masses, SHEET_AND_WATER, sheet),
    numberResult(
      "footprint_load",
      q("floor_load", footprintLoad_kPa(model)),
      "p = m · g / (π/4 · w²)",
      { m, w: q("dimension", width_m) },
      SHEET_AND_WATER,
      sheet,
    ),
    ...sound,
  ];
}

/** Every model that serves, the best first. */
export function rankingTable(known: PickCase, ranked: readonly Finalist[]): AnswerTable<Cell> {
  return {
    id: "ranking",
    rows: ranked.map((one, index) => [
      q("count", index + 1),
      nameOf(known, one.model),
      q("temperature", one.setpoint_C),
      { code: one.mode, data: {} },
      q("money", one.cost_usd),
      q("energy", one.energy_kWh),
      q("share", one.share),
      remarkOn(known, one),
    ]),
  };
}

function remarkOn({ facts }: PickCase, one: Finalist): Cell {
  const isHot = needsValve(one);
  const data = { low: q("share", one.low), high: q("share", one.high) };
  if (isHot && facts.mixing_valve === true)
    return one.isSure ? { code: "remark_has_valve", data: {} } : { code: "remark_close", data };
  if (isHot) return one.isSure ? { code: "remark_needs_valve", data: {} } : { code: "remark_valve_and_close", data };
  return one.isSure ? { code: "remark_none", data: {} } : { code: "remark_close", data };
}

/** Every model that does not serve, with all its reasons. */
export function refusedTable(known: PickCase, trials: readonly ModelTrials[]): readonly AnswerTable<Cell>[] {
  const bySite = known.refused.map(({ model, breaches, others }) => [
    model.name,
    [...breaches.map(({ say }) => say), ...others],
  ]);
  const cold = trials.flatMap(({ model, best, warmest }) =>
    best === undefined ? [[nameOf(known, model), [sayCold(known, warmest)]]] : [],
  );
  return bySite.length + cold.length === 0 ? [] : [{ id: "refused", rows: [...bySite, ...cold] }];
}

function sayCold({ facts }: PickCase, { mode, setpoint_C, share }: Chance): Cell {
  const data = { share: q("share", share), setpoint: q("temperature", setpoint_C), limit: q("share", facts.limit) };
  return { code: `cold_${mode}`, data };
}

/** One limit of the site: what was told, how many models it refuses, and what it would have to be for one more. */
export interface Relaxed {
  readonly limit: LimitId;
  readonly refuses: number;
  /** Models that it alone keeps out. */
  readonly alone: readonly Breach[];
  /** The nearest value that lets one of them in. */
  readonly nearest: Breach | undefined;
}

export function relaxEach({ refused }: PickCase): readonly Relaxed[] {
  return LIMITS.map((limit): Relaxed => {
    const refuses = refused.filter(({ breaches }) => breaches.some((breach) => breach.limit === limit)).length;
    const alone = refused.flatMap(({ breaches: [only, ...more], others }) =>
      only?.limit === limit && more.length + others.length === 0 ? [only] : [],
    );
    const nearest = alone.reduce<Breach | undefined>(
      (least, one) => (least && least.needed.value <= one.needed.value ? least : one),
      undefined,
    );
    return { limit, refuses, alone, nearest };
  });
}

/** Every limit that was told, with what it does here. */
export function limitsTable(known: PickCase, relaxed: readonly Relaxed[]): readonly AnswerTable<Cell>[] {
  const rows = relaxed.flatMap(({ limit, refuses, alone, nearest }): AnswerTable<Cell>["rows"] => {
    const there = toldOf(limit, known.facts);
    if (there === undefined) return [];
    const name: Cell = { code: "limit_of", data: { limit } };
    const from: Quantity | Cell = nearest?.needed ?? { code: "remark_none", data: {} };
    return [[name, there, q("count", refuses), q("count", alone.length), from]];
  });
  return rows.length === 0 ? [] : [{ id: "limits", rows }];
}

/** The name of a model of the case, by its id. */
function nameOf({ candidates }: PickCase, id: string): string {
  return candidates.find(({ model }) => model.id === id)?.model.name ?? id;
}
