import type { Severity, Verdict } from "../../src/declaration/answer.ts";
import type { AdaptiveContainer } from "./adaptive-card.ts";

/** A sign that differs in shape stands before each word, so that nothing is told by colour alone. */
export interface Sign {
  readonly shape: string;
  readonly style: NonNullable<AdaptiveContainer["style"]>;
}

export const VERDICT_SIGNS: Readonly<Record<Verdict, Sign>> = {
  good: { shape: "✓", style: "good" },
  caution: { shape: "▲", style: "warning" },
  no: { shape: "✕", style: "attention" },
  info: { shape: "●", style: "accent" },
};
export const SEVERITY_SIGNS: Readonly<Record<Severity, Sign>> = {
  stop: { shape: "■", style: "attention" },
  must: { shape: "▲", style: "warning" },
  should: { shape: "◆", style: "emphasis" },
  note: { shape: "○", style: "emphasis" },
};
export const PROBLEM_SIGN = "▲";
export const ANSWERED_SIGN = "✓";
/** Before the title of what opens on a tap. */
export const FOLD_SIGN = "▸";
