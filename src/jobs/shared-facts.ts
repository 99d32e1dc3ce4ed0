import type { Books } from "../books/books.ts";
import type { FactSpec, FactValue, KnownFact, KnownFacts } from "../declaration/facts.ts";
import type { Topic } from "../declaration/topic.ts";
import { findByName, findModel } from "../equipment/find-model.ts";
import type { Job, JobChange, JobFact } from "./job.ts";
import { KEPT_AS, NOT_KEPT, SAME_OPTIONS } from "./shared-facts-table.ts";

/** Two numbers that differ by less than this share were typed as the same: units were changed on the way. */
const SAME_SHARE = 1e-3;
/** Lists whose names may be facts of a house. */
const KEPT_NAMES = ["model", "place"];

/** The id under which a job keeps a fact of a topic. */
export function keptAs(topic: string, fact: string): string {
  return KEPT_AS[topic]?.[fact] ?? fact;
}

/**
 * What a topic need not ask, because the job knows it: facts of the same meaning that fit the topic's own range and
 * options. The planned unit of the job comes before a model that was only asked about.
 */
export function knownFromJob(topic: Topic, job: Job, books: Books): KnownFacts {
  const kept = factsOf(job, books);
  const ofUnit = Object.hasOwn(topic.facts, "model") ? new Map<string, FactValue>() : factsOfUnit(kept, books);
  return Object.fromEntries(
    Object.entries(topic.facts).flatMap(([fact, spec]): [string, KnownFact][] => {
      if (!isKept(fact, spec)) return [];
      const id = keptAs(topic.id, fact);
      const found = kept.get(id);
      const value = found === undefined ? ofUnit.get(id) : fromKept(topic.id, fact, found);
      const from = found === undefined ? "catalogue" : "job";
      return value === undefined || !fits(spec, value) ? [] : [[fact, { value, from }]];
    }),
  );
}

/** What the sheet of the job's unit tells a topic that does not ask for a model. */
function factsOfUnit(kept: ReadonlyMap<string, FactValue>, { catalogue }: Books): ReadonlyMap<string, FactValue> {
  const model = kept.get("model");
  const unit = typeof model === "string" ? findModel(catalogue, model) : undefined;
  if (!unit?.ok) return new Map();
  const [element] = unit.entry.heater.elements;
  return new Map<string, FactValue>([
    ["tank", unit.entry.heater.tank.volume_L],
    ...(element === undefined
      ? []
      : ([
          ["element", element.rated_W],
          ["rated_volts", element.rated_V],
        ] as const)),
  ]);
}

/**
 * What somebody told a topic that the job does not hold yet.
 * @param known what the walk or answer knows; only what was asked for counts
 * @returns nothing when the job holds it all
 */
export function toldToJob(topic: Topic, known: KnownFacts, job: Job, books: Books): JobChange | undefined {
  const kept = factsOf(job, books);
  const told = Object.entries(known).flatMap(([fact, { value, from }]): [string, FactValue][] => {
    const spec = topic.facts[fact];
    if (from !== "asked" || spec === undefined || !isKept(fact, spec)) return [];
    const id = keptAs(topic.id, fact);
    const shared = SAME_OPTIONS[topic.id]?.[fact]?.[String(value)] ?? value;
    return isSame(kept.get(id), shared) ? [] : [[id, shared]];
  });
  return told.length === 0 ? undefined : { kind: "facts", topic: topic.id, facts: Object.fromEntries(told) };
}

/** True when two values of a fact are the same but for what is lost when units are changed. */
export function isSame(one: FactValue | undefined, other: FactValue): boolean {
  if (typeof one !== "number" || typeof other !== "number") return one === other;
  return Math.abs(one - other) <= SAME_SHARE * Math.max(Math.abs(one), Math.abs(other));
}

/** The facts of a job by shared id, the newest of each; what stands under a topic's own name is found too. */
function factsOf(job: Job, { places }: Books): ReadonlyMap<string, FactValue> {
  const newest = new Map<string, JobFact>();
  for (const [id, fact] of Object.entries(job.facts)) {
    const shared = keptAs(fact.topic, id);
    const value = SAME_OPTIONS[fact.topic]?.[id]?.[String(fact.value)] ?? fact.value;
    if ((newest.get(shared)?.at_ms ?? -1) <= fact.at_ms) newest.set(shared, { ...fact, value });
  }
  const values = new Map([...newest].map(([id, { value }]): [string, FactValue] => [id, value]));
  if (job.model !== undefined) values.set("model", job.model);
  const place = findByName(places, job.place);
  if (place.ok && !values.has("place")) values.set("place", place.entry.id);
  return values;
}

function fromKept(topic: string, fact: string, value: FactValue): FactValue {
  const own = Object.entries(SAME_OPTIONS[topic]?.[fact] ?? {}).find(([, shared]) => shared === value);
  return own?.[0] ?? value;
}

/** Own words, days and the names of people and jobs are no facts of a house, nor is what only a guide keeps. */
function isKept(fact: string, spec: FactSpec): boolean {
  if (spec.unlisted === true || NOT_KEPT.includes(fact)) return false;
  if (spec.type === "name") return KEPT_NAMES.includes(spec.of);
  return spec.type !== "text" && spec.type !== "day";
}

function fits(spec: FactSpec, value: FactValue): boolean {
  switch (spec.type) {
    case "quantity":
      return typeof value === "number" && value >= spec.min && value <= spec.max;
    case "choice":
      return spec.options.some((option) => option === value);
    case "flag":
      return typeof value === "boolean";
    case "name":
    case "day":
    case "text":
      return typeof value === "string";
  }
}
