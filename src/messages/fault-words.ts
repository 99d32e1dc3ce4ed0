import type { Doer } from "../faults/knowledge.ts";
import type { QuantityKind } from "../units/quantity-kinds.ts";
import type { FactTexts, OptionTexts } from "./topic-texts.ts";

type Words = Omit<FactTexts, "words"> & { readonly words?: readonly string[] };
type WithOptions<O extends string> = FactTexts & { readonly options: Readonly<Record<O, OptionTexts>> };

/** Sentences of the fault topic that belong to no entry of the knowledge. */
export interface FaultWords {
  readonly title: string;
  readonly names: readonly string[];
  readonly summary: string;
  readonly examples: readonly [string, ...string[]];
  readonly complaint: FactTexts;
  readonly unit: WithOptions<"integrated" | "split" | "resistance">;
  readonly age: WithOptions<"new" | "mid" | "old">;
  readonly lately: WithOptions<"nothing" | "new_heater" | "new_plumbing" | "power_outage" | "utility_program">;
  readonly symptom: Words;
  readonly noneOfThese: string;
  readonly done: string;
  /** Asked when precautions stand above it. */
  readonly ready: (check: string) => string;
  readonly reading: (check: string) => string;
  /** What a check shows when all is well. */
  readonly inOrder: (accept: string) => string;
  /** What was made of a complaint, and of what was said not to be. */
  readonly heard: (symptom: string) => string;
  readonly denied: (symptom: string) => string;
  readonly cured: (cause: string) => string;
  /** Offered where no cause stands out. */
  readonly was: (cause: string) => string;
  readonly curedFact: (cause: string) => string;
  readonly notCured: (cause: string) => string;
  readonly record: Readonly<
    Record<
      | "asker_may"
      | "asker_tools"
      | "on_truck"
      | "found_before"
      | "measured_before"
      | "display_code"
      | "post_trail"
      | "passed_over",
      string
    >
  >;
  readonly confidence: string;
  readonly found: (cause: string, share: string) => string;
  readonly probable: (cause: string, share: string) => string;
  readonly callFor: (who: string, check: string) => string;
  readonly repairBy: (who: string) => string;
  readonly doers: Readonly<Record<Doer, string>>;
  readonly first: (hazard: string, steps: string) => string;
  readonly remedy: (text: string) => string;
  readonly parts: (list: string) => string;
  readonly verify: (text: string) => string;
  readonly tell: (text: string) => string;
  readonly stopBefore: (text: string) => string;
  readonly expected: (value: string, kind: QuantityKind) => string;
  readonly somethingElse: string;
  readonly plain: {
    readonly next_check: (data: { readonly check: string; readonly minutes: string }) => string;
    readonly contradicts: (data: { readonly now: string; readonly earlier: string }) => string;
    readonly not_judged: (data: { readonly check: string }) => string;
    readonly needs_tools: (data: { readonly check: string; readonly tools: string }) => string;
    readonly open: () => string;
    readonly open_else: () => string;
    readonly how_sure: () => string;
    readonly step_cured: () => string;
    readonly step_not_cured: () => string;
    readonly step_post: () => string;
    readonly counts_here: () => string;
    readonly counted: (data: { readonly times: string }) => string;
    readonly on_truck: (data: { readonly listed: string }) => string;
    readonly not_on_truck: () => string;
  };
  readonly tables: Readonly<
    Record<
      "candidates" | "meanings" | "trail" | "parts",
      { readonly title: string; readonly columns: Readonly<Record<string, string>> }
    >
  >;
}
