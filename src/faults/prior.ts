import type { FaultCase } from "./case.ts";
import { type Cause, LEVELS } from "./knowledge.ts";
import type { FaultModel } from "./model.ts";
import { SITE_EVIDENCE } from "./site-evidence-table.ts";

/** Share of faults that none of the causes explains. @source judgement, 2 to 5 % */
const SOMETHING_ELSE_SHARE = 0.03;
/** The shipped weights count as much as this many closed faults of the company's own. @source judgement */
const SHIPPED_COUNT = 60;

/** What is thought of one cause before this fault is looked at, and how it comes about. */
export interface PriorLine {
  readonly cause: string;
  /** Share of faults by the shipped weights. */
  readonly shipped: number;
  /** Closed faults of this company with this cause. */
  readonly counted: number;
  /** Share with the company's own faults. */
  readonly share: number;
}

/**
 * Shares of the causes before anything is said, in the order of the model, something else last; they add up to one.
 * @source counts: mean of a Dirichlet distribution, (a p + n) / (a + N), with a = the count that the shipped weights stand for
 * @limits a unit whose kind is not known keeps every cause; one whose age is not known gets the mean over the ages
 */
export function priorShares(model: FaultModel, known: FaultCase): Float64Array {
  const weights = model.causes.map((cause) => shippedWeight(cause, known));
  const total = sum(weights) || 1;
  const counted = model.causes.map((cause, index) => (weights[index] === 0 ? 0 : countOf(cause, known)));
  const all = SHIPPED_COUNT + sum(counted);
  const own = weights.map((weight, index) => (SHIPPED_COUNT * (weight / total) + (counted[index] ?? 0)) / all);
  const told = own.map(
    (share, index) => share * siteFactor(model.ids[index] ?? "", known.site) * hintFactor(model.ids[index], known),
  );
  const scale = (1 - SOMETHING_ELSE_SHARE) / (sum(told) || 1);
  return Float64Array.from([...told.map((share) => share * scale), SOMETHING_ELSE_SHARE]);
}

/** Shows how the company's closed faults move the shipped shares; without them the shipped shares are back. */
export function explainPrior(model: FaultModel, known: FaultCase): readonly PriorLine[] {
  const shipped = priorShares(model, { ...known, counts: {} });
  const shares = priorShares(model, known);
  return model.causes.map((cause, index) => ({
    cause: cause.id,
    shipped: shipped[index] ?? 0,
    counted: countOf(cause, known),
    share: shares[index] ?? 0,
  }));
}

function shippedWeight({ appliesTo, prior }: Cause, { unitKind, age }: FaultCase): number {
  if (unitKind !== undefined && !appliesTo.includes(unitKind)) return 0;
  return age === undefined ? (prior.new + prior.mid + prior.old) / 3 : prior[age];
}

function countOf({ id }: Cause, { counts }: FaultCase): number {
  const count = Object.hasOwn(counts, id) ? (counts[id] ?? 0) : 0;
  return count > 0 && Number.isFinite(count) ? count : 0;
}

function siteFactor(cause: string, site: readonly string[]): number {
  const tables: Readonly<Record<string, Readonly<Record<string, number>>>> = SITE_EVIDENCE;
  return site.reduce((factor, fact) => {
    const table = Object.hasOwn(tables, fact) ? tables[fact] : undefined;
    return factor * (table?.[cause] ?? 1);
  }, 1);
}

/** A code that speaks for a cause makes it as many times likelier as its word is than "unlikely". @source judgement */
function hintFactor(cause = "", { hints = {} }: FaultCase): number {
  const level = Object.hasOwn(hints, cause) ? hints[cause] : undefined;
  return level === undefined ? 1 : LEVELS[level] / LEVELS.unlikely;
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
