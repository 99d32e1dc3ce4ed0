import type { Library } from "../library.ts";

/** What a message says about a caution. */
export type CautionCommand =
  | { readonly kind: "seen" | "unsee"; readonly caution: string }
  /** `because` is empty when no reason was given. */
  | { readonly kind: "skip-caution"; readonly caution: string; readonly because: string };

const SEEN = /^(?:seen|visto)(?:[,\s]+(?:done|hecho))?(?:[:,\s]+(\S+))?$/i;
const UNSEE = /^(?:unsee|not seen|no visto)(?:[:,\s]+(\S+))?$/i;
const SKIP = /^(?:skip|omitir|saltar)\s+(\S+?)[,;:]?(?:\s+(.*))?$/is;
const LEAD = /^(?:because|since|as|porque|ya que|pues)\b[\s,:]*/i;
/** A reason is a word at least, and no bare sign or number. */
const WORD = /\p{L}{2}/u;

/**
 * Reads a message as being about a caution: "seen <id>", "unsee <id>", or "skip <id> because …". Without an id, `caution`
 * is empty; "skip" alone is the skip of a guided question and is left to others.
 */
export function parseCautionCommand(text: string, library: Library): CautionCommand | undefined {
  const trimmed = text.trim();
  const seen = SEEN.exec(trimmed);
  if (seen) return { kind: "seen", caution: idOf(seen[1]) };
  const unsee = UNSEE.exec(trimmed);
  if (unsee) return { kind: "unsee", caution: idOf(unsee[1]) };
  const skip = SKIP.exec(trimmed);
  const caution = idOf(skip?.[1]);
  if (skip === null || !library.cautions.some(({ id }) => id === caution)) return undefined;
  const because = (skip[2] ?? "").replace(LEAD, "").trim();
  return { kind: "skip-caution", caution, because: WORD.test(because) ? because : "" };
}

function idOf(word: string | undefined): string {
  return (word ?? "")
    .toLowerCase()
    .replaceAll("-", "_")
    .replace(/[.,;:!]+$/, "");
}
