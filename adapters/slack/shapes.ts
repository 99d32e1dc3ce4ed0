import type { Severity, Verdict } from "../../src/declaration/answer.ts";

/** Plain shapes that no client turns into a coloured picture; they stand beside the word, never instead of it. */
export const VERDICT_SHAPES: Readonly<Record<Verdict, string>> = { good: "✓", caution: "▲", no: "✕", info: "○" };
export const SEVERITY_SHAPES: Readonly<Record<Severity, string>> = { stop: "■", must: "▲", should: "◆", note: "○" };
/** Before a sentence that says what went wrong. */
export const PROBLEM_SHAPE = "▲";
/** Before how a caution is shown to be met. */
export const SHOW_ARROW = "→";
