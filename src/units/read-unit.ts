import { buildPhraseBook, isWordCharacter, matchPhrase, type PhraseBook, plainPhrase } from "./phrase-book.ts";
import { DEGREE_SPELLINGS, describeUnit, UNIT_IDS, type UnitId } from "./unit-table.ts";

/** A unit as it was written: what it means first, then what else it may mean where that cannot be meant. */
export interface WrittenUnit {
  readonly ids: readonly [UnitId, ...UnitId[]];
  /** True: degrees without a letter, so that the reader's own scale is taken. */
  readonly isReaders?: true;
}
export interface UnitMatch {
  readonly unit: WrittenUnit;
  readonly start: number;
  readonly end: number;
}

const DEGREES: WrittenUnit = { ids: ["F", "C", "F_diff", "K"], isReaders: true };
const SPELLINGS: PhraseBook<WrittenUnit> = buildPhraseBook(spellUnits());
/** Units that a smaller one may follow without a gap: 6ft3, 1h30. */
const MAY_HAVE_PARTS: readonly UnitId[] = ["ft", "week", "day", "h", "min"];
const PARTED_SPELLINGS: ReadonlySet<string> = new Set(MAY_HAVE_PARTS.flatMap((unit) => describeUnit(unit).spellings));
const NEXT_FACTOR = /x ?\.?\d/y;

/**
 * Reads the unit behind a number that ends at a place; nothing when no known unit stands there.
 * @param folded the text, folded
 * @param currency a currency sign that stood before the number, or nothing
 */
export function readUnit(folded: string, numberEnd: number, currency = ""): UnitMatch | undefined {
  const start = skipGap(folded, numberEnd);
  const match = matchPhrase(SPELLINGS, folded, start, endsUnit, currency);
  const [unit] = match?.meanings ?? [];
  if (match === undefined || unit === undefined)
    return currency === "" ? undefined : currencyAlone(numberEnd, currency);
  return { unit, start, end: match.end };
}

/** Every spelling of every unit, for naming the one that somebody nearly typed. */
export function unitSpellings(): readonly string[] {
  return UNIT_IDS.flatMap((id) => describeUnit(id).spellings).filter((spelling) => /^\p{L}{3,}$/u.test(spelling));
}

/** True for a word that is a unit in some spelling. */
export function isUnitWord(word: string): boolean {
  return SPELLINGS.meanings.has(plainPhrase(word));
}

function currencyAlone(end: number, currency: string): UnitMatch | undefined {
  const [unit] = SPELLINGS.meanings.get(currency) ?? [];
  return unit && { unit, start: end, end };
}

/** One space or one hyphen may stand between a number and its unit: 80 gal, 80-gal. */
function skipGap(folded: string, at: number): number {
  const character = folded.charAt(at);
  return character === " " || (character === "-" && isWordCharacter(folded.charAt(at + 1))) ? at + 1 : at;
}

function endsUnit(folded: string, end: number): boolean {
  const last = folded.charAt(end - 1);
  const next = folded.charAt(end);
  if (last === "'") return next !== "'" && (!/\p{L}/u.test(next) || isAt(NEXT_FACTOR, folded, end));
  if (!isWordCharacter(last)) return true;
  if (next >= "0" && next <= "9") return endsPartedUnit(folded, end);
  if (next === "/") return endsBeforeSlash(folded, end);
  return next !== "_" && (!isWordCharacter(next) || isAt(NEXT_FACTOR, folded, end));
}

/** "140F/120F" are two values; "120 w/ 50" is "with", and "5 gal/flush" is no volume. */
function endsBeforeSlash(folded: string, end: number): boolean {
  const behind = folded.charAt(end + 1);
  if (behind >= "0" && behind <= "9") return true;
  return !isWordCharacter(behind) && isWordCharacter(folded.charAt(end - 2));
}

/** True when the letters just before `end` are a unit that a smaller one may follow at once. */
function endsPartedUnit(folded: string, end: number): boolean {
  let start = end;
  while (start > 0 && /\p{L}/u.test(folded.charAt(start - 1))) start--;
  return PARTED_SPELLINGS.has(folded.slice(start, end));
}

function isAt(pattern: RegExp, text: string, at: number): boolean {
  pattern.lastIndex = at;
  return pattern.test(text);
}

function spellUnits(): readonly (readonly [string, WrittenUnit])[] {
  const meant = new Map<string, UnitId[]>();
  const say = (spelling: string, id: UnitId) => {
    const plain = plainPhrase(spelling);
    const ids = meant.get(plain) ?? [];
    if (!ids.includes(id)) meant.set(plain, [...ids, id]);
  };
  const named = UNIT_IDS.filter((id) => describeUnit(id).symbol !== "");
  for (const id of named) for (const spelling of [...describeUnit(id).spellings, id]) say(spelling, id);
  for (const id of named) for (const spelling of describeUnit(id).alsoSpelt ?? []) say(spelling, id);
  const spelt = [...meant].flatMap(([spelling, [first, ...rest]]): [string, WrittenUnit][] =>
    first === undefined ? [] : [[spelling, { ids: [first, ...rest] }]],
  );
  return [...spelt, ...DEGREE_SPELLINGS.map((spelling): [string, WrittenUnit] => [spelling, DEGREES])];
}
