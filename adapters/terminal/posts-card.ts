import type { Block, Card } from "../../src/messages/card.ts";
import { formatMoment } from "../../src/messages/format-moment.ts";
import type { Language } from "../../src/messages/language.ts";
import { COMMON } from "../../src/messages/voice.ts";
import type { ChannelCard } from "../../src/ports/store.ts";
import type { TerminalTexts } from "./terminal-texts.ts";

interface PostsLook {
  readonly title: string;
  readonly texts: TerminalTexts;
  readonly language: Language;
  readonly timeZone: string;
}

/** The posts of a channel as one card, so that their buttons and files can be named: the newest thread last, above the prompt. */
export function buildPostsCard(posts: readonly ChannelCard[], look: PostsLook): Card {
  const { title, texts } = look;
  if (posts.length === 0)
    return { title, summary: texts.noPosts, blocks: [{ kind: "text", tone: "plain", text: texts.noPosts }] };
  const roots = posts.filter(({ follows }) => !posts.some(({ id }) => id === follows));
  const threads = roots.map((root) => [root, ...posts.filter(({ follows }) => follows === root.id)]);
  const latest = (thread: readonly ChannelCard[]) => Math.max(...thread.map(({ at_ms }) => at_ms));
  const ordered = threads.toSorted((a, b) => latest(a) - latest(b)).flat();
  return { title, summary: title, blocks: ordered.flatMap((post) => toBlocks(post, look)) };
}

function toBlocks({ card, follows, at_ms }: ChannelCard, { texts, language, timeZone }: PostsLook): readonly Block[] {
  const time = formatMoment(COMMON[language], at_ms, timeZone);
  const verdict = card.verdict ? `[${card.verdict.word}] ` : "";
  const mark = follows === undefined ? "==" : `-- ${texts.reply},`;
  return [{ kind: "headline", text: `${mark} ${time}  ${verdict}${card.title}` }, ...card.blocks];
}
