import type { Card } from "./card.ts";
import type { TopicVoice } from "./voice.ts";

/** Shown while long work goes on. */
export function buildProgressCard({ common, words }: TopicVoice, done: number, total: number): Card {
  const share = total > 0 ? Math.min(1, Math.max(0, done / total)) : 0;
  const text = common.workingOn(words.title, `${Math.floor(share * 100)} %`);
  return { title: words.title, blocks: [{ kind: "progress", text, done, total }], summary: text };
}
