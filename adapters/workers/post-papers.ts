import type { Block, Card } from "../../src/messages/card.ts";
import { problem } from "../../src/messages/notes.ts";
import { RECORD_TEXTS } from "../../src/messages/record-words.ts";
import type { FileStore } from "../../src/ports/files.ts";
import type { KeptPost, PostPaper } from "../../src/ports/outbox.ts";
import type { PaperPort } from "../../src/ports/papers.ts";

/** The card of a post with the paper that goes with it; an error where the paper cannot be made now. */
export type CompletePost = (kept: KeptPost) => Promise<Card>;

interface PaperMakers {
  readonly files: Pick<FileStore, "put" | "read">;
  readonly papers: PaperPort;
}

/** Papers of posts that are kept in mind while a platform asks to wait. */
const MOST_KEPT = 20;
/** So often it is tried to make a paper; then the post goes without it and says so. */
const MOST_TRIES = 3;

/**
 * Makes the papers of posts just before these are sent. A paper is on the disk before anything names it, and made again
 * after a crash it is the same file, because it holds nothing but what stands in the post.
 */
export function createPostPapers({ files, papers }: PaperMakers): CompletePost {
  const made = new Map<string, Block>();
  const make = async ({ workspace }: KeptPost, { name, text, record }: PostPaper): Promise<Block> => {
    const bytes = await papers.drawRecord(record, (hash) => files.read(workspace, hash));
    return { kind: "file", file: await files.put(workspace, name, "application/pdf", bytes), text };
  };
  return async (kept) => {
    const { card, paper, id } = kept.post;
    if (paper === undefined) return card;
    const key = JSON.stringify([kept.workspace, id]);
    const block = made.get(key) ?? (await make(kept, paper));
    made.set(key, block);
    const [oldest] = made.keys();
    if (made.size > MOST_KEPT && oldest !== undefined) made.delete(oldest);
    return withBlock(card, block);
  };
}

/** @returns the card that says that its paper is missing; nothing while it may still be made */
export function withoutPaper({ post: { card, language }, tries }: KeptPost): Card | undefined {
  if (tries + 1 < MOST_TRIES) return undefined;
  return withBlock(card, problem(RECORD_TEXTS[language].paper.notMade));
}

function withBlock(card: Card, block: Block): Card {
  return { ...card, blocks: [...card.blocks, block] };
}
