import type { AgeBand, Doer, Level, UnitKind } from "./knowledge.ts";

/** Everything that is known of one fault. It is never changed in place, so that whatever follows from it can be redone. */
export interface FaultCase {
  /** Left out when nobody knows. */
  readonly unitKind?: UnitKind;
  readonly age?: AgeBand;
  /** What the season, the site and the job record say, by the ids of `site-evidence-table.ts`. */
  readonly site: readonly string[];
  /** What was seen before the fault, such as at start-up; it may have changed since, so it counts for less. */
  readonly record: readonly Observation[];
  readonly asker: Asker;
  /** How strongly a code on the display speaks for causes. */
  readonly hints?: Readonly<Record<string, Level>>;
  /** How often this company found each cause. */
  readonly counts: Readonly<Record<string, number>>;
  /** What was said and done, in order; the trail for the job record. */
  readonly steps: readonly Step[];
}

/** Who asks: what the record lets them do, and the tools at hand. */
export interface Asker {
  readonly doers: readonly Doer[];
  /** Left out when nobody knows: then every tool counts as at hand. */
  readonly tools?: readonly string[];
}

export type Step =
  | ComplaintStep
  | Observation
  /** "Not sure" says nothing, and "can't do that" neither; neither check is proposed again. */
  | { readonly kind: "not_sure" | "cannot"; readonly check: string }
  /** The remedy of this cause was carried out and the fault is still there. */
  | TriedStep
  /** The stop line of this symptom was read and followed. */
  | { readonly kind: "acknowledged"; readonly symptom: string }
  /** What must be seen to before this check was seen to. */
  | { readonly kind: "prepared"; readonly check: string };

export interface ComplaintStep {
  readonly kind: "complaint";
  readonly symptom: string;
  /** False for "it is not leaking". */
  readonly isThere: boolean;
}

/** What a check showed: an outcome that was picked, or a reading with what it should have been. */
export type Observation =
  | { readonly kind: "outcome"; readonly check: string; readonly outcome: string }
  | {
      readonly kind: "reading";
      readonly check: string;
      /** In the base unit of the reading's quantity, both. */
      readonly value: number;
      readonly expected: number;
    };

export interface TriedStep {
  readonly kind: "tried";
  readonly cause: string;
  /** The complaints that are still there; left out when all of them are. */
  readonly remaining?: readonly string[];
}

/** A case in which nothing has been said yet. */
export function openCase(asker: Asker, known: Partial<Omit<FaultCase, "asker" | "steps">> = {}): FaultCase {
  return { site: [], record: [], counts: {}, ...known, asker, steps: [] };
}

export function addSteps(known: FaultCase, ...steps: readonly Step[]): FaultCase {
  return { ...known, steps: [...known.steps, ...steps] };
}

/** The case as it was before the last step; the case itself when there is none. */
export function undoStep(known: FaultCase): FaultCase {
  return known.steps.length === 0 ? known : { ...known, steps: known.steps.slice(0, -1) };
}

export function isObservation(step: Step): step is Observation {
  return step.kind === "outcome" || step.kind === "reading";
}
