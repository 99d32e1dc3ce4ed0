import type { FactValue } from "../../declaration/facts.ts";
import { chooseReading, fitQuantity } from "../../units/fit-quantity.ts";
import type { UnitSystem } from "../../units/quantity-kinds.ts";
import type { UnitId } from "../../units/unit-table.ts";
import type { ValueLexeme } from "./lexeme.ts";
import { optionsNamed } from "./numbered-options.ts";
import type { TopicWords } from "./topic-words.ts";

/** How a written value would be taken for one fact. */
export interface FactFit {
  readonly closeness: "natural" | "possible" | "bare";
  readonly isInRange: boolean;
  /** Nothing when it can be read two ways. */
  readonly value: FactValue | undefined;
  readonly readAs?: UnitId;
}

/** Takes a value for a fact; nothing when it is not of its kind. */
export function fitFact(
  words: TopicWords,
  fact: string,
  { token, day }: ValueLexeme,
  units: UnitSystem,
): FactFit | undefined {
  const spec = words.facts[fact];
  if (day !== undefined)
    return spec?.type === "day" ? { closeness: "natural", isInRange: true, value: day } : undefined;
  if (spec?.type === "choice") {
    const [option, ...others] = optionsNamed(words.numbered, fact, token);
    if (option === undefined || others.length > 0 || token.value.form !== "one") return undefined;
    const isPlain = token.value.unit === undefined && token.value.number.isFraction !== true;
    return { closeness: isPlain ? "bare" : "natural", isInRange: true, value: option };
  }
  if (spec?.type !== "quantity") return undefined;
  const fit = fitQuantity(token, spec.quantity, units);
  if (!fit.ok) return undefined;
  const { closeness } = fit;
  const reading = chooseReading(fit, spec);
  if (reading === undefined) return { closeness, isInRange: true, value: undefined };
  const isInRange = reading.value >= spec.min && reading.value <= spec.max;
  return { closeness, isInRange, ...reading };
}

const CLOSEST_FIRST = ["natural", "possible", "bare"] as const;

/**
 * The facts that a value without a name may be: of those that fit, only the ones that fit most closely. Facts that are
 * only ever named are left out, unless nothing else fits, so that they can be offered.
 */
export function closestFacts(words: TopicWords, value: ValueLexeme, units: UnitSystem): readonly FittingFact[] {
  const fitting = fittingFacts(words, value, units);
  const open = fitting.filter(({ fact }) => words.facts[fact]?.byNameOnly !== true);
  const offered = open.length > 0 ? open : fitting;
  const closest = CLOSEST_FIRST.find((closeness) => offered.some(({ fit }) => fit.closeness === closeness));
  return offered.filter(({ fit }) => fit.closeness === closest);
}

/** The facts that this value could be if it were named: only ever by name, and of its very kind. */
export function factsByName(words: TopicWords, value: ValueLexeme, units: UnitSystem): readonly FittingFact[] {
  return fittingFacts(words, value, units).filter(
    ({ fact, fit }) => words.facts[fact]?.byNameOnly === true && fit.closeness === "natural",
  );
}

function fittingFacts(words: TopicWords, value: ValueLexeme, units: UnitSystem): readonly FittingFact[] {
  return Object.keys(words.facts).flatMap((fact): FittingFact[] => {
    const fit = fitFact(words, fact, value, units);
    return fit ? [{ fact, fit }] : [];
  });
}

export interface FittingFact {
  readonly fact: string;
  readonly fit: FactFit;
}

/** Facts worth offering for a value: those whose range it is in, else all of them. */
export function narrowToRange(facts: readonly FittingFact[]): readonly string[] {
  const inRange = facts.filter(({ fit }) => fit.isInRange);
  return (inRange.length > 0 ? inRange : facts).map(({ fact }) => fact);
}
