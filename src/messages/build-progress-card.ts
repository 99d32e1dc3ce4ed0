import type { Finding } from "../declaration/answer.ts";
import { buildNoticeCard } from "./build-notice-card.ts";
import type { Block, Card } from "./card.ts";
import type { CommonTexts } from "./common-texts.ts";
import { sayFinding, type TopicVoice } from "./voice.ts";

/**
 * Shown while long work goes on.
 * @param work short id by which the person can call it off; without it there is no button
 * @param soFar what can be said already, such as the best so far
 */
export function buildProgressCard(
  voice: TopicVoice,
  done: number,
  total: number,
  work?: string,
  soFar?: Finding,
): Card {
  const { common, words } = voice;
  const share = total > 0 ? Math.min(1, Math.max(0, done / total)) : 0;
  const text = common.workingOn(words.title, `${Math.floor(share * 100)} %`);
  return {
    title: words.title,
    blocks: [{ kind: "progress", text, done, total }, ...sayPreview(voice, soFar), ...offerCancel(common, work)],
    summary: text,
  };
}

function sayPreview(voice: TopicVoice, soFar: Finding | undefined): readonly Block[] {
  return soFar === undefined ? [] : [{ kind: "text", tone: "plain", text: sayFinding(voice, soFar) }];
}

function offerCancel(common: CommonTexts, work: string | undefined): readonly Block[] {
  if (work === undefined) return [];
  return [{ kind: "buttons", buttons: [{ label: common.cancel, say: common.say.cancel(work) }] }];
}

/** Says to whoever called work off that it is called off. */
export function buildCalledOffCard({ common, words }: TopicVoice): Card {
  return buildNoticeCard(common.cancelledTitle, [common.cancelledWork(words.title)], []);
}

/** Says that the work is done already, was called off before, or is somebody else's. */
export function buildNothingToCancelCard(common: CommonTexts): Card {
  return buildNoticeCard(common.cancel, [common.nothingToCancel], []);
}
