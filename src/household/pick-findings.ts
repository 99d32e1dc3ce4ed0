import type { Books } from "../books/books.ts";
import { type FindingOf, type FindingSpecs, q } from "../declaration/answer.ts";
import type { PartsDone } from "../declaration/topic.ts";
import { scaldTime_s } from "../physics/scald-time.ts";
import { toBase } from "../units/convert.ts";
import { type Candidate, needsValve, type PickCase } from "./pick-case.ts";
import { footprintLoad_kPa, fullMass_kg, LIMITS, toldOf } from "./pick-limits.ts";
import type { Relaxed } from "./pick-results.ts";
import { looksOf, type PickPart } from "./pick-search.ts";
import type { Best } from "./pick-site.ts";
import { byAdmitted } from "./pick-steps.ts";
import type { Finalist } from "./pick-trials.ts";

const BEST = { model: "word", setpoint: "temperature", cost: "money", share: "share" } as const;
const SO_FAR = { model: "word", setpoint: "temperature", cost: "money" } as const;

/** What is said of the search and of the best pick. */
export const PICK_SAYS = {
  best_heat_pump_first: BEST,
  best_heat_pump_only: BEST,
  best_both_together: BEST,
  best_elements_only: BEST,
  so_far_heat_pump_first: SO_FAR,
  so_far_heat_pump_only: SO_FAR,
  so_far_both_together: SO_FAR,
  so_far_elements_only: SO_FAR,
  nothing_fits: { models: "count" },
  all_cold: { models: "count", limit: "share" },
  empty_catalogue: {},
  tried: { settings: "count", models: "count", refused: "count" },
  too_close: { low: "share", high: "share", limit: "share" },
  surely: { model: "word", setpoint: "temperature", cost: "money" },
  chance_for: { cold: "temperature", air: "temperature", days: "count" },
  bedrooms_as_people: { people: "ratio" },
  fit_valve: { setpoint: "temperature", time: "time" },
  weighs_full: { mass: "mass", load: "floor_load", usual: "floor_load" },
  own_circuit: { models: "word" },
  outdoor_units: { models: "word" },
  sound_without_walls: {},
  prices_set: { plan: "word", day: "word" },
  only_running_cost: {},
  not_checked: { limits: "fact" },
  relax_first: { limit: "fact", models: "count" },
  two_limits: {},
} as const satisfies FindingSpecs;
type Said = FindingOf<typeof PICK_SAYS>;

/** Load that living floors are commonly designed for, over the whole room: IRC 2021, Table R301.5, from memory. */
const LIVING_FLOOR_kPa = toBase(40, "lb_ft2");
/** A plug-in unit runs at less than this; others run at 208 or 240 V. */
const PLUG_BELOW_V = 150;

/** The answer in a sentence. */
export function headline({ candidates, refused, facts }: PickCase, best: Best | undefined): Said {
  if (best !== undefined) {
    const { mode, setpoint_C, cost_usd, share } = best.finalist;
    const setpoint = q("temperature", setpoint_C);
    const data = { model: best.candidate.model.name, setpoint, cost: q("money", cost_usd), share: q("share", share) };
    return { code: `best_${mode}`, data };
  }
  if (candidates.length > 0)
    return { code: "all_cold", data: { models: q("count", candidates.length), limit: q("share", facts.limit) } };
  if (refused.length === 0) return { code: "empty_catalogue", data: {} };
  return { code: "nothing_fits", data: { models: q("count", refused.length) } };
}

/** What is to be known of the best pick before somebody buys it: scalding first. */
export function sayBest(known: PickCase, { finalist, candidate }: Best, ranked: readonly Finalist[]): readonly Said[] {
  const { facts } = known;
  const { model } = candidate;
  const found: Said[] = [];
  const burns = needsValve(finalist) ? scaldTime_s(finalist.setpoint_C) : undefined;
  if (burns !== undefined && facts.mixing_valve !== true) {
    const setpoint = q("temperature", finalist.setpoint_C);
    found.push({ code: "fit_valve", data: { setpoint, time: q("time", burns.longest_s) } });
  }
  if (!finalist.isSure) found.push(...sayDoubt(known, finalist, ranked));
  const load = q("floor_load", footprintLoad_kPa(model));
  const usual = q("floor_load", LIVING_FLOOR_kPa);
  found.push({ code: "weighs_full", data: { mass: q("mass", fullMass_kg(model)), load, usual } });
  if (facts.sound_dBA !== undefined || facts.bedroom_m !== undefined)
    found.push({ code: "sound_without_walls", data: {} });
  return found;
}

/** How unsure the best pick is, and the cheapest one that surely serves. */
function sayDoubt({ facts, candidates }: PickCase, best: Finalist, ranked: readonly Finalist[]): readonly Said[] {
  const range = { low: q("share", best.low), high: q("share", best.high), limit: q("share", facts.limit) };
  const surest = ranked.find(({ isSure }) => isSure);
  const model = candidates.find((one) => one.model.id === surest?.model)?.model;
  const doubt: Said = { code: "too_close", data: range };
  if (surest === undefined || model === undefined) return [doubt];
  const data = { setpoint: q("temperature", surest.setpoint_C), cost: q("money", surest.cost_usd), model: model.name };
  return [doubt, { code: "surely", data }];
}

/** What was tried, under which conditions, and what was not looked at. */
export function saySearch(known: PickCase, done: PartsDone<PickPart>, ranked: readonly Finalist[]): readonly Said[] {
  const { facts, season, candidates, refused } = known;
  const settings = looksOf(done).reduce((sum, { looks }) => sum + looks.length, 0);
  const found: Said[] = [];
  if (settings > 0) {
    const models = q("count", candidates.length);
    found.push({
      code: "tried",
      data: { settings: q("count", settings), models, refused: q("count", refused.length) },
    });
    const weather = { cold: q("temperature", season.cold_C), air: q("temperature", season.air_C) };
    found.push({ code: "chance_for", data: { ...weather, days: q("count", facts.days) } });
  }
  if (facts.people === undefined)
    found.push({ code: "bedrooms_as_people", data: { people: q("ratio", known.people) } });
  const named = candidates.filter(({ model }) => ranked.some((one) => one.model === model.id));
  const { supply_V: there_V } = facts;
  if (there_V !== undefined && there_V > PLUG_BELOW_V)
    found.push(
      ...sayModels(
        "own_circuit",
        named.filter(({ supply_V }) => supply_V < PLUG_BELOW_V),
      ),
    );
  found.push(
    ...sayModels(
      "outdoor_units",
      named.filter(({ model }) => model.kind === "split"),
    ),
  );
  const unknown = LIMITS.filter((limit) => toldOf(limit, facts) === undefined);
  if (unknown.length > 0) found.push({ code: "not_checked", data: { limits: unknown.join(",") } });
  return found;
}

function sayModels(code: "own_circuit" | "outdoor_units", models: readonly Candidate[]): readonly Said[] {
  const names = models.map(({ model }) => model.name).join(", ");
  return names === "" ? [] : [{ code, data: { models: names } }];
}

/** Where the prices come from, and what they leave out. */
export function saySources({ plan }: PickCase, { prices }: Books): readonly Said[] {
  return [
    { code: "prices_set", data: { plan: plan.name, day: prices.setOn } },
    { code: "only_running_cost", data: {} },
  ];
}

/** Where nothing fits: the one limit that keeps out most models by itself. */
export function sayHelp({ candidates, refused }: PickCase, relaxed: readonly Relaxed[]): readonly Said[] {
  if (candidates.length > 0 || refused.length === 0) return [];
  const [first] = byAdmitted(relaxed);
  if (first === undefined) return [{ code: "two_limits", data: {} }];
  return [{ code: "relax_first", data: { limit: first.limit, models: q("count", first.alone.length) } }];
}
