import type { TextBlock } from "./card.ts";

/** A remark beside the main thing: what was noted, what was set aside. */
export function quiet(text: string): TextBlock {
  return { kind: "text", tone: "quiet", text };
}

/** Something that went wrong and what to do about it. */
export function problem(text: string): TextBlock {
  return { kind: "text", tone: "problem", text };
}
