import type { DatumKind, FindingSpecs } from "../declaration/answer.ts";
import type { FactSpec, FactSpecs } from "../declaration/facts.ts";

/** The words of one fact: how it is named, asked and recognised in a request. */
export interface FactTexts {
  readonly label: string;
  readonly question: string;
  readonly help?: string;
  /** Words that name it when typed next to a value: "cold", "incoming". Lower case, longest first not needed. */
  readonly words: readonly string[];
  /** Little words that name it only when they stand just before a value: "to 120" in a mixing request. */
  readonly before?: readonly string[];
  /** Little words that name it only when they stand just after a value: "50 in". */
  readonly after?: readonly string[];
  /** True: the first bare number of a request is this fact. */
  readonly first?: true;
}
export interface OptionTexts {
  readonly label: string;
  readonly words: readonly string[];
}
type FactTextsOf<F extends FactSpec> = F extends { type: "choice"; options: readonly (infer O extends string)[] }
  ? FactTexts & { readonly options: Readonly<Record<O, OptionTexts>> }
  : FactTexts;

/** Data of a finding as a sentence gets it: every quantity already formatted for the reader. */
export type Worded<D extends Readonly<Record<string, DatumKind>>> = { readonly [K in keyof D]: string };

interface TopicShape {
  readonly id: string;
  readonly facts: FactSpecs;
  readonly results: readonly string[];
  readonly findings: FindingSpecs;
  readonly tables?: Readonly<Record<string, readonly string[]>>;
  readonly charts?: Readonly<Record<string, readonly string[]>>;
}

type Columns<T> =
  T extends Readonly<Record<string, readonly string[]>>
    ? { readonly [I in keyof T]: { readonly title: string; readonly columns: Readonly<Record<T[I][number], string>> } }
    : Readonly<Record<string, never>>;

/** All sentences of one topic in one language. A sentence that is missing or misnamed does not compile. */
export interface TopicTexts<T extends TopicShape> {
  readonly title: string;
  /** Other words that open the topic in this language, besides its id and what its title and examples begin with. */
  readonly names?: readonly string[];
  /** One line: what it answers. */
  readonly summary: string;
  /** Requests to try; each must parse and be answered. */
  readonly examples: readonly [string, ...string[]];
  readonly facts: { readonly [I in keyof T["facts"] & string]: FactTextsOf<T["facts"][I]> };
  readonly results: Readonly<Record<T["results"][number], string>>;
  readonly findings: { readonly [C in keyof T["findings"]]: (data: Worded<T["findings"][C]>) => string };
  readonly tables?: Columns<NonNullable<T["tables"]>>;
  readonly charts?: Columns<NonNullable<T["charts"]>>;
}

/**
 * A sentence with its own data type erased. Written as a method so that each sentence may name just the fields it uses;
 * the declarations that they are made from keep the names right.
 */
type Sentence = { say(data: Readonly<Record<string, string>>): string }["say"];

/** The same with its own types erased. */
export interface AnyTopicTexts {
  readonly title: string;
  readonly names?: readonly string[];
  readonly summary: string;
  readonly examples: readonly [string, ...string[]];
  readonly facts: Readonly<Record<string, FactTexts & { readonly options?: Readonly<Record<string, OptionTexts>> }>>;
  readonly results: Readonly<Record<string, string>>;
  readonly findings: Readonly<Record<string, Sentence>>;
  readonly tables?: Readonly<Record<string, TitledColumns>>;
  readonly charts?: Readonly<Record<string, TitledColumns>>;
}
interface TitledColumns {
  readonly title: string;
  readonly columns: Readonly<Record<string, string>>;
}

/** The sentences of one caution in one language. */
export interface CautionTexts<D extends Readonly<Record<string, DatumKind>>> {
  /** What it asks, in our own words, after what these facts show. */
  readonly ask: (data: Worded<D>) => string;
  /** How to show on site that it is met: look, measure, photograph. */
  readonly show: string;
}
export interface AnyCautionTexts {
  readonly ask: Sentence;
  readonly show: string;
}
