import type { FaultCase } from "./case.ts";
import type { Hazard, Symptom } from "./knowledge.ts";
import type { FaultModel } from "./model.ts";
import { foreseeOutcomes, type Meaning, type RatedCheck, rateChecks } from "./next-check.ts";
import { type Candidate, posteriorShares, rankCauses } from "./posterior.ts";
import { openStops } from "./stops.ts";
import { findVerdict, usefulCheck, type Verdict } from "./verdict.ts";

/** Candidates that are shown beside a check. */
const MOST_SHOWN = 3;

/** What to say next; always the first of these that applies. */
export type Next =
  | { readonly kind: "stop"; readonly symptoms: readonly Symptom[] }
  | { readonly kind: "verdict"; readonly verdict: Verdict }
  /** The hazards of the check that comes next; to be seen to before its steps are shown. */
  | (Proposal & { readonly kind: "prepare"; readonly hazards: readonly Hazard[] })
  | (Proposal & { readonly kind: "check" });

interface Proposal {
  readonly rated: RatedCheck;
  readonly candidates: readonly Candidate[];
  /** What each outcome would mean, and so why this check. */
  readonly meanings: readonly Meaning[];
}

/** What the reasoning says of a case: the stop line, the precaution, the next check, or the end of it. */
export function whatNext(model: FaultModel, known: FaultCase): Next {
  const symptoms = openStops(model, known);
  if (symptoms.length > 0) return { kind: "stop", symptoms };
  const shares = posteriorShares(model, known);
  const rated = rateChecks(model, known, shares);
  const verdict = findVerdict(model, known, shares, rated);
  if (verdict !== undefined) return { kind: "verdict", verdict };
  const best = usefulCheck(rated);
  if (best === undefined) throw new Error("neither a verdict nor a check");
  const proposal: Proposal = {
    rated: best,
    candidates: rankCauses(model, shares, MOST_SHOWN),
    meanings: foreseeOutcomes(model, known, best.check.id, shares),
  };
  const { id, hazards } = best.check;
  if (hazards.length > 0 && !isPrepared(known, id)) return { ...proposal, kind: "prepare", hazards };
  return { ...proposal, kind: "check" };
}

/** A precaution holds for one check and until a remedy: power and water may have been turned on again. */
function isPrepared({ steps }: FaultCase, check: string): boolean {
  const from = steps.findLastIndex(({ kind }) => kind === "tried") + 1;
  return steps.slice(from).some((step) => step.kind === "prepared" && step.check === check);
}
