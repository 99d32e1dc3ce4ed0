import type { Lexeme, PairLexeme, ValueLexeme } from "./lexeme.ts";
import type { TopicWords } from "./topic-words.ts";

/**
 * Gives an amount beside a name of the books to the fact that counts such names: "mixing-valve +2", "+20 ft
 * condensate-pipe". A name with an amount on either side takes the one behind it.
 */
export function nameAmounts(lexemes: readonly Lexeme[], { facts }: TopicWords): readonly Lexeme[] {
  const counted = Object.entries(facts).flatMap(([fact, spec]) =>
    spec.type === "text" && spec.amountOf !== undefined ? [[spec.amountOf, fact] as const] : [],
  );
  return counted.reduce((soFar, [name, fact]) => nameAmount(soFar, name, fact), lexemes);
}

function nameAmount(lexemes: readonly Lexeme[], name: string, fact: string): readonly Lexeme[] {
  const isToldAlready = lexemes.some((one) => one.kind === "pair" && one.facts.includes(fact));
  const at = lexemes.findIndex((one) => one.kind === "pair" && one.facts.length === 1 && one.facts[0] === name);
  if (isToldAlready || at < 0) return lexemes;
  const amount = [lexemes[at + 1], lexemes[at - 1]].find(isAmount);
  return amount === undefined ? lexemes : lexemes.map((one) => (one === amount ? pairOf(amount, fact) : one));
}

function isAmount(lexeme: Lexeme | undefined): lexeme is ValueLexeme {
  return lexeme?.kind === "value" && lexeme.day === undefined;
}

function pairOf({ token: { text, start, end } }: ValueLexeme, fact: string): PairLexeme {
  return { kind: "pair", key: fact, facts: [fact], text, start, end };
}
