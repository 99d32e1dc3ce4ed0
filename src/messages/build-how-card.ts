import type { Answer, Result } from "../declaration/answer.ts";
import type { Block, Button, Card } from "./card.ts";
import { formatRange } from "./format-quantity.ts";
import { saySource, showQuantity, type TopicVoice } from "./voice.ts";

/** Shows how results were got: equation, what went in, who says so. All of them, or only the one asked for. */
export function buildHowCard(voice: TopicVoice, answer: Answer, aimWalk: string, only?: string): Card {
  const { common } = voice;
  const shown = only === undefined ? answer.results : answer.results.filter((result) => result.id === only);
  const rest = answer.results.filter((result) => !shown.includes(result));
  const title = common.howTitle(voice.words.title);
  const others: Button[] = rest.map((result) => ({
    label: common.howOf(labelOf(voice, result)),
    say: common.say.how(result.id),
    aim: { walk: aimWalk, fact: "*" },
  }));
  return {
    title,
    blocks: [
      ...shown.flatMap((result) => howBlocks(voice, result)),
      ...(others.length === 0 ? [] : [{ kind: "buttons" as const, buttons: others }]),
    ],
    summary: `${title}: ${shown.map((result) => `${labelOf(voice, result)} ${showResult(voice, result)}`).join("; ")}`,
  };
}

/** A result as the reader reads it, the unit included. */
export function showResult(voice: TopicVoice, result: Result): string {
  if ("name" in result) return result.name;
  if (result.upTo === undefined) return showQuantity(voice, result.quantity);
  return formatRange(result.quantity, result.upTo, voice.units, voice.language);
}

export function labelOf(voice: TopicVoice, result: Result): string {
  return voice.words.results[result.id] ?? result.id;
}

function howBlocks(voice: TopicVoice, result: Result): Block[] {
  const { equation, inputs, sources } = result.how;
  const rows = inputs.map(({ symbol, quantity }) => ({ label: symbol, value: showQuantity(voice, quantity) }));
  return [
    { kind: "text", tone: "heading", text: `${labelOf(voice, result)}: ${showResult(voice, result)}` },
    { kind: "text", tone: "plain", text: equation },
    ...(rows.length === 0 ? [] : [{ kind: "rows" as const, rows }]),
    ...sources.map((source) => ({ kind: "text" as const, tone: "quiet" as const, text: saySource(voice, source) })),
  ];
}
