import type { FaultCase } from "./case.ts";
import { type Evidence, gatherEvidence } from "./evidence.ts";
import { at, type FaultModel } from "./model.ts";
import { priorShares } from "./prior.ts";

/** Chance that the right remedy was carried out and did not cure. @source judgement */
const FAILED_REMEDY_CHANCE = 0.05;

/** A cause and how likely it is now. */
export interface Candidate {
  readonly cause: string;
  readonly share: number;
}

/**
 * Share of each cause given everything known, in the order of the model, something else last; they add up to one.
 * @source Bayes' rule in logarithms; evidence independent given the cause, but for checks of one group, whose
 *   logarithms count by half from the second on
 * @limits one cause at a time. After a remedy that did not cure, what was seen before it may have come from the cause
 *   that was treated: it then speaks as far against the others as two causes at once would let it
 */
export function posteriorShares(model: FaultModel, known: FaultCase): Float64Array {
  return weighBeside(model, known, gatherEvidence(model, known), treatedCauses(model, known));
}

/** The likeliest causes, likeliest first; earlier causes of the knowledge win ties. */
export function rankCauses(model: FaultModel, shares: Float64Array, most = model.ids.length): readonly Candidate[] {
  return model.ids
    .map((cause, index) => ({ cause, share: at(shares, index) }))
    .sort((one, other) => other.share - one.share)
    .slice(0, most);
}

/** A cause whose remedy was carried out. */
interface Treated {
  readonly index: number;
  /** Number of this remedy: what was seen before it has a smaller or the same era. */
  readonly era: number;
  /** How likely it was held to be when it was treated. */
  readonly belief: number;
  readonly remaining: readonly string[] | undefined;
}

function treatedCauses(model: FaultModel, known: FaultCase): readonly Treated[] {
  const treated: Treated[] = [];
  for (const [place, step] of known.steps.entries()) {
    if (step.kind !== "tried") continue;
    const index = model.indexOf.get(step.cause) ?? -1;
    const before = { ...known, steps: known.steps.slice(0, place) };
    const belief = at(weighBeside(model, before, gatherEvidence(model, before), treated), index);
    treated.push({ index, era: treated.length, belief, remaining: step.remaining });
  }
  return treated;
}

function weighBeside(
  model: FaultModel,
  known: FaultCase,
  evidence: readonly Evidence[],
  treated: readonly Treated[],
): Float64Array {
  const logs = priorShares(model, known).map((share) => Math.log(share));
  for (const one of evidence) addEvidence(logs, one, treated);
  for (const { index } of treated) if (index >= 0) logs[index] = at(logs, index) + Math.log(FAILED_REMEDY_CHANCE);
  return normalise(logs);
}

function addEvidence(logs: Float64Array, one: Evidence, treated: readonly Treated[]): void {
  const later = treated.filter(({ index, era }) => index >= 0 && one.era <= era);
  if (later.length === 0) {
    for (let cause = 0; cause < logs.length; cause++)
      logs[cause] = at(logs, cause) + one.power * Math.log(at(one.row, cause));
    return;
  }
  const isTreated = (cause: number) => later.some(({ index }) => index === cause);
  const likelihoods = one.row.map((alone, cause) =>
    later.reduce((share, cure) => besideTreated(one, cause, share, cure), alone),
  );
  // Of a treated cause, what was seen before its remedy says neither yes nor no.
  const neutral = meanOf(likelihoods.filter((_, cause) => !isTreated(cause)));
  for (let cause = 0; cause < logs.length; cause++) {
    const likelihood = isTreated(cause) ? neutral : at(likelihoods, cause);
    logs[cause] = at(logs, cause) + one.power * Math.log(likelihood);
  }
}

/** How likely it was to be seen with this cause when a treated one may have been there too. */
function besideTreated(one: Evidence, cause: number, alone: number, treated: Treated): number {
  const other = at(one.row, treated.index);
  return (1 - treated.belief) * alone + treated.belief * withBoth(one, cause, alone, other, treated);
}

function withBoth(one: Evidence, cause: number, alone: number, other: number, treated: Treated): number {
  if (one.table === undefined) {
    const isLeft = treated.remaining === undefined || treated.remaining.includes(one.about);
    // A complaint that is still there needs a cause that is still there.
    if (one.isThere && isLeft) return alone;
    return one.isThere ? 1 - (1 - alone) * (1 - other) : alone * other;
  }
  // What is out of the ordinary shows, whichever of the two it comes from.
  if (!one.table.bears[treated.index]) return alone;
  return one.table.bears[cause] ? (alone + other) / 2 : other;
}

function meanOf(row: Float64Array): number {
  return row.length === 0 ? 1 : row.reduce((sum, share) => sum + share, 0) / row.length;
}

function normalise(logs: Float64Array): Float64Array {
  const highest = logs.reduce((most, log) => Math.max(most, log), Number.NEGATIVE_INFINITY);
  const shares = logs.map((log) => Math.exp(log - highest));
  const total = shares.reduce((sum, share) => sum + share, 0);
  return shares.map((share) => share / total);
}
