import type { FactValue, KnownFact } from "../../declaration/facts.ts";
import type { UnitId } from "../../units/unit-table.ts";
import type { ParsedRequest, RequestProblem, UnitReading } from "./parsed-request.ts";

/** A message can be long; a card that lists more problems than this is not read. */
const MOST_PROBLEMS = 8;

/** What a request has told so far. Lives only while one request is read. */
export interface Notebook {
  readonly facts: Map<string, KnownFact>;
  readonly readings: Map<string, UnitReading>;
  readonly problems: RequestProblem[];
  /** Facts that were told, well or badly; they are not filled from unnamed values. */
  readonly told: Set<string>;
}

export function openNotebook(): Notebook {
  return { facts: new Map(), readings: new Map(), problems: [], told: new Set() };
}

/** Notes a value for a fact; a second, different value cancels both. */
export function noteFact(notebook: Notebook, fact: string, value: FactValue, typed: string, readAs?: UnitId): void {
  const known = notebook.facts.get(fact);
  if (known ? known.value === value : notebook.told.has(fact)) return;
  if (known) {
    noteProblem(notebook, { kind: "twice", fact });
    return;
  }
  notebook.told.add(fact);
  notebook.facts.set(fact, { value, from: "asked", typed });
  if (readAs !== undefined) notebook.readings.set(fact, { fact, typed, readAs });
}

/** True when no further problem would be kept. */
export function isFull(notebook: Notebook): boolean {
  return notebook.problems.length >= MOST_PROBLEMS;
}

/** Notes what stands in the way; about a fact, only the first problem is kept. */
export function noteProblem(notebook: Notebook, problem: RequestProblem): void {
  if (problem.kind === "bad-value" || problem.kind === "twice") {
    if (notebook.problems.some((other) => "fact" in other && other.fact === problem.fact)) return;
    notebook.told.add(problem.fact);
    notebook.facts.delete(problem.fact);
    notebook.readings.delete(problem.fact);
  }
  if (!isFull(notebook)) notebook.problems.push(problem);
}

/** What the notebook holds, as the answer of the parser. */
export function closeNotebook(notebook: Notebook, topic: string): ParsedRequest {
  return {
    topic,
    facts: Object.fromEntries(notebook.facts),
    problems: notebook.problems,
    readings: [...notebook.readings.values()],
  };
}
