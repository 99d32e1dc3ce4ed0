import { type Books, codeAt } from "../books/books.ts";
import { type AnyCaution, raiseCautions, silencedCautions } from "../cautions/caution.ts";
import { QUANTITY_KINDS } from "../units/quantity-kinds.ts";
import type { Answered, NeedsFacts, OutOfRange } from "./answer.ts";
import type { Assumption, FactSpec, FactValue, KnownFact, KnownFacts } from "./facts.ts";
import type { PartsDone, ReportProgress, Topic } from "./topic.ts";

/**
 * Answers one topic from what is known: asks for what is missing, refuses what is out of range, assumes defaults. Work
 * that falls into parts is done here, one part after another, unless what they came to is given as `done`.
 */
export function runTopic(
  topic: Topic,
  known: KnownFacts,
  books: Books,
  cautions: readonly AnyCaution[],
  report: ReportProgress,
  done: PartsDone = runAllParts(topic, known, books, report),
): Answered {
  const facts = assumeDefaults(topic, known);
  const refused = refuse(topic, facts) ?? askOn(topic, facts, books);
  if (refused) return { topic: topic.id, facts, result: refused, cautions: [] };
  // The declaration ties `facts` to `compute`; that tie was erased with the types, and is kept by the checks above.
  const complete = nameWithUnits(topic, facts) as never;
  const result = topic.compute(complete, books, report, done as never);
  if (result.kind !== "answer") return { topic: topic.id, facts, result, cautions: [] };
  const site = topic.site?.(complete, books, done as never) ?? {};
  const code = codeAt(books, facts["place"]?.value);
  const raised = raiseCautions(cautions, site, code);
  const counted = withAssumptions(topic, facts, result.assumed ?? {});
  const answered = { topic: topic.id, facts: counted, cautions: raised };
  if (topic.conclude === undefined) return { ...answered, result };
  const silenced = silencedCautions(cautions, site, code);
  return { ...answered, result: topic.conclude(result as never, raised, silenced), silenced };
}

/** How many parts the round after these has; none for work without parts, and for facts that cannot be worked with. */
export function countParts(topic: Topic, known: KnownFacts, books: Books, done: PartsDone): number {
  const { parts } = topic;
  const facts = assumeDefaults(topic, known);
  if (parts === undefined || done.length >= parts.rounds || refuse(topic, facts)) return 0;
  return parts.count(nameWithUnits(topic, facts) as never, books, done as never);
}

/** Runs one part of the round after these. */
export function runPart(topic: Topic, known: KnownFacts, books: Books, done: PartsDone, part: number): unknown {
  if (topic.parts === undefined) throw new Error(`the work of ${topic.id} does not fall into parts`);
  return topic.parts.run(nameWithUnits(topic, assumeDefaults(topic, known)) as never, books, done as never, part);
}

/** Tells how far work in parts is, in hundredths: the last round of `done` is open, and has `count` parts in all. */
export function reportParts(
  topic: Topic,
  known: KnownFacts,
  books: Books,
  done: PartsDone,
  count: number,
  report: ReportProgress,
): void {
  const { parts } = topic;
  if (parts === undefined) return;
  const share = (done.length - 1 + (done.at(-1)?.length ?? 0) / count) / parts.rounds;
  const facts = nameWithUnits(topic, assumeDefaults(topic, known)) as never;
  report(Math.round(100 * share), 100, parts.preview(facts, books, done as never));
}

function runAllParts(topic: Topic, known: KnownFacts, books: Books, report: ReportProgress): PartsDone {
  const done: unknown[][] = [];
  for (;;) {
    const count = countParts(topic, known, books, done);
    if (count === 0) return done;
    const round: unknown[] = [];
    for (let part = 0; part < count; part += 1) {
      round.push(runPart(topic, known, books, done, part));
      reportParts(topic, known, books, [...done, round], count, report);
    }
    done.push(round);
  }
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
  const own = specsInOrder(topic, known).flatMap(([id, spec]): [string, KnownFact][] => {
    const told = known[id];
    if (told !== undefined) return [[id, told]];
    return spec.default === undefined ? [] : [[id, { value: spec.default.value, from: "assumed" }]];
  });
  return Object.fromEntries(own);
}

function withAssumptions(topic: Topic, facts: KnownFacts, assumed: Readonly<Record<string, Assumption>>): KnownFacts {
  const all = specsInOrder(topic, facts).flatMap(([id]): [string, KnownFact][] => {
    const told = facts[id];
    if (told !== undefined) return [[id, told]];
    const taken = assumed[id];
    return taken === undefined ? [] : [[id, { value: taken.value, from: "assumed" }]];
  });
  return Object.fromEntries(all);
}

/** A guided topic is answered when its guide has no more to ask. */
function askOn({ guide }: Topic, facts: KnownFacts, books: Books): NeedsFacts | undefined {
  const next = guide?.next(facts, books);
  return next && { kind: "needs-facts", missing: [next.fact] };
}

function refuse(topic: Topic, facts: KnownFacts): NeedsFacts | OutOfRange | undefined {
  return findMissing(topic, facts) ?? findOutOfRange(topic, facts);
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
    specsInOrder(topic, facts).flatMap(([id, spec]) => {
      const known = facts[id];
      return known === undefined ? [] : [[nameWithUnit(id, spec), known.value]];
    }),
  );
}

/** The facts as they are declared; where a guide asks, as they were told, because there the order says something. */
function specsInOrder({ facts, guide }: Topic, known: KnownFacts): readonly (readonly [string, FactSpec])[] {
  const declared = Object.entries(facts);
  if (guide === undefined) return declared;
  const told = Object.keys(known).flatMap((id): [string, FactSpec][] => {
    const spec = facts[id];
    return spec === undefined ? [] : [[id, spec]];
  });
  return [...told, ...declared.filter(([id]) => known[id] === undefined)];
}

/** The facts of a topic that people are shown; what only a guide asks for is left out. */
export function listedFacts({ facts }: Topic): readonly string[] {
  return Object.keys(facts).filter((id) => facts[id]?.unlisted !== true);
}
