import { type Cause, type Check, type FaultKnowledge, LEVELS, type Level, type Symptom } from "./knowledge.ts";

/** The cause that stands for everything the knowledge does not hold; always the last one. */
export const SOMETHING_ELSE = "something_else";
/**
 * Share of answers that are a slip: the wrong tap, wire or button. It keeps any one answer from excluding a cause.
 * @source judgement
 */
const SLIP_SHARE = 0.04;
/** Share of complaints that have nothing to do with the fault. @source judgement */
const STRAY_SHARE = 0.05;

/** The knowledge as tables of numbers, built once and used for every case. */
export interface FaultModel {
  readonly causes: readonly Cause[];
  /** Ids of the causes, `something_else` last; every row of numbers has this order. */
  readonly ids: readonly string[];
  readonly indexOf: ReadonlyMap<string, number>;
  readonly symptoms: ReadonlyMap<string, Symptom>;
  /** How likely a complaint is with each cause. */
  readonly complaints: ReadonlyMap<string, Float64Array>;
  readonly checks: ReadonlyMap<string, CheckTable>;
}

export interface CheckTable {
  readonly check: Check;
  readonly outcomes: readonly string[];
  /** How likely each outcome is with each cause; the outcomes of one cause add up to one. */
  readonly likelihood: readonly Float64Array[];
  /** Logarithms of those [bit]. */
  readonly logs: readonly Float64Array[];
  /** 1 for the causes that this check has something to say of. */
  readonly bears: Uint8Array;
  /** What shows when the cause lies elsewhere. */
  readonly usual: string;
  /** Numbers of the groups of checks that see the same physics. */
  readonly groups: readonly number[];
}

/** Turns the knowledge into tables; entries that name what does not exist are left out. */
export function buildModel(knowledge: FaultKnowledge): FaultModel {
  const { causes } = knowledge;
  const ids = [...causes.map(({ id }) => id), SOMETHING_ELSE];
  return {
    causes,
    ids,
    indexOf: new Map(ids.map((id, index) => [id, index])),
    symptoms: new Map(knowledge.symptoms.map((symptom) => [symptom.id, symptom])),
    complaints: new Map(knowledge.symptoms.map(({ id }) => [id, complaintRow(id, causes)])),
    checks: new Map(knowledge.checks.map((check) => [check.id, tabulate(check, knowledge)])),
  };
}

/** Number at a place of a row; every row is as long as the list of causes. */
export function at(row: Float64Array, index: number): number {
  return row[index] ?? 0;
}

function complaintRow(symptom: string, causes: readonly Cause[]): Float64Array {
  const shares = causes.map(({ symptoms }) => LEVELS[symptoms[symptom] ?? "unlikely"]);
  // What we do not know of may cause anything, possibly.
  return Float64Array.from([...shares, LEVELS.possible], (p) => p * (1 - STRAY_SHARE) + STRAY_SHARE * LEVELS.possible);
}

function tabulate(check: Check, { causes, groups }: FaultKnowledge): CheckTable {
  const outcomes = check.outcomes.map(({ id }) => id);
  const usual = sharesOf(outcomes, check.usual);
  const columns = causes.map(({ id }) => sharesOf(outcomes, check.byCause[id] ?? check.usual));
  // Half as usual, half anything at all: sound readings elsewhere must not speak against what we do not know of.
  columns.push(usual.map((share) => (share + 1 / outcomes.length) / 2));
  const likelihood = outcomes.map((_, row) => Float64Array.from(columns, (column) => withSlips(column, row)));
  return {
    check,
    outcomes,
    likelihood,
    logs: likelihood.map((row) => row.map(Math.log2)),
    bears: Uint8Array.from([...causes.map(({ id }) => (check.byCause[id] === undefined ? 0 : 1)), 0]),
    usual: outcomes[usual.indexOf(Math.max(...usual))] ?? "",
    groups: groups.flatMap((group, index) => (group.includes(check.id) ? [index] : [])),
  };
}

/** An outcome that a row leaves out is unlikely. */
function sharesOf(outcomes: readonly string[], row: Readonly<Record<string, Level>>): readonly number[] {
  const shares = outcomes.map((id) => LEVELS[row[id] ?? "unlikely"]);
  const sum = shares.reduce((total, share) => total + share, 0);
  return shares.map((share) => share / sum);
}

function withSlips(column: readonly number[], row: number): number {
  return (column[row] ?? 0) * (1 - SLIP_SHARE) + SLIP_SHARE / column.length;
}
