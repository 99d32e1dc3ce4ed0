import type { KeptPost } from "../ports/outbox.ts";

/** What decides whose turn it is. */
type Queued = Pick<KeptPost, "tries" | "due_ms"> & { readonly channel: string };

/**
 * The next post of each channel: the oldest that was begun or is due. While that one waits to be tried again the
 * channel waits too; one that was never begun and is only planned for later is passed over.
 * @param posts all that are still to be sent, oldest first
 */
export function pickDue<P extends Queued>(posts: readonly P[], now_ms: number): readonly P[] {
  const heads = new Map<string, P>();
  for (const post of posts) {
    const isPlanned = post.tries === 0 && post.due_ms > now_ms;
    if (!isPlanned && !heads.has(post.channel)) heads.set(post.channel, post);
  }
  return [...heads.values()].filter(({ due_ms }) => due_ms <= now_ms);
}
