import { type Books, listNames } from "../../src/books/books.ts";
import { parseCommand } from "../../src/conversation/commands.ts";
import { converse } from "../../src/conversation/converse.ts";
import { finish } from "../../src/conversation/finish.ts";
import { type ParsedRequest, parseRequest } from "../../src/conversation/grammar/parse-request.ts";
import { topicHeard } from "../../src/conversation/hear.ts";
import { EMPTY_STATE } from "../../src/conversation/state.ts";
import type { Answered } from "../../src/declaration/answer.ts";
import type { KnownFacts } from "../../src/declaration/facts.ts";
import type { Library } from "../../src/library.ts";
import { answerToJson, problemsToJson } from "../../src/messages/answer-json.ts";
import type { Card } from "../../src/messages/card.ts";
import type { TopicRunner } from "../../src/ports/topic-runner.ts";
import { normaliseText } from "../../src/units/normalise-text.ts";
import { type AskOptions, readAskOptions } from "./read-ask-options.ts";
import { renderText } from "./render-text.ts";

export interface AskParts {
  readonly library: Library;
  readonly books: Books;
  readonly runner: TopicRunner;
  /** Width of the screen [characters]. */
  readonly columns: number;
  /** Standard output: the answer and nothing else. */
  readonly print: (text: string) => void;
  /** Standard error. */
  readonly complain: (text: string) => void;
}

/** What a script reads from the exit code. */
const ANSWERED = 0;
const OUR_FAULT = 1;
const NOT_ANSWERED = 2;

/**
 * One question from the command line.
 * @returns exit code: 0 an answer, 2 facts are missing, out of range or not understood, 1 a fault of ours
 */
export async function runAsk(parts: AskParts, words: readonly string[]): Promise<number> {
  const read = readAskOptions(words);
  if (!read.ok) {
    parts.complain(read.say);
    return NOT_ANSWERED;
  }
  try {
    return await (read.options.json ? askForJson(parts, read.options) : askForCard(parts, read.options));
  } catch (error) {
    parts.complain(error instanceof Error ? (error.stack ?? error.message) : String(error));
    return OUR_FAULT;
  }
}

async function askForJson(parts: AskParts, options: AskOptions): Promise<number> {
  const { library } = parts;
  const print = (value: unknown) => parts.print(JSON.stringify(value, null, 2));
  const text = normaliseText(options.text);
  if (parseCommand(text) !== undefined) {
    const card = decide(parts, options, text);
    print({ topic: text, kind: "info", title: card.kind === "show" ? card.card.title : "", text: sayCard(card) });
    return ANSWERED;
  }
  const { topic, facts, problems } = read(parts, options, text);
  if (topic === undefined || problems.length > 0) {
    print(problemsToJson(topic, problems, library, options));
    return NOT_ANSWERED;
  }
  const answered = await run(parts, topic, facts);
  print(answerToJson(answered, library, options));
  return exitCodeOf(answered);
}

/** What a script asks; words that name no topic may still speak of a fault. */
function read({ library, books }: AskParts, options: AskOptions, text: string): ParsedRequest {
  const known = { ...options, names: listNames(books), ...(books.today !== undefined && { today: books.today }) };
  const parsed = parseRequest(text, library, known);
  const heard = parsed.topic === undefined ? topicHeard(library, text) : undefined;
  return heard === undefined ? parsed : parseRequest(text, library, { ...known, topic: heard });
}

async function askForCard(parts: AskParts, options: AskOptions): Promise<number> {
  const text = normaliseText(options.text);
  const decision = decide(parts, options, text);
  const show = (card: Card) => parts.print(renderText(card, parts.columns));
  if (decision.kind === "show") {
    show(decision.card);
    return parseCommand(text) === undefined ? NOT_ANSWERED : ANSWERED;
  }
  const answered = await run(parts, decision.topic, decision.facts);
  show(finish(decision, answered, parts.library, parts.books).card);
  return exitCodeOf(answered);
}

function decide({ library, books }: AskParts, reader: AskOptions, text: string) {
  return converse({
    text,
    state: EMPTY_STATE,
    reader,
    newId: "ask",
    company: books.company,
    names: listNames(books),
    books,
    library,
  });
}

function sayCard(decision: ReturnType<typeof converse>): string {
  return decision.kind === "show" ? decision.card.summary : "";
}

async function run(parts: AskParts, topic: string, facts: KnownFacts): Promise<Answered> {
  return await parts.runner.run(topic, facts, () => undefined, new AbortController().signal);
}

function exitCodeOf({ result }: Answered): number {
  return result.kind === "answer" ? ANSWERED : NOT_ANSWERED;
}
