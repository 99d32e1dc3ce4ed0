import type { Lexeme, WordLexeme } from "./lexeme.ts";
import { type Notebook, noteFact, noteProblem } from "./notebook.ts";
import type { Meaning, TopicWords } from "./topic-words.ts";

/** Notes every flag and option that stands as a word of its own: "closed", "no mixing valve", "copper". */
export function readFlagsAndOptions(
  lexemes: readonly Lexeme[],
  used: ReadonlySet<WordLexeme>,
  words: TopicWords,
  notebook: Notebook,
): void {
  let lastDenial: WordLexeme | undefined;
  for (const [index, lexeme] of lexemes.entries()) {
    if (lexeme.kind !== "word" || isMeant(lexeme, "or")) continue;
    const flags = used.has(lexeme) ? [] : factsNamed(lexeme).filter((fact) => words.facts[fact]?.type === "flag");
    // "no valve or tank" denies both.
    const denial = isMeant(lexemes[index - 1], "or") ? lastDenial : denialOf(lexemes, index);
    if (flags.length > 0) noteFlag(lexeme, flags, denial, notebook);
    else noteOption(lexemes, index, lexeme, words, notebook);
    lastDenial = denial;
  }
}

function noteFlag(
  word: WordLexeme,
  flags: readonly string[],
  denial: WordLexeme | undefined,
  notebook: Notebook,
): void {
  const open = flags.filter((fact) => !notebook.told.has(fact));
  const [fact, ...others] = open.length > 0 ? open : flags;
  if (fact === undefined) return;
  if (others.length > 0) noteProblem(notebook, { kind: "ambiguous", typed: word.text, candidates: [fact, ...others] });
  else noteFact(notebook, fact, denial === undefined, denial ? typedWith(denial, word) : word.text);
}

/** The word that denies the one at an index: just before it or just behind it. */
function denialOf(lexemes: readonly Lexeme[], index: number): WordLexeme | undefined {
  const before = lexemes[index - 1];
  if (isMeant(before, "not")) return before;
  const behind = lexemes[index + 1];
  if (!isMeant(behind, "no")) return undefined;
  // "closed, no mixing valve": the "no" belongs to what follows it.
  const next = lexemes[index + 2];
  return next?.kind === "word" && next.meanings.some(({ as }) => as === "fact" || as === "option") ? undefined : behind;
}

function noteOption(
  lexemes: readonly Lexeme[],
  index: number,
  word: WordLexeme,
  words: TopicWords,
  notebook: Notebook,
): void {
  const meant = word.meanings.flatMap((meaning) => (meaning.as === "option" ? [meaning] : []));
  const beside = [lexemes[index - 1], lexemes[index + 1]].flatMap((other) =>
    other?.kind === "word" ? factsNamed(other) : [],
  );
  const named = meant.filter(({ fact }) => beside.includes(fact));
  const loose = meant.filter(({ fact }) => words.facts[fact]?.byNameOnly !== true);
  const open = loose.filter(({ fact }) => !notebook.told.has(fact));
  // A word that also means something else is an option only beside its fact's name: "none", or the option "tank".
  const isWeak = word.meanings.some(({ as }) => as === "fact" || as === "not" || as === "no" || as === "yes");
  const isSaidOfName = loose.length === 1 && isName(lexemes[index - 1]);
  const unnamed = isWeak && !isSaidOfName ? [] : pickOpen(loose, open);
  const [first, ...others] = named.length > 0 ? named : unnamed;
  if (first === undefined) return;
  const candidates = [...new Set([first, ...others].map(({ fact }) => fact))];
  const denial = isMeant(lexemes[index - 1], "not") ? lexemes[index - 1] : undefined;
  if (denial?.kind === "word" && denial !== word)
    noteProblem(notebook, { kind: "ambiguous", typed: typedWith(denial, word), candidates });
  else if (others.length > 0) noteProblem(notebook, { kind: "ambiguous", typed: word.text, candidates });
  else noteFact(notebook, first.fact, first.option, word.text);
}

/** "wren off": said of somebody or something that the books name, a word denies nothing. */
function isName(lexeme: Lexeme | undefined): boolean {
  return lexeme?.kind === "pair" && lexeme.key === lexeme.text;
}

function pickOpen<M>(meant: readonly M[], open: readonly M[]): readonly M[] {
  return open.length > 0 ? open : meant;
}

function factsNamed(word: WordLexeme): readonly string[] {
  return word.meanings.flatMap((meaning) => (meaning.as === "fact" ? [meaning.fact] : []));
}

function isMeant(lexeme: Lexeme | undefined, as: Meaning["as"]): lexeme is WordLexeme {
  return lexeme?.kind === "word" && lexeme.meanings.some((meaning) => meaning.as === as);
}

function typedWith(denial: WordLexeme, word: WordLexeme): string {
  return denial.start < word.start ? `${denial.text} ${word.text}` : `${word.text} ${denial.text}`;
}
