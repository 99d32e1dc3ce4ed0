import type { Block, Button, Card } from "./card.ts";

/** A short message about the conversation itself: a title, sentences, and what can be done next. */
export function buildNoticeCard(
  title: string,
  sentences: readonly [string, ...string[]],
  buttons: readonly Button[],
  tone: "plain" | "problem" = "plain",
): Card {
  const blocks: Block[] = sentences.map((text) => ({ kind: "text", tone, text }));
  return {
    title,
    isPrivate: true,
    blocks: buttons.length === 0 ? blocks : [...blocks, { kind: "buttons", buttons }],
    summary: sentences.join(" "),
  };
}
