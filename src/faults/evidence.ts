import { type FaultCase, isObservation, type Observation } from "./case.ts";
import { at, type CheckTable, type FaultModel } from "./model.ts";
import { weighReading } from "./readings.ts";

/** Checks that see the same physics say less from the second on. @source judgement */
export const SAME_PHYSICS_POWER = 0.5;
/** What was measured at start-up may have changed since. @source judgement */
const RECORD_POWER = 0.5;

/** One thing that was said or seen, as numbers. */
export interface Evidence {
  /** The check or the symptom. */
  readonly about: string;
  /** How likely it is with each cause. */
  readonly row: Float64Array;
  /** How much of it counts, 0 to 1. */
  readonly power: number;
  /** How many remedies had been tried by then. */
  readonly era: number;
  readonly table?: CheckTable;
  /** Of a complaint: whether it is there. */
  readonly isThere?: boolean;
}

/**
 * What speaks for and against the causes: the last word on each complaint, and of each check the last answer between
 * two remedies. Steps that name what the model does not know, and readings that are no numbers, say nothing.
 */
export function gatherEvidence(model: FaultModel, known: FaultCase): readonly Evidence[] {
  const found = new Map<string, Evidence>();
  const add = (key: string, evidence: Evidence | undefined) => {
    if (evidence === undefined) return;
    // The last answer counts as given now, so that groups are discounted in the order of what still stands.
    found.delete(key);
    found.set(key, evidence);
  };
  for (const seen of known.record) add(`0 ${seen.check}`, observed(model, seen, 0, RECORD_POWER));
  let era = 0;
  for (const step of known.steps) {
    if (step.kind === "tried") era += 1;
    else if (step.kind === "complaint") add(`said ${step.symptom}`, complained(model, step.symptom, step.isThere, era));
    else if (isObservation(step)) add(`${era} ${step.check}`, observed(model, step, era, 1));
  }
  return discountSamePhysics([...found.values()]);
}

/** How far what was seen speaks for each outcome of its check. */
export function outcomeWeights(table: CheckTable, seen: Observation): Readonly<Record<string, number>> | undefined {
  if (seen.kind === "reading") return weighReading(table.check, seen.value, seen.expected);
  return table.outcomes.includes(seen.outcome) ? { [seen.outcome]: 1 } : undefined;
}

function complained(model: FaultModel, symptom: string, isThere: boolean, era: number): Evidence | undefined {
  const row = model.complaints.get(symptom);
  if (row === undefined) return undefined;
  return { about: symptom, row: isThere ? row : row.map((share) => 1 - share), power: 1, era, isThere };
}

function observed(model: FaultModel, seen: Observation, era: number, power: number): Evidence | undefined {
  const table = model.checks.get(seen.check);
  const weights = table && outcomeWeights(table, seen);
  if (table === undefined || weights === undefined) return undefined;
  const certain = table.outcomes.findIndex((outcome) => weights[outcome] === 1);
  const only = table.likelihood[certain];
  if (only !== undefined) return { about: seen.check, row: only, power, era, table };
  const row = new Float64Array(model.ids.length);
  for (const [index, outcome] of table.outcomes.entries()) {
    const weight = weights[outcome] ?? 0;
    const shares = table.likelihood[index];
    if (weight === 0 || shares === undefined) continue;
    for (let cause = 0; cause < row.length; cause++) row[cause] = at(row, cause) + weight * at(shares, cause);
  }
  return { about: seen.check, row, power, era, table };
}

function discountSamePhysics(evidence: readonly Evidence[]): readonly Evidence[] {
  return evidence.map((one, index) => {
    const isLater = evidence.slice(0, index).some((earlier) => seesTheSame(one, earlier));
    return isLater ? { ...one, power: one.power * SAME_PHYSICS_POWER } : one;
  });
}

function seesTheSame(one: Evidence, other: Evidence): boolean {
  if (one.table === undefined || other.table === undefined || one.era !== other.era) return false;
  return one.table.groups.some((group) => other.table?.groups.includes(group));
}
