import type { ChoiceFact } from "../../declaration/facts.ts";
import { foldText } from "../../units/fold-text.ts";
import { normaliseText } from "../../units/normalise-text.ts";
import { readQuantityAt, startsValue } from "../../units/read-quantity.ts";
import type { UnitId } from "../../units/unit-table.ts";
import type { QuantityToken } from "../../units/written-value.ts";
import type { FactWords } from "./fact-words.ts";

/** An option that people name by a number: a pipe of 3/4, a wire rated 75 °C. */
export interface NumberedOption {
  readonly fact: string;
  readonly option: string;
  readonly number: number;
  readonly unit?: UnitId;
}

const ALONE = { decimal: "point", isAlone: true } as const;

/** The options of a fact that are written as a number, with every unit they are written with. */
export function numberOptions(fact: string, spec: ChoiceFact, texts: readonly FactWords[]): readonly NumberedOption[] {
  const written = spec.options.flatMap((option) => {
    const said = texts.flatMap(({ options }) => options?.[option] ?? []);
    return [option, ...said.flatMap(({ label, words }) => [label, ...words])].flatMap((word) => {
      const number = readNumbered(word);
      return number ? [{ fact, option, ...number }] : [];
    });
  });
  // Pipe sizes: a size that is written without its unit is in inches too.
  const areSizes = written.some(({ unit, isFraction }) => unit === "in" || isFraction);
  return written.map(({ isFraction: _, ...option }) => (areSizes ? { unit: "in", ...option } : option));
}

function readNumbered(word: string): (Omit<NumberedOption, "fact" | "option"> & { isFraction: boolean }) | undefined {
  const plain = normaliseText(word);
  const folded = foldText(plain);
  const token = startsValue(folded, 0) ? readQuantityAt(plain, folded, 0, ALONE) : undefined;
  if (token?.end !== plain.length || token.value.form !== "one") return undefined;
  const { number, unit } = token.value;
  return { number: number.value, isFraction: number.isFraction === true, ...(unit && { unit: unit.ids[0] }) };
}

/** The options of one fact that a written value names. */
export function optionsNamed(
  numbered: readonly NumberedOption[],
  fact: string,
  { value }: QuantityToken,
): readonly string[] {
  if (value.form !== "one") return [];
  const units = value.unit?.ids;
  const named = numbered.filter(
    (option) =>
      option.fact === fact &&
      option.number === value.number.value &&
      (units === undefined || (option.unit !== undefined && units.includes(option.unit))),
  );
  return [...new Set(named.map(({ option }) => option))];
}
