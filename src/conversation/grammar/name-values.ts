import type { UnitSystem } from "../../units/quantity-kinds.ts";
import { fitFact } from "./fit-fact.ts";
import type { Lexeme, ValueLexeme, WordLexeme } from "./lexeme.ts";
import type { TopicWords } from "./topic-words.ts";

/** A value with the facts that the word beside it names; more than one when the word is shared. */
export interface NamedValue {
  readonly value: ValueLexeme;
  readonly word: WordLexeme;
  readonly facts: readonly string[];
  /** False: only a little word such as "to" names it. */
  readonly isFullWord: boolean;
}
interface Edge {
  readonly word: WordLexeme;
  readonly facts: readonly string[];
  readonly side: Side;
  readonly isFullWord: boolean;
  readonly isInRange: boolean;
}
type Side = "before" | "after";
/** A value with the word that may name it from either side. */
interface Place {
  readonly value: ValueLexeme;
  readonly edges: readonly Edge[];
}
interface Segment {
  readonly values: readonly ValueLexeme[];
  /** `gaps[k]` holds the words between value k - 1 and value k. */
  readonly gaps: readonly (readonly WordLexeme[])[];
}

/*
 * How two ways to pair words with values are compared: first the way that leaves fewer words over, then the one within
 * the facts' ranges, then full words before little ones, then the side on which this person puts words elsewhere.
 */
const PAIRED = 100_000;
const IN_RANGE = 10_000;
const FULL_WORD = 1000;
const SAME_SIDE = 100;

/**
 * Pairs each value with the word beside it that names it: "50F cold 140F hot" and "cold 50F hot 140F" alike.
 * Where two ways are equally good, neither is taken.
 */
export function nameValues(lexemes: readonly Lexeme[], words: TopicWords, units: UnitSystem): readonly NamedValue[] {
  const segments = cutSegments(lexemes).map((segment) => findPlaces(segment, words, units));
  const side = usualSide(segments.flat());
  return segments.flatMap((places) => pairPlaces(places, side));
}

function cutSegments(lexemes: readonly Lexeme[]): readonly Segment[] {
  const segments: Segment[] = [];
  let values: ValueLexeme[] = [];
  let gaps: WordLexeme[][] = [[]];
  const close = () => {
    if (values.length > 0) segments.push({ values, gaps });
    values = [];
    gaps = [[]];
  };
  for (const lexeme of lexemes) {
    if (lexeme.kind === "value") {
      values.push(lexeme);
      gaps.push([]);
    } else if (lexeme.kind === "word") {
      if (lexeme.meanings.some(isName)) gaps.at(-1)?.push(lexeme);
    } else close();
  }
  close();
  return segments;
}

function isName({ as }: { readonly as: string }): boolean {
  return as === "fact" || as === "before" || as === "after";
}

function findPlaces({ values, gaps }: Segment, words: TopicWords, units: UnitSystem): readonly Place[] {
  return values.map((value, index) => {
    const before = findEdge((gaps[index] ?? []).toReversed(), value, "before", words, units);
    const after = findEdge(gaps[index + 1] ?? [], value, "after", words, units);
    return { value, edges: [before, after].filter((edge) => edge !== undefined) };
  });
}

/** The word nearest to a value that can name it; further words that agree make it more exact (cold + pipe). */
function findEdge(
  nearestFirst: readonly WordLexeme[],
  value: ValueLexeme,
  side: Side,
  words: TopicWords,
  units: UnitSystem,
): Edge | undefined {
  let edge: Edge | undefined;
  for (const [index, word] of nearestFirst.entries()) {
    const named = word.meanings.flatMap((meaning) =>
      meaning.as === "fact" || (meaning.as === side && index === 0) ? [meaning] : [],
    );
    const fitting = [...new Set(named.map(({ fact }) => fact))].flatMap((fact) => {
      const fit = fitFact(words, fact, value, units);
      return fit ? [{ fact, fit }] : [];
    });
    const shared = edge ? fitting.filter(({ fact }) => edge?.facts.includes(fact)) : fitting;
    if (shared.length === 0) continue;
    const facts = shared.map(({ fact }) => fact);
    const isFullWord = named.some(({ as, fact }) => as === "fact" && facts.includes(fact));
    edge = { word: edge?.word ?? word, facts, side, isFullWord, isInRange: shared.some(({ fit }) => fit.isInRange) };
  }
  return edge;
}

/** The side on which words stand where there is only one way to pair them. */
function usualSide(places: readonly Place[]): Side | undefined {
  const uses = new Map<WordLexeme, Side[]>();
  for (const { edges } of places) for (const { word, side } of edges) uses.set(word, [...(uses.get(word) ?? []), side]);
  const certain = [...uses.values()].flatMap((sides) => (sides.length === 1 ? sides : []));
  const before = certain.filter((side) => side === "before").length;
  const after = certain.length - before;
  if (before === after) return undefined;
  return before > after ? "before" : "after";
}

function pairPlaces(places: readonly Place[], side: Side | undefined): readonly NamedValue[] {
  const one = bestPairing(places, side, "before");
  const other = bestPairing(places, side, "after");
  return places.flatMap(({ value }, index) => {
    const edge = one[index];
    if (edge === undefined || edge !== other[index]) return [];
    const { word, facts, isFullWord } = edge;
    return [{ value, word, facts, isFullWord }];
  });
}

interface Way {
  readonly score: number;
  readonly edge: Edge | undefined;
  readonly earlier: Way | undefined;
}

/** The best choice of an edge for every value, no word used twice; `leaning` only breaks ties. */
function bestPairing(places: readonly Place[], side: Side | undefined, leaning: Side): readonly (Edge | undefined)[] {
  let ways: readonly Way[] = [{ score: 0, edge: undefined, earlier: undefined }];
  for (const { edges } of places) {
    const earlier = ways;
    ways = [undefined, ...edges].flatMap((edge): Way[] => {
      const free = earlier.filter((way) => edge === undefined || way.edge?.word !== edge.word);
      const best = free.reduce<Way | undefined>((a, b) => (a && a.score >= b.score ? a : b), undefined);
      return best ? [{ score: best.score + scoreOf(edge, side, leaning), edge, earlier: best }] : [];
    });
  }
  const chosen: (Edge | undefined)[] = [];
  let way = ways.reduce<Way | undefined>((a, b) => (a && a.score >= b.score ? a : b), undefined);
  for (let index = 0; index < places.length && way; index++, way = way.earlier) chosen.push(way.edge);
  return chosen.reverse();
}

function scoreOf(edge: Edge | undefined, side: Side | undefined, leaning: Side): number {
  if (edge === undefined) return 0;
  return (
    PAIRED +
    (edge.isInRange ? IN_RANGE : 0) +
    (edge.isFullWord ? FULL_WORD : 0) +
    (edge.side === side ? SAME_SIDE : 0) +
    (edge.side === leaning ? 1 : 0)
  );
}
