import { type FaultCase, isObservation } from "./case.ts";
import { gatherEvidence, outcomeWeights, SAME_PHYSICS_POWER } from "./evidence.ts";
import type { Check, Hazard } from "./knowledge.ts";
import { at, type CheckTable, type FaultModel } from "./model.ts";
import { findObstacle, type Obstacle } from "./permission.ts";
import { type Candidate, posteriorShares, rankCauses } from "./posterior.ts";

/** Minutes that a hazard's precaution takes, and what going near it is worth avoiding. @source judgement */
const HAZARD_MINUTES: Readonly<Record<Hazard, number>> = {
  lockout: 5,
  live: 8,
  scald: 1,
  pressure: 3,
  refrigerant: 10,
  ladder: 4,
  gas: 5,
  water_off: 5,
};
/** The shortest look takes this long [min]. */
const LEAST_MINUTES = 1;
/** Causes that are told of an outcome. */
const MOST_MEANT = 3;

/** A check that would tell something. */
export interface RatedCheck {
  readonly check: Check;
  /** Doubt about the cause that it takes away on average [bit]. */
  readonly gain_bits: number;
  /** With the precautions [min]. */
  readonly minutes: number;
  /** What keeps the asker from it. */
  readonly obstacle?: Obstacle;
}

/** What one outcome would mean. */
export interface Meaning {
  readonly outcome: string;
  /** How likely it is to come out so. */
  readonly chance: number;
  /** The likeliest causes then. */
  readonly after: readonly Candidate[];
}

/**
 * Every check that has not been answered, with what it would tell, most information a minute first; checks that this
 * person cannot do carry the obstacle.
 * @source Shannon entropy of the causes, mean drop over the outcomes, per minute
 * @limits looks one check ahead; a check of a group that has spoken already counts by half
 */
export function rateChecks(
  model: FaultModel,
  known: FaultCase,
  shares = posteriorShares(model, known),
): readonly RatedCheck[] {
  const spoken = spokenGroups(model, known);
  const logs = shares.map((share) => (share > 0 ? Math.log2(share) : 0));
  const rated = openChecks(model, known).map((table): RatedCheck => {
    const { check } = table;
    const obstacle = findObstacle(check, known.asker);
    const gain_bits = expectedGain_bits(table, shares, logs, powerOf(table, spoken));
    return { check, gain_bits, minutes: minutesOf(check), ...(obstacle && { obstacle }) };
  });
  return rated.sort((one, other) => other.gain_bits / other.minutes - one.gain_bits / one.minutes);
}

/** The checks of this kind of unit that have neither been answered nor put aside, in the order of the knowledge. */
export function openChecks(model: FaultModel, known: FaultCase): readonly CheckTable[] {
  const closed = closedChecks(model, known);
  return [...model.checks.values()].filter(({ check }) => !closed.has(check.id) && fits(check, known));
}

/** What each outcome of a check would mean, in the order of the check. */
export function foreseeOutcomes(
  model: FaultModel,
  known: FaultCase,
  check: string,
  shares = posteriorShares(model, known),
): readonly Meaning[] {
  const table = model.checks.get(check);
  if (table === undefined) return [];
  const power = powerOf(table, spokenGroups(model, known));
  return table.outcomes.map((outcome, index) => {
    const row = table.likelihood[index] ?? shares;
    const { chance, after } = lookAhead(row, shares, power);
    return { outcome, chance, after: rankCauses(model, after, MOST_MEANT) };
  });
}

/** Minutes of a check with the precautions that its hazards ask for [min]. */
export function minutesOf({ minutes, hazards }: Check): number {
  return hazards.reduce((sum, hazard) => sum + HAZARD_MINUTES[hazard], Math.max(minutes, LEAST_MINUTES));
}

/** Answered, put aside, or asking for the age that is known: the age is in the prior already. */
function closedChecks(model: FaultModel, known: FaultCase): ReadonlySet<string> {
  const closed = new Set<string>();
  for (const step of known.steps) {
    if (step.kind === "cannot" || step.kind === "not_sure") closed.add(step.check);
    else if (isObservation(step)) closed.add(step.check);
    // What was out of the ordinary may be gone with the remedy: worth another look.
    else if (step.kind === "tried") for (const id of [...closed]) if (wasUnusual(model, known, id)) closed.delete(id);
  }
  if (known.age !== undefined) for (const id of AGE_CHECKS) closed.add(id);
  return closed;
}

/** Checks that ask how old the unit is; where the age is known, what else they ask comes from the job record. */
const AGE_CHECKS = ["age_and_history"];

function wasUnusual(model: FaultModel, known: FaultCase, id: string): boolean {
  const table = model.checks.get(id);
  const seen = known.steps.findLast((step) => isObservation(step) && step.check === id);
  if (table === undefined || seen === undefined || !isObservation(seen)) return false;
  return (outcomeWeights(table, seen)?.[table.usual] ?? 0) < 0.5;
}

function fits({ appliesTo }: Check, { unitKind }: FaultCase): boolean {
  return unitKind === undefined || appliesTo.includes(unitKind);
}

function spokenGroups(model: FaultModel, known: FaultCase): ReadonlySet<number> {
  const evidence = gatherEvidence(model, known);
  const era = known.steps.filter(({ kind }) => kind === "tried").length;
  return new Set(evidence.flatMap((one) => (one.era === era ? (one.table?.groups ?? []) : [])));
}

function powerOf({ groups }: CheckTable, spoken: ReadonlySet<number>): number {
  return groups.some((group) => spoken.has(group)) ? SAME_PHYSICS_POWER : 1;
}

/** Mean drop of entropy; plain loops and stored logarithms, for every outcome of every check is looked at each time. */
function expectedGain_bits(table: CheckTable, shares: Float64Array, logs: Float64Array, power: number): number {
  let left = 0;
  for (let outcome = 0; outcome < table.outcomes.length; outcome++) {
    const row = table.likelihood[outcome];
    const rowLogs = table.logs[outcome];
    if (row === undefined || rowLogs === undefined) continue;
    let [chance, total, weighted] = [0, 0, 0];
    for (let cause = 0; cause < shares.length; cause++) {
      const share = at(shares, cause);
      const likelihood = at(row, cause);
      const weight = share * (power === 1 ? likelihood : likelihood ** power);
      chance += share * likelihood;
      total += weight;
      weighted += weight * (at(logs, cause) + power * at(rowLogs, cause));
    }
    // Entropy of weights w that add up to t: log t - sum(w log w) / t.
    if (total > 0) left += chance * (Math.log2(total) - weighted / total);
  }
  return Math.max(0, entropy_bits(shares, logs) - left);
}

/** How likely an outcome is now, and the shares after it. */
function lookAhead(row: Float64Array, shares: Float64Array, power: number): { chance: number; after: Float64Array } {
  const weights = shares.map((share, cause) => share * at(row, cause) ** power);
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const chance = shares.reduce((sum, share, cause) => sum + share * at(row, cause), 0);
  return { chance, after: weights.map((weight) => (total > 0 ? weight / total : 0)) };
}

function entropy_bits(shares: Float64Array, logs: Float64Array): number {
  return shares.reduce((sum, share, cause) => sum - share * at(logs, cause), 0);
}
