import type { Books } from "../books/books.ts";
import type { PartsDone } from "../declaration/topic.ts";
import { type PickCase, type PickFacts, planPick } from "./pick-case.ts";
import {
  byCost,
  drawFullSample,
  drawLookSample,
  type Finalist,
  type Look,
  lookAtModel,
  type ModelLooks,
  type ModelTrials,
  tryModel,
} from "./pick-trials.ts";

/** What one part of the search came to: some models looked at, or some models tried in full. */
export type PickPart =
  | { readonly kind: "looks"; readonly models: readonly ModelLooks[] }
  | { readonly kind: "trials"; readonly models: readonly ModelTrials[] };
type Done = PartsDone<PickPart>;

/** Everything that fits is looked at, then what looks best is tried in full. */
export const PICK_ROUNDS = 2;
/** Models of one part; small, so that the first parts are done soon and two threads end together. */
const LOOKED_AT_A_PART = 2;
const TRIED_A_PART = 3;

/** How many parts the round after these has. */
export function countPickParts(facts: PickFacts, books: Books, done: Done): number {
  const planned = planPick(facts, books);
  if (!planned.ok) return 0;
  return Math.ceil(planned.known.candidates.length / (done.length === 0 ? LOOKED_AT_A_PART : TRIED_A_PART));
}

/** Runs one part: some models of the catalogue in the first round, some of the best that are left in the second. */
export function runPickPart(facts: PickFacts, books: Books, done: Done, part: number): PickPart {
  const planned = planPick(facts, books);
  if (!planned.ok) throw new Error("facts that cannot be worked with have no parts");
  const { known } = planned;
  if (done.length > 0) return { kind: "trials", models: tryPart(known, looksOf(done), part) };
  const candidates = known.candidates.slice(part * LOOKED_AT_A_PART, (part + 1) * LOOKED_AT_A_PART);
  const sample = drawLookSample(known);
  return { kind: "looks", models: candidates.map((candidate) => lookAtModel(known, sample, candidate)) };
}

/** Those that look cheapest are tried first, so that the best is known early. */
function tryPart(known: PickCase, looks: readonly ModelLooks[], part: number): readonly ModelTrials[] {
  const ranked = looks.toSorted((a, b) => byCost(cheapestOf(a), cheapestOf(b)));
  const sample = drawFullSample(known);
  return ranked.slice(part * TRIED_A_PART, (part + 1) * TRIED_A_PART).map((one) => {
    const candidate = known.candidates.find(({ model }) => model.id === one.model);
    if (candidate === undefined) throw new Error(`${one.model} was looked at and is no candidate`);
    return tryModel(known, sample, candidate, one);
  });
}

/** The best that is known while the search goes on: of the years that are done, else of the first looks. */
export function bestSoFar(done: Done): Finalist | (Look & { readonly model: string }) | undefined {
  const [finalist] = rankFinalists(trialsOf(done));
  if (finalist !== undefined) return finalist;
  const looks = looksOf(done).map((one) => ({ ...cheapestOf(one), model: one.model }));
  const [look] = looks.toSorted(byCost);
  return look?.cost_usd === undefined ? undefined : look;
}

/** Models that serve, the cheapest to run first. */
export function rankFinalists(trials: readonly ModelTrials[]): readonly Finalist[] {
  return trials.flatMap(({ best }) => (best === undefined ? [] : [best])).sort((a, b) => a.cost_usd - b.cost_usd);
}

export function trialsOf(done: Done): readonly ModelTrials[] {
  return done.flat().flatMap((part) => (part.kind === "trials" ? part.models : []));
}

export function looksOf(done: Done): readonly ModelLooks[] {
  return done.flat().flatMap((part) => (part.kind === "looks" ? part.models : []));
}

function cheapestOf({ looks, model }: ModelLooks): Look {
  const [cheapest] = looks.toSorted(byCost);
  if (cheapest === undefined) throw new Error(`${model} was not looked at`);
  return cheapest;
}
