import type { Books, NameLists } from "../books/books.ts";
import { parseRequest } from "../conversation/grammar/parse-request.ts";
import type { Finding, FindingDatum } from "../declaration/answer.ts";
import type { FactSpec, FactValue, KnownFact } from "../declaration/facts.ts";
import type { Source } from "../declaration/source.ts";
import { citeSource } from "../declaration/source.ts";
import type { Topic } from "../declaration/topic.ts";
import type { Library, LibraryTexts } from "../library.ts";
import { fromBase } from "../units/convert.ts";
import type { Quantity, UnitSystem } from "../units/quantity-kinds.ts";
import { readersUnit } from "../units/unit-table.ts";
import type { CommonTexts } from "./common-texts.ts";
import { common as en } from "./en/common.ts";
import { common as es } from "./es/common.ts";
import { formatQuantity, writeQuantity } from "./format-quantity.ts";
import type { Language } from "./language.ts";
import type { AnyTopicTexts, FactTexts, OptionTexts } from "./topic-texts.ts";

/** Who reads: what every formatted number and sentence depends on. */
export interface Reader {
  readonly language: Language;
  readonly units: UnitSystem;
}

/** Everything that is needed to say something to one reader. */
export interface Voice {
  readonly language: Language;
  readonly units: UnitSystem;
  readonly common: CommonTexts;
  readonly library: Library;
  readonly topics: ReadonlyMap<string, Topic>;
  readonly texts: LibraryTexts;
  /** Names of the company's books, offered as buttons. */
  readonly names?: NameLists;
  /** The books, where a guided topic may be asked what comes next. */
  readonly books?: Books;
}
/** One topic with its sentences in the reader's language. */
export interface TopicVoice extends Voice {
  readonly topic: Topic;
  readonly words: AnyTopicTexts;
}
/** A fact of a topic: its declaration and its words. */
export interface FactVoice {
  readonly id: string;
  readonly spec: FactSpec;
  readonly words: FactTexts & { readonly options?: Readonly<Record<string, OptionTexts>> };
}

/** The sentences of both languages that belong to no topic. */
export const COMMON: Readonly<Record<Language, CommonTexts>> = { en, es };

export function voiceFor(library: Library, { language, units }: Reader): Voice {
  const { topics, texts } = library;
  return { language, units, common: COMMON[language], library, topics, texts: texts[language] };
}

/** The topic's requests to try; for a reader of other units only those whose numbers all have theirs. */
export function examplesOf(voice: Voice, topicId: string): readonly string[] {
  const { language, units, library } = voice;
  const examples = voice.texts.topics.get(topicId)?.examples ?? [];
  if (units === "us") return examples;
  const complete = examples.filter((text) => parseRequest(text, library, { language, units }).readings.length === 0);
  return complete.length === 0 ? examples : complete;
}

/** Narrows a voice to one topic; a topic without its sentences is a mistake of ours. */
export function speakOf(voice: Voice, topicId: string): TopicVoice {
  const topic = voice.topics.get(topicId);
  const words = voice.texts.topics.get(topicId);
  if (topic === undefined || words === undefined) throw new Error(`nothing is known of the topic ${topicId}`);
  return { ...voice, topic, words };
}

/** A fact of the topic by its id; an unknown id is a mistake of ours. */
export function factOf({ topic, words }: TopicVoice, id: string): FactVoice {
  const spec = Object.hasOwn(topic.facts, id) ? topic.facts[id] : undefined;
  const factWords = words.facts[id];
  if (spec === undefined || factWords === undefined) throw new Error(`${topic.id} has no fact ${id}`);
  return { id, spec, words: factWords };
}

export function showQuantity(voice: Voice, quantity: Quantity): string {
  return formatQuantity(quantity, voice.units, voice.language);
}

/** The value of a fact as the reader reads it. */
export function showValue(voice: Voice, fact: FactVoice, value: FactValue): string {
  if (typeof value === "number")
    return fact.spec.type === "quantity" ? showQuantity(voice, { kind: fact.spec.quantity, value }) : String(value);
  if (typeof value === "boolean") return value ? voice.common.yes : voice.common.no;
  if (fact.spec.type === "day") return showDay(voice, value);
  if (fact.spec.type === "name" && isNamed(fact.spec.of)) return showName(voice, fact.spec.of, value);
  return fact.words.options?.[value]?.label ?? value;
}

const NAMED = ["person", "anybody", "place"] as const;
type Named = (typeof NAMED)[number];

function isNamed(of: string): of is Named {
  return NAMED.some((one) => one === of);
}

/** People and places by their names; everything else of the books goes by its id. */
function showName({ books }: Voice, of: Named, id: string): string {
  const named: readonly { readonly id: string; readonly name: string }[] =
    (of === "place" ? books?.places : books?.people) ?? [];
  return named.find((one) => one.id === id)?.name ?? id;
}

/** The value of a fact as it can be typed back. */
export function writeValue(voice: Voice, fact: FactVoice, value: FactValue): string {
  if (typeof value === "number" && fact.spec.type === "quantity")
    return writeQuantity({ kind: fact.spec.quantity, value }, voice.units);
  if (typeof value === "boolean") return value ? voice.common.yes : voice.common.no;
  return fact.words.options?.[value.toString()]?.label ?? String(value);
}

/** Puts a finding into words. */
export function sayFinding(voice: TopicVoice, finding: Finding): string {
  const say = voice.words.findings[finding.code];
  if (say === undefined) throw new Error(`${voice.topic.id} has no sentence for ${finding.code}`);
  const kinds = voice.topic.findings[finding.code] ?? {};
  const data = Object.entries(finding.data).map(([field, datum]): [string, string] => [
    field,
    kinds[field] === "fact" && typeof datum === "string" ? nameFacts(voice, datum) : showDatum(voice, datum),
  ]);
  return say(Object.fromEntries(data));
}

function nameFacts(voice: TopicVoice, ids: string): string {
  return ids
    .split(",")
    .map((id) => factOf(voice, id).words.label)
    .join(", ");
}

export function showDatum(voice: Voice, datum: FindingDatum): string {
  return typeof datum === "string" ? datum : showQuantity(voice, datum);
}

/** Names a source and says in words how sure we are of it. */
export function saySource(voice: Voice, source: Source): string {
  return voice.common.source(citeSource(source), voice.common.basis[source.basis]);
}

/** Where a default comes from: a title that can be looked up, else only the word for how sure it is. */
export function sayDefaultSource(voice: Voice, source: Source): string {
  const hasTitle = source.basis === "published" || source.basis === "computed";
  return hasTitle ? saySource(voice, source) : voice.common.basis[source.basis];
}

/** A number without a unit, or degrees without their letter. */
const BARE = /^[\s\d.,/+-]+(°|degs?|degrees?|grados?)?\s*$/i;

/**
 * True when a person typed a bare number for a quantity that has a unit, so that it must be said how it was read. In
 * other units than those it was typed in, the number would not be found again, and nothing is said.
 */
export function wasReadAs(voice: Voice, fact: FactVoice, known: KnownFact): boolean {
  const { typed, value } = known;
  if (typed === undefined || fact.spec.type !== "quantity" || typeof value !== "number") return false;
  if (!BARE.test(typed) || ["count", "ratio"].includes(fact.spec.quantity)) return false;
  const shown = fromBase(value, readersUnit(fact.spec.quantity, voice.units));
  const number = typed.replace(/[^\d.,/+-]/g, "");
  const readings = [number.replaceAll(",", ""), number.replace(",", ".")].map(Number);
  const isTyped = (reading: number) => Number.isNaN(reading) || Math.abs(reading - shown) <= 1e-6 * Math.abs(shown);
  return readings.some(isTyped);
}

/** A day as it is read: its month by name. What is no day is shown as it is. */
export function showDay(voice: Voice, day: string): string {
  const [, year, month, date] = /^(\d{4})-(\d{2})-(\d{2})$/.exec(day) ?? [];
  const name = voice.common.months[Number(month) - 1];
  return name === undefined || year === undefined ? day : voice.common.day(year, name, String(Number(date)));
}
