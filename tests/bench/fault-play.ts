import { addSteps, type FaultCase, openCase } from "../../src/faults/case.ts";
import { type Check, DOERS } from "../../src/faults/knowledge.ts";
import { type FaultModel, SOMETHING_ELSE } from "../../src/faults/model.ts";
import { minutesOf, openChecks, rateChecks } from "../../src/faults/next-check.ts";
import { posteriorShares, rankCauses } from "../../src/faults/posterior.ts";
import { FOUND_SHARE, usefulCheck } from "../../src/faults/verdict.ts";
import type { RandomStream } from "../../src/household/random.ts";
import { drawOutcome, type Noise, type SyntheticFault } from "./fault-cases.ts";

/** Picks the next check; all strategies share the posterior and the share from which a cause counts as found. */
export type Strategy = (model: FaultModel, known: FaultCase, shares: Float64Array) => Check | undefined;

export interface Played {
  /** The first cause named was the right one. */
  readonly isFirstRight: boolean;
  /** Every cause was named and treated in the end. */
  readonly isSolved: boolean;
  readonly checks: number;
  readonly minutes: number;
}

/** A visit ends after this [min], or after so many remedies. */
const VISIT_min = 240;
const MOST_REMEDIES = 4;
/** Carrying out a remedy and seeing that it did not cure [min]; invented, the same for every strategy. */
const REMEDY_min = 30;
/** Somebody with every credential: what the strategies may do must not differ. */
const ASKER = { doers: DOERS };

/** The reasoning of the house: most information a minute. */
export const byInformation: Strategy = (model, known, shares) => usefulCheck(rateChecks(model, known, shares))?.check;

/** A checklist in a fixed order, the quickest look first, until a cause is found. */
export const byChecklist: Strategy = (model, known) =>
  openChecks(model, known)
    .map(({ check }) => check)
    .sort((one, other) => minutesOf(one) - minutesOf(other) || compare(one, other))[0];

/** Goes after the cause that is likeliest now with the check that would prove it best. */
export const byLikeliest: Strategy = (model, known, shares) => {
  const [top] = rankCauses(model, shares, 1);
  const index = model.indexOf.get(top?.cause ?? "") ?? -1;
  const mean = (row: Float64Array) => row.reduce((sum, share) => sum + share, 0) / row.length;
  const proofs = openChecks(model, known).map(({ check, bears, likelihood }) => {
    const proof = bears[index] === 1 ? Math.max(...likelihood.map((row) => (row[index] ?? 0) / mean(row))) : 0;
    return { check, proof };
  });
  return proofs.sort((one, other) => other.proof - one.proof || compare(one.check, other.check))[0]?.check;
};

/** Plays one fault until every cause is treated, the visit is over or nothing is left to do. */
export function playFault(
  model: FaultModel,
  fault: SyntheticFault,
  pick: Strategy,
  noise: Noise,
  random: RandomStream,
): Played {
  const { unitKind, age, complaints } = fault;
  const said = complaints.map((symptom) => ({ kind: "complaint", symptom, isThere: true }) as const);
  let known: FaultCase = addSteps(openCase(ASKER, { unitKind, age }), ...said);
  let left = fault.causes;
  let [checks, minutes, remedies] = [0, 0, 0];
  let isFirstRight = false;
  while (minutes < VISIT_min && remedies < MOST_REMEDIES && left.length > 0) {
    const shares = posteriorShares(model, known);
    const [top] = rankCauses(model, shares, 1);
    const isFound = top !== undefined && top.cause !== SOMETHING_ELSE && top.share >= FOUND_SHARE;
    const next = isFound ? undefined : pick(model, known, shares);
    if (next !== undefined) {
      checks += 1;
      minutes += minutesOf(next);
      const outcome = drawOutcome(next, left, noise, random);
      const check = next.id;
      known = addSteps(
        known,
        outcome === undefined ? { kind: "not_sure", check } : { kind: "outcome", check, outcome },
      );
      continue;
    }
    // Found, or the likeliest when nothing is left to look at.
    const [best] = rankCauses(model, shares, 2).filter(({ cause }) => cause !== SOMETHING_ELSE);
    if (best === undefined) break;
    remedies += 1;
    minutes += REMEDY_min;
    if (remedies === 1) isFirstRight = left.some(({ id }) => id === best.cause);
    left = left.filter(({ id }) => id !== best.cause);
    known = addSteps(known, { kind: "tried", cause: best.cause });
  }
  return { isFirstRight, isSolved: left.length === 0, checks, minutes };
}

function compare(one: Check, other: Check): number {
  return one.id < other.id ? -1 : 1;
}
