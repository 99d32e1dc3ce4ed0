import type { Card, FileBlock } from "../../src/messages/card.ts";
import type { Caller } from "../../src/ports/store.ts";
import type { DoorLog } from "./door-log.ts";
import { SlackRefusalError } from "./errors.ts";
import type { Place } from "./heard.ts";
import { renderCard } from "./render-card.ts";
import type { SlackCalls } from "./slack-calls.ts";

/** A kept file of the workspace that the caller belongs to; nothing where there is none. */
export type ReadKept = (caller: Caller, hash: string) => Promise<Uint8Array | undefined>;

interface Sending {
  readonly card: Card;
  readonly place: Place;
  readonly caller: Caller;
  /** True where only the asker may see them. */
  readonly isPrivate: boolean;
}

/**
 * Sends the photos and papers of a card after it, into the same thread; those that are for one person, or that the bot
 * may not put there, into the direct messages of whoever asked. Never throws: what could not be sent is still named in
 * the card, and is logged.
 */
export async function sendFiles(
  { card, place, caller, isPrivate }: Sending,
  calls: SlackCalls,
  readKept: ReadKept,
  log: DoorLog,
): Promise<void> {
  const blocks = card.blocks.filter((block): block is FileBlock => block.kind === "file");
  if (blocks.length === 0) return;
  const { channel, thread, isDirect } = place;
  const here = { channel, ...(thread !== undefined && { thread }) };
  let target = isPrivate && !isDirect ? undefined : here;
  for (const { file, text } of blocks) {
    try {
      const bytes = await readKept(caller, file.hash);
      if (bytes === undefined) throw new Error("the file is not there any more");
      const upload = { name: file.name, title: text, type: file.type, bytes, ...altOf(file.type, text) };
      target ??= await openDirect(card, place, calls);
      try {
        await calls.upload(target, upload);
      } catch (error) {
        if (!(error instanceof SlackRefusalError) || isDirect || target !== here) throw error;
        target = await openDirect(card, place, calls);
        await calls.upload(target, upload);
      }
    } catch (error) {
      log.warn({ error, hash: file.hash }, "a file could not be sent; the answer names it");
    }
  }
}

function altOf(type: string, text: string): { readonly alt?: string } {
  return type.startsWith("image/") ? { alt: text } : {};
}

/** A file cannot be shared with a person before there are direct messages: the title of the answer opens them. */
async function openDirect({ title }: Card, { user }: Place, calls: SlackCalls): Promise<{ readonly channel: string }> {
  const [first] = renderCard({ title, summary: title, blocks: [] }).messages;
  return { channel: await calls.writeTo(user, first) };
}
