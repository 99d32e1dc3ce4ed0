import type { Unsettled } from "../conversation/state.ts";
import type { Block, Button, Card, TextBlock } from "./card.ts";
import { sayProblem } from "./say-problem.ts";
import { examplesOf, factOf, type TopicVoice, type Voice } from "./voice.ts";

/** Longest request that a button may carry with one word put right. */
const LONGEST_SAY = 1500;

/** Asks about the part of a request that could not be settled: which fact was meant, or what a word is. */
export function buildUnsettledCard(
  voice: TopicVoice,
  walk: string,
  open: Unsettled,
  notes: readonly TextBlock[],
): Card {
  const { common } = voice;
  const aim = { walk, fact: "*" };
  const isWord = open.kind === "unknown-word";
  const prompt = sayProblem(voice, open);
  const out: Button[] = [
    { label: isWord ? common.goOnWithout : common.noneOfThese, say: common.say.skip, aim },
    { label: common.stop, say: common.say.stop, aim },
  ];
  const answers = isWord ? correctionButtons(open.text, open.word, open.nearest) : candidateButtons(voice, walk, open);
  const help = isWord || open.candidates.length === 0 ? common.unknownWordHelp : ambiguousHelp(voice, open.candidates);
  const blocks: Block[] = [
    ...notes,
    { kind: "question", prompt, help },
    { kind: "buttons", buttons: [...answers, ...out] },
  ];
  return { title: voice.words.title, blocks, summary: [...notes.map((note) => note.text), prompt].join(" ") };
}

function ambiguousHelp({ common }: TopicVoice, candidates: readonly string[]): string {
  return candidates.length === 1 ? common.onlyCandidateHelp : common.ambiguousHelp;
}

function candidateButtons(voice: TopicVoice, walk: string, open: Extract<Unsettled, { kind: "ambiguous" }>): Button[] {
  return open.candidates.map((fact) => ({
    label: factOf(voice, fact).words.label,
    say: open.typed,
    aim: { walk, fact },
  }));
}

/** Buttons that send the same request again with one word put right. */
function correctionButtons(text: string, word: string, nearest: readonly string[]): Button[] {
  const at = text.toLowerCase().indexOf(word.toLowerCase());
  if (at < 0 || text.length > LONGEST_SAY) return [];
  return nearest.map((near) => ({ label: near, say: text.slice(0, at) + near + text.slice(at + word.length) }));
}

/** Says that a message was not understood, with the nearest words and some questions that would be. */
export function buildNotUnderstoodCard(
  voice: Voice,
  text: string,
  problem: { readonly word: string; readonly nearest: readonly string[] } | undefined,
  offers: readonly Button[],
): Card {
  const { common } = voice;
  const said = problem === undefined ? common.notUnderstood : common.unknownWordAlone(problem.word);
  const corrections = problem === undefined ? [] : correctionButtons(text, problem.word, problem.nearest);
  const examples = [...voice.topics.keys()].flatMap((id) => examplesOf(voice, id).slice(0, 1));
  return {
    title: common.notUnderstoodTitle,
    isPrivate: true,
    blocks: [
      { kind: "text", tone: "problem", text: said },
      ...(corrections.length === 0
        ? []
        : [
            { kind: "text" as const, tone: "plain" as const, text: common.didYouMean },
            { kind: "buttons" as const, buttons: corrections },
          ]),
      { kind: "text", tone: "plain", text: common.tryOneOf },
      {
        kind: "buttons",
        buttons: [
          ...examples.slice(0, 3).map((example) => ({ label: example, say: example })),
          { label: common.help, say: common.say.help() },
          ...offers,
        ],
      },
    ],
    summary: said,
  };
}
