import type { KnownFacts } from "../declaration/facts.ts";
import type { Library } from "../library.ts";
import { sayProblem } from "../messages/say-problem.ts";
import { speakOf, type TopicVoice } from "../messages/voice.ts";
import { refuseValue } from "./check-fact.ts";
import { dropFollowUpLead } from "./commands.ts";
import { type ParsedRequest, parseRequest, type RequestProblem } from "./grammar/parse-request.ts";
import { ownWordsFact } from "./grammar/read-own-words.ts";
import type { Unsettled } from "./state.ts";
import type { Scene } from "./turn.ts";

/** A fact that was given a value that cannot be used, and why, in words. */
interface Refused {
  readonly fact: string;
  readonly why: string;
}
/** What a message says about a topic: facts that hold, facts to ask again, and what must be settled first. */
export interface Heard {
  readonly facts: KnownFacts;
  readonly refused: readonly Refused[];
  readonly unsettled: readonly Unsettled[];
}

/** A message that turned out to be about another topic. */
export interface Elsewhere {
  readonly topic: string;
  readonly text: string;
  readonly parsed: ParsedRequest;
}

/** Reads a message as a request; `topic` is given when it can only be about that. */
export function listen(scene: Scene, text: string, topic?: string): ParsedRequest {
  const { language, units } = scene.reader;
  const { names } = scene.voice;
  return parseRequest(text, scene.library, {
    language,
    units,
    ...(names && { names }),
    ...(scene.books?.today !== undefined && { today: scene.books.today }),
    ...(topic !== undefined && { topic }),
  });
}

/** What a message says while one topic is being talked about: about that topic, or a request about another one. */
export function hearAbout(scene: Scene, topic: string, text: string): Heard | Elsewhere {
  const follow = dropFollowUpLead(text);
  const parsed = listen(scene, follow, topic);
  if (parsed.topic !== undefined && parsed.topic !== topic) return { topic: parsed.topic, text: follow, parsed };
  return sortOut(scene, follow, topic, joinOwnWords(scene, topic, parsed));
}

/** The topic that somebody's own words are about, where no topic was named. */
export function topicHeard({ topics }: Pick<Library, "topics">, text: string): string | undefined {
  return [...topics.values()].find(({ guide }) => guide?.hears(text))?.id;
}

/** What somebody adds in their own words stands beside what they said before; words that say nothing change nothing. */
function joinOwnWords({ library, state }: Scene, topicId: string, parsed: ParsedRequest): ParsedRequest {
  const topic = library.topics.get(topicId);
  const fact = topic?.guide && ownWordsFact(topic);
  const said = fact === undefined ? undefined : parsed.facts[fact];
  const about = [state.walk, state.last].find((one) => one?.topic === topicId);
  const before = fact === undefined ? undefined : about?.facts[fact]?.value;
  if (fact === undefined || said === undefined || before === undefined) return parsed;
  const words = String(said.value);
  if (topic?.guide?.hears(words))
    return { ...parsed, facts: { ...parsed.facts, [fact]: { ...said, value: `${before}; ${words}` } } };
  const { [fact]: _, ...facts } = parsed.facts;
  return { ...parsed, facts, problems: [...parsed.problems, { kind: "unknown-word", word: words, nearest: [] }] };
}

/** True when a message begins with the word of this topic, so that it asks anew instead of following on. */
export function opensTopic(scene: Scene, topic: string, text: string): boolean {
  const opening = text.split(/\s+/).slice(0, 2).join(" ");
  return listen(scene, opening).topic === topic;
}

/** Sorts what was read on a topic into what holds, what must be asked again and what must be settled. */
export function sortOut(scene: Scene, text: string, topic: string, parsed: ParsedRequest): Heard {
  const voice = speakOf(scene.voice, topic);
  const refused = [
    ...parsed.problems.flatMap((problem) => refuseProblem(voice, problem)),
    ...Object.entries(parsed.facts).flatMap(([fact, known]) => {
      const why = refuseValue(voice, fact, known.value);
      return why === undefined ? [] : [{ fact, why }];
    }),
  ];
  const bad = new Set(refused.map(({ fact }) => fact));
  return {
    facts: Object.fromEntries(Object.entries(parsed.facts).filter(([fact]) => !bad.has(fact))),
    refused: refused.filter(({ fact }, index) => refused.findIndex((other) => other.fact === fact) === index),
    unsettled: parsed.problems.flatMap((problem) => toUnsettled(problem, text)),
  };
}

/** True when nothing in the message could be used or settled for this topic. */
export function saysNothing({ facts, refused, unsettled }: Heard): boolean {
  const isLost = unsettled.every((open) => open.kind === "unknown-word" || open.candidates.length === 0);
  return Object.keys(facts).length === 0 && refused.length === 0 && isLost;
}

function refuseProblem(voice: TopicVoice, problem: RequestProblem): Refused[] {
  if (problem.kind !== "bad-value" && problem.kind !== "twice") return [];
  return [{ fact: problem.fact, why: sayProblem(voice, problem) }];
}

function toUnsettled(problem: RequestProblem, text: string): Unsettled[] {
  switch (problem.kind) {
    case "unknown-word":
      return [{ kind: "unknown-word", word: problem.word, nearest: problem.nearest, text }];
    case "ambiguous":
      return [{ kind: "ambiguous", typed: problem.typed, candidates: problem.candidates }];
    case "bad-value":
    case "twice":
      return [];
  }
}
