import type { Books } from "../books/books.ts";
import { type AnyCaution, raiseCautions } from "../cautions/caution.ts";
import { QUANTITY_KINDS } from "../units/quantity-kinds.ts";
import type { Answered, NeedsFacts, OutOfRange } from "./answer.ts";
import type { Assumption, FactSpec, FactValue, KnownFact, KnownFacts } from "./facts.ts";
import type { ReportProgress, Topic } from "./topic.ts";

/** Answers one topic from what is known: asks for what is missing, refuses what is out of range, assumes defaults. */
export function runTopic(
  topic: Topic,
  known: KnownFacts,
  books: Books,
  cautions: readonly AnyCaution[],
  report: ReportProgress,
): Answered {
  const facts = assumeDefaults(topic, known);
  const refused = findMissing(topic, facts) ?? findOutOfRange(topic, facts);
  if (refused) return { topic: topic.id, facts, result: refused, cautions: [] };
  // The declaration ties `facts` to `compute`; that tie was erased with the types, and is kept by the checks above.
  const complete = nameWithUnits(topic, facts) as never;
  const result = topic.compute(complete, books, report);
  const raised = result.kind === "answer" && topic.site ? raiseCautions(cautions, topic.site(complete, books)) : [];
  const counted = result.kind === "answer" ? withAssumptions(topic, facts, result.assumed ?? {}) : facts;
  return { topic: topic.id, facts: counted, result, cautions: raised };
}

/** The facts of a topic that must still be asked for, in the order of its declaration. */
export function missingFacts(topic: Topic, known: KnownFacts): readonly string[] {
  return Object.entries(topic.facts)
    .filter(([id, spec]) => known[id] === undefined && isNeeded(spec, (other) => known[other] !== undefined))
    .map(([id]) => id);
}

/** True when a fact must be told: nothing can be assumed for it, and nothing that is known excuses it. */
export function isNeeded(spec: FactSpec, isKnown: (fact: string) => boolean): boolean {
  if (spec.default !== undefined || spec.optional === true) return false;
  return spec.unless === undefined || !isKnown(spec.unless);
}

/** The identifier under which `compute` receives a fact: `tank` of kind volume is `tank_L`. */
export function nameWithUnit(id: string, spec: FactSpec): string {
  const base = spec.type === "quantity" ? QUANTITY_KINDS[spec.quantity].base : "";
  return base === "" ? id : `${id}_${base}`;
}

function assumeDefaults(topic: Topic, known: KnownFacts): KnownFacts {
  const own = Object.entries(topic.facts).flatMap(([id, spec]): [string, KnownFact][] => {
    const told = known[id];
    if (told !== undefined) return [[id, told]];
    return spec.default === undefined ? [] : [[id, { value: spec.default.value, from: "assumed" }]];
  });
  return Object.fromEntries(own);
}

function withAssumptions(topic: Topic, facts: KnownFacts, assumed: Readonly<Record<string, Assumption>>): KnownFacts {
  const all = Object.keys(topic.facts).flatMap((id): [string, KnownFact][] => {
    const told = facts[id];
    if (told !== undefined) return [[id, told]];
    const taken = assumed[id];
    return taken === undefined ? [] : [[id, { value: taken.value, from: "assumed" }]];
  });
  return Object.fromEntries(all);
}

function findMissing(topic: Topic, facts: KnownFacts): NeedsFacts | undefined {
  const [first, ...rest] = missingFacts(topic, facts);
  return first === undefined ? undefined : { kind: "needs-facts", missing: [first, ...rest] };
}

function findOutOfRange(topic: Topic, facts: KnownFacts): OutOfRange | undefined {
  for (const [fact, spec] of Object.entries(topic.facts)) {
    const value = facts[fact]?.value;
    if (value === undefined || spec.type !== "quantity" || typeof value !== "number") continue;
    if (!(value >= spec.min && value <= spec.max))
      return { kind: "out-of-range", fact, value: { kind: spec.quantity, value }, min: spec.min, max: spec.max };
  }
  return undefined;
}

function nameWithUnits(topic: Topic, facts: KnownFacts): Readonly<Record<string, FactValue>> {
  return Object.fromEntries(
    Object.entries(topic.facts).flatMap(([id, spec]) => {
      const known = facts[id];
      return known === undefined ? [] : [[nameWithUnit(id, spec), known.value]];
    }),
  );
}
