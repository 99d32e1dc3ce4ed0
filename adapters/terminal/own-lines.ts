import type { ChannelReader, HouseChannel } from "../../src/desk/house-channels.ts";
import type { Card } from "../../src/messages/card.ts";
import type { Language } from "../../src/messages/language.ts";
import type { SentFile } from "../../src/ports/files.ts";
import type { Caller } from "../../src/ports/store.ts";
import { findAttached } from "./attach-file.ts";
import { buildPostsCard } from "./posts-card.ts";
import { saveFile } from "./save-file.ts";
import { TERMINAL_TEXTS, type TerminalTexts } from "./terminal-texts.ts";

/** What the terminal reaches beside the desk: files, here and of the house, and the house's channels. */
export interface TerminalHouse {
  readonly channels: ChannelReader;
  readonly readFile: (hash: string) => Promise<Uint8Array | undefined>;
  /** Largest file that is kept [bytes]. */
  readonly mostFile_bytes: number;
  /** IANA name. */
  readonly timeZone: string;
  readonly language: () => Promise<Language>;
  /** Where `~` leads. */
  readonly home: string;
}
/** What a line means that the terminal reads itself: a card to show, or a message with a file. */
export type OwnLine =
  | { readonly kind: "card"; readonly card: Card }
  | { readonly kind: "send"; readonly text: string; readonly file: SentFile };

/** One line that was typed, and what it was typed about. */
export interface Typed {
  readonly line: string;
  readonly onScreen: Card | undefined;
  readonly caller: Caller;
  readonly house: TerminalHouse;
}

const ATTACH = /^\s*(?:attach|adjuntar)(?:\s+(.*))?$/i;
const SAVE = /^\s*(?:save|guardar)(?:\s+(\d+)(?:\s+(.*))?)?\s*$/i;
const POSTS = /^\s*(?:posts|publicaciones)(?:\s+(\S+))?\s*$/i;
const CHANNEL_WORDS: readonly { readonly channel: HouseChannel; readonly word: RegExp }[] = [
  { channel: "team", word: /^\s*(?:team|equipo)\s*$/i },
  { channel: "managers", word: /^\s*(?:managers|gerencia)\s*$/i },
  { channel: "owner", word: /^\s*(?:owner|direcci[oó]n)\s*$/i },
];
/** Newest posts that are printed; the web page has more. */
const MOST_POSTS = 10;

/** Reads a line that is for the terminal and not for the desk; nothing where it is for the desk. */
export async function readOwnLine(typed: Typed): Promise<OwnLine | undefined> {
  const { line, onScreen, house } = typed;
  const texts = TERMINAL_TEXTS[await house.language()];
  const attach = ATTACH.exec(line);
  if (attach) {
    const found = await findAttached(attach[1] ?? "", house, texts);
    return found.ok ? { kind: "send", text: found.words, file: found.file } : say(texts, found.say);
  }
  const save = SAVE.exec(line);
  if (save && (save[1] !== undefined || filesOf(onScreen).length > 0))
    return say(texts, await saveFile(filesOf(onScreen), { number: save[1], where: save[2] }, house, texts));
  const channel = channelNamed(line, onScreen);
  return channel && { kind: "card", card: await readPosts(channel, typed, texts) };
}

/** While a question stands on the screen, a word such as "owner" alone is its answer. */
function channelNamed(line: string, onScreen: Card | undefined): HouseChannel | undefined {
  const posts = POSTS.exec(line);
  const isAsked = onScreen?.blocks.some(({ kind }) => kind === "question") ?? false;
  if (!posts && isAsked) return undefined;
  const word = posts ? (posts[1] ?? "team") : line;
  return CHANNEL_WORDS.find((one) => one.word.test(word))?.channel;
}

async function readPosts(channel: HouseChannel, { caller, house }: Typed, texts: TerminalTexts): Promise<Card> {
  const posts = await house.channels.read(caller, channel, MOST_POSTS);
  if (posts !== undefined)
    return buildPostsCard(posts, {
      title: texts.channels[channel],
      texts,
      language: await house.language(),
      timeZone: house.timeZone,
    });
  const open = (await house.channels.openTo(caller)).map((one) => texts.channels[one].toLowerCase());
  return note(texts.channels[channel], texts.notForYou(open.join(", ")));
}

function filesOf(card: Card | undefined) {
  return (card?.blocks ?? []).flatMap((block) => (block.kind === "file" ? [block] : []));
}

function say({ filesTitle }: TerminalTexts, text: string): OwnLine {
  return { kind: "card", card: note(filesTitle, text) };
}

function note(title: string, text: string): Card {
  return { title, summary: text, blocks: [{ kind: "text", tone: "plain", text }] };
}
