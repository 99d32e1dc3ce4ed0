import type { FaultCase } from "./case.ts";
import type { Cause, Doer } from "./knowledge.ts";
import { type FaultModel, SOMETHING_ELSE } from "./model.ts";
import type { RatedCheck } from "./next-check.ts";
import { mayAct, type Obstacle } from "./permission.ts";
import { type Candidate, rankCauses } from "./posterior.ts";

/** From this share on, a cause is taken as found.
 * @source synthetic faults: the first remedy is right as often as at 0.8, in fewer minutes, because checks of one group
 *   count by half and so the share is on the low side */
export const FOUND_SHARE = 0.65;
/** Under this share nothing is named as the cause. @source rule of the knowledge: say so when the likeliest is under a half */
const PROBABLE_SHARE = 0.5;
/** A check that takes away less doubt than this is not worth anybody's minutes [bit]. @source judgement */
const LEAST_GAIN_bits = 0.03;
/** Causes that are named when none is found. */
const MOST_NAMED = 5;

/** Where the reasoning has come to when there is nothing more for this person to check. */
export type Verdict =
  | Named<"found">
  /** The likeliest by far, but no check is left that would make it sure. */
  | Named<"probable">
  /** Only somebody else can go on, or somebody with the tools. */
  | {
      readonly kind: "call_for";
      readonly obstacle: Obstacle;
      readonly check: string;
      readonly candidates: readonly Candidate[];
    }
  /** Nothing useful is left to look at; it may be something that we do not know of. */
  | { readonly kind: "open"; readonly mayBeElse: boolean; readonly candidates: readonly Candidate[] };

interface Named<K extends string> {
  readonly kind: K;
  readonly cause: Cause;
  readonly share: number;
  /** True when the asker's record lets them carry out the remedy. */
  readonly mayRepair: boolean;
  /** Who may, else. */
  readonly repairBy: readonly [Doer, ...Doer[]];
  readonly candidates: readonly Candidate[];
}

/** The verdict on a case, or nothing while a check is left that is worth its minutes. */
export function findVerdict(
  model: FaultModel,
  known: FaultCase,
  shares: Float64Array,
  rated: readonly RatedCheck[],
): Verdict | undefined {
  const candidates = rankCauses(model, shares, MOST_NAMED);
  const [top] = candidates;
  const cause = model.causes[model.indexOf.get(top?.cause ?? "") ?? -1];
  const name = <K extends string>(kind: K, named: Cause, share: number): Named<K> => {
    const mayRepair = named.repairBy.some((doer) => mayAct(known.asker, doer));
    return { kind, cause: named, share, mayRepair, repairBy: named.repairBy, candidates };
  };
  if (cause !== undefined && top !== undefined && top.share >= FOUND_SHARE) return name("found", cause, top.share);
  if (usefulCheck(rated) !== undefined) return undefined;
  const barred = rated.find(({ obstacle, gain_bits }) => obstacle !== undefined && gain_bits >= LEAST_GAIN_bits);
  if (barred?.obstacle !== undefined)
    return { kind: "call_for", obstacle: barred.obstacle, check: barred.check.id, candidates };
  if (cause !== undefined && top !== undefined && top.share >= PROBABLE_SHARE)
    return name("probable", cause, top.share);
  return { kind: "open", mayBeElse: top?.cause === SOMETHING_ELSE, candidates };
}

/** The check that tells most a minute among those that this person can do, if any is worth doing. */
export function usefulCheck(rated: readonly RatedCheck[]): RatedCheck | undefined {
  return rated.find(({ obstacle, gain_bits }) => obstacle === undefined && gain_bits >= LEAST_GAIN_bits);
}
