import { type FindingOf, type FindingSpecs, type NextStep, q } from "../declaration/answer.ts";
import { writeRequest } from "../declaration/write-request.ts";
import type { Quantity } from "../units/quantity-kinds.ts";
import { needsValve, type PickCase } from "./pick-case.ts";
import type { Relaxed } from "./pick-results.ts";
import type { Best } from "./pick-site.ts";
import type { ModelTrials } from "./pick-trials.ts";

export const PICK_STEPS = {
  step_size: { model: "word" },
  step_cost: { model: "word" },
  step_circuit: { model: "word" },
  step_expansion: { model: "word" },
  step_relax: { limit: "fact" },
  step_limit: { limit: "share" },
} as const satisfies FindingSpecs;
type Step = NextStep<FindingOf<typeof PICK_STEPS>>;
/** What was told, ready to be typed again. */
type Asked = Readonly<Record<string, Quantity | string | boolean>>;

/** A limit that lets nobody in however many cold days are borne is not offered. */
const MOST_COLD = 0.5;

/** Limits that keep somebody out alone, the one that keeps out most first. */
export function byAdmitted(relaxed: readonly Relaxed[]): readonly Relaxed[] {
  return relaxed.filter(({ alone }) => alone.length > 0).toSorted((a, b) => b.alone.length - a.alone.length);
}

/** Requests that would find something: one limit moved just far enough, or more cold days allowed. */
export function helpSteps(
  { candidates }: PickCase,
  asked: Asked,
  relaxed: readonly Relaxed[],
  trials: readonly ModelTrials[],
): readonly Step[] {
  if (candidates.length === 0)
    return byAdmitted(relaxed).flatMap(({ limit, nearest }): readonly Step[] =>
      nearest === undefined
        ? []
        : [
            {
              say: { code: "step_relax", data: { limit } },
              request: writeRequest("pick", { ...daysFirst(asked), [limit]: nearest.needed }),
            },
          ],
    );
  const least = Math.min(...trials.map(({ warmest }) => warmest.high));
  if (!(least <= MOST_COLD)) return [];
  const limit = q("share", Math.ceil(100 * least) / 100);
  return [
    { say: { code: "step_limit", data: { limit } }, request: writeRequest("pick", { ...daysFirst(asked), limit }) },
  ];
}

/** What to ask next about the best pick: does it serve in detail, what does it cost, what circuit, what expansion tank. */
export function bestSteps(known: PickCase, asked: Asked, { finalist, candidate }: Best): readonly Step[] {
  const { facts, people } = known;
  const { model, supply_V } = candidate;
  const data = { model: model.name };
  const setpoint = q("temperature", finalist.setpoint_C);
  const keep = (...ids: readonly string[]): Asked =>
    Object.fromEntries(Object.entries(asked).filter(([id]) => ids.includes(id)));
  const unit = { model: model.id, setpoint, mode: finalist.mode };
  const supply = facts.supply_V === undefined ? {} : { supply: q("voltage", supply_V) };
  const valve = needsValve(finalist) ? { mixing_valve: true } : keep("mixing_valve");
  const sizeFacts = keep("people", "bedrooms", "bathrooms", "wanted", "place", "month", "limit", "days");
  const costFacts = keep("bathrooms", "wanted", "place", "rate");
  const [element] = model.heater.elements;
  const circuit: readonly Step[] =
    element === undefined
      ? []
      : [
          {
            say: { code: "step_circuit", data },
            request: writeRequest("circuit", {
              element: q("power", element.rated_W),
              supply: q("voltage", supply_V),
              rated_volts: q("voltage", element.rated_V),
            }),
          },
        ];
  return [
    {
      say: { code: "step_size", data },
      request: writeRequest("size", { ...daysFirst(sizeFacts), ...unit, ...valve, ...supply }),
    },
    {
      say: { code: "step_cost", data },
      request: writeRequest("cost", { people: q("count", Math.round(people)), ...costFacts, ...unit, ...supply }),
    },
    ...circuit,
    {
      say: { code: "step_expansion", data },
      request: writeRequest("expansion", {
        tank: q("volume", model.nominal_L),
        setpoint,
        cold: q("temperature", known.season.cold_C),
      }),
    },
  ];
}

/** Behind a bare number, "days=60" would read as that many days: "people=1 days=60". */
function daysFirst({ days, ...others }: Asked): Asked {
  return { ...(days !== undefined && { days }), ...others };
}
