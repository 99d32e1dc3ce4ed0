import { PASSED_OVER } from "../declaration/topic.ts";
import { factOfStep, mayNeedReason, whyOfStep } from "../jobs/startup-facts.ts";
import type { STEP_NAMES } from "../jobs/startup-step-names.ts";
import { STARTUP_STEPS } from "../jobs/startup-steps-table.ts";
import type { AnyTopicTexts, FactTexts, OptionTexts } from "./topic-texts.ts";

/** The words of one step: what it is, what is asked, and how it is done and what is accepted. */
export interface StepWords {
  readonly label: string;
  readonly question: string;
  readonly how: string;
}
type Fact = FactTexts & { readonly options?: Readonly<Record<string, OptionTexts>> };
type Sentence = AnyTopicTexts["findings"][string];

/** The words of the walk in one language. */
export interface StartupWords {
  readonly title: string;
  readonly names: readonly string[];
  readonly summary: string;
  readonly examples: readonly [string, ...string[]];
  readonly steps: Readonly<Record<string, StepWords>>;
  readonly siteFacts: Readonly<Record<string, Fact>>;
  readonly passedOver: string;
  readonly done: OptionTexts;
  readonly notDone: OptionTexts;
  readonly why: (label: string) => string;
  readonly whyHelp: string;
  readonly results: Readonly<Record<"steps_done" | "steps_open", string>>;
  readonly ok: (label: string, measured: string) => string;
  readonly out: (label: string, measured: string, low: string, high: string) => string;
  readonly noted: (label: string, measured: string) => string;
  readonly expect: (low: string, high: string) => string;
  readonly range: (low: string, high: string) => string;
  readonly plain: Readonly<Record<string, Sentence>>;
  readonly table: { readonly title: string; readonly columns: Readonly<Record<string, string>> };
}

/** All sentences of the topic: what is said of every step is made from the step's own words. */
export function buildStartupTexts(words: StartupWords): AnyTopicTexts {
  const { title, names, summary, examples, results, plain, table } = words;
  return {
    title,
    names,
    summary,
    examples,
    facts: {
      ...words.siteFacts,
      [PASSED_OVER]: { label: words.passedOver, question: `${words.passedOver}?`, words: [] },
      ...Object.fromEntries(STARTUP_STEPS.flatMap((step) => stepFacts(step, words))),
    },
    results,
    findings: { ...plain, ...Object.fromEntries(STARTUP_STEPS.flatMap((step) => stepSentences(step, words))) },
    tables: { steps: table },
  };
}

type Step = (typeof STARTUP_STEPS)[number];

function stepFacts(step: Step, words: StartupWords): readonly (readonly [string, Fact])[] {
  const { label, question, how } = wordsOf(step, words);
  const options = { done: words.done, not_done: words.notDone };
  const fact: Fact = { label, question, help: how, words: [], ...(step.reading === undefined && { options }) };
  const why: Fact = { label, question: words.why(label), help: words.whyHelp, words: [] };
  return [[factOfStep(step.id), fact], ...(mayNeedReason(step) ? [[whyOfStep(step.id), why] as const] : [])];
}

function stepSentences(step: Step, words: StartupWords): readonly (readonly [string, Sentence])[] {
  const { id, reading } = step;
  const { label } = wordsOf(step, words);
  const named: readonly [string, Sentence] = [`step_${id}`, () => label];
  if (reading === undefined) return [named];
  return [
    named,
    [`ok_${id}`, ({ measured = "" }) => words.ok(label, measured)],
    [`out_${id}`, ({ measured = "", low = "", high = "" }) => words.out(label, measured, low, high)],
    [`noted_${id}`, ({ measured = "" }) => words.noted(label, measured)],
    [`expect_${id}`, ({ low = "", high = "" }) => words.expect(low, high)],
    [`range_${id}`, ({ low = "", high = "" }) => words.range(low, high)],
  ];
}

function wordsOf({ id }: Step, { steps }: StartupWords): StepWords {
  const words = steps[id];
  if (words === undefined) throw new Error(`no words for the step ${id}`);
  return words;
}

/** The names of the steps as findings. */
export function nameSteps(
  steps: Readonly<Record<string, StepWords>>,
): Readonly<Record<keyof typeof STEP_NAMES, () => string>> {
  const name = (id: string) => () => steps[id]?.label ?? id;
  return {
    step_filled: name("filled"),
    step_purged: name("purged"),
    step_tight: name("tight"),
    step_line_pressure: name("line_pressure"),
    step_precharge: name("precharge"),
    step_relief_free: name("relief_free"),
    step_bond: name("bond"),
    step_supply: name("supply"),
    step_air_clear: name("air_clear"),
    step_condensate_runs: name("condensate_runs"),
    step_set_temperature: name("set_temperature"),
    step_controls_set: name("controls_set"),
    step_first_rise: name("first_rise"),
    step_outlet_temperature: name("outlet_temperature"),
    step_handed_over: name("handed_over"),
  };
}
