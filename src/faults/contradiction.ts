import { addSteps, type FaultCase, isObservation, type Observation } from "./case.ts";
import { outcomeWeights } from "./evidence.ts";
import { at, type FaultModel } from "./model.ts";
import { posteriorShares } from "./posterior.ts";

/** An outcome that a cause makes so many times likelier than usual is explained by it. @source judgement */
const EXPLAINED_TIMES = 3;
/** Two answers contradict when what explains the one leaves the other less than this chance. @source judgement */
const HARDLY_CHANCE = 0.15;

/** Two answers that hardly go together; one of them may be a slip. */
export interface Contradiction {
  readonly now: string;
  /** The earlier check; the same one when it was answered differently before. */
  readonly earlier: string;
}

/**
 * The earlier answer that a new one contradicts, if any: the same check came out differently with no remedy between, or
 * one of the two is out of the ordinary and whatever would explain it hardly leaves the other a chance.
 * @param known the case before the new answer
 * @source judgement on the thresholds; two answers out of the ordinary may be two causes, and are none
 */
export function findContradiction(model: FaultModel, known: FaultCase, now: Observation): Contradiction | undefined {
  const outcome = likeliestOutcome(model, now);
  if (outcome === undefined) return undefined;
  const earlier = sinceRemedy(known);
  const same = earlier.findLast((seen) => seen.check === now.check);
  if (same !== undefined) {
    const differs = likeliestOutcome(model, same) !== outcome;
    return differs ? { now: now.check, earlier: now.check } : undefined;
  }
  const shares = posteriorShares(model, known);
  const hardly = earlier.findLast((seen) => areAtOdds(model, shares, seen, now));
  return hardly && { now: now.check, earlier: hardly.check };
}

/** The outcome that an answer speaks for most. */
export function likeliestOutcome(model: FaultModel, seen: Observation): string | undefined {
  const table = model.checks.get(seen.check);
  const weights = table && outcomeWeights(table, seen);
  return weights && Object.entries(weights).sort(([, one], [, other]) => other - one)[0]?.[0];
}

function sinceRemedy(known: FaultCase): readonly Observation[] {
  const from = known.steps.findLastIndex(({ kind }) => kind === "tried") + 1;
  const before = from === 0 ? known.record : [];
  return [...before, ...known.steps.slice(from).filter(isObservation)];
}

function areAtOdds(model: FaultModel, shares: Float64Array, one: Observation, other: Observation): boolean {
  const first = rowOf(model, one);
  const second = rowOf(model, other);
  if (first === undefined || second === undefined || first.isUsual === second.isUsual) return false;
  const [odd, plain] = first.isUsual ? [second, first] : [first, second];
  let [explaining, left] = [0, 0];
  for (let cause = 0; cause < shares.length; cause++) {
    if (at(odd.row, cause) < EXPLAINED_TIMES * at(odd.row, odd.plainCause)) continue;
    explaining += at(shares, cause);
    left += at(shares, cause) * at(plain.row, cause);
  }
  return explaining > 0 && left < HARDLY_CHANCE * explaining;
}

/** How likely what was seen is with each cause, whether it is the usual, and a cause that the check says nothing of. */
function rowOf(model: FaultModel, seen: Observation) {
  const outcome = likeliestOutcome(model, seen);
  const table = model.checks.get(seen.check);
  const row = table?.likelihood[table.outcomes.indexOf(outcome ?? "")];
  if (table === undefined || row === undefined) return undefined;
  return { row, isUsual: outcome === table.usual, plainCause: table.bears.indexOf(0) };
}

/** The case with a new answer, and what it contradicts. */
export function answerCheck(
  model: FaultModel,
  known: FaultCase,
  answer: Observation,
): { readonly known: FaultCase; readonly contradiction?: Contradiction } {
  const contradiction = findContradiction(model, known, answer);
  return { known: addSteps(known, answer), ...(contradiction && { contradiction }) };
}
