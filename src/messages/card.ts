import type { Severity, Verdict } from "../declaration/answer.ts";
import type { Chart } from "../declaration/chart.ts";
import type { KeptFile } from "../ports/files.ts";
import type { UnitSystem } from "../units/quantity-kinds.ts";

/**
 * The neutral card: what one message shows, before any platform. Every text is plain text in the reader's language,
 * already formatted and never escaped; each door escapes for itself. A door must render every kind of block.
 */
export interface Card {
  /** Set on answers: shown as a word and a shape, never as colour alone. */
  readonly verdict?: { readonly kind: Verdict; readonly word: string };
  readonly title: string;
  readonly blocks: readonly Block[];
  /** One line that says the same as the card, for notifications and screen readers. */
  readonly summary: string;
  /** True: only the asker should see it where the door can do so. */
  readonly isPrivate?: boolean;
}

export type Block =
  | HeadlineBlock
  | TextBlock
  | RowsBlock
  | TableBlock
  | CautionBlock
  | QuestionBlock
  | ButtonsBlock
  | FormBlock
  | ChartBlock
  | ProgressBlock
  | FileBlock;

/**
 * Set on what the first screen can do without: a door shows it folded, or after the rest, and never leaves it out. A
 * heading, a headed list or a table begins a fold; what follows without a title of its own belongs to it.
 */
interface Foldable {
  readonly isDetail?: true;
}
/** The number or the sentence that answers the question. */
export interface HeadlineBlock {
  readonly kind: "headline";
  readonly text: string;
}
export interface TextBlock extends Foldable {
  readonly kind: "text";
  readonly tone: "plain" | "quiet" | "heading" | "problem";
  readonly text: string;
}
/** Label and value pairs; `note` is a short remark such as "assumed". */
export interface RowsBlock extends Foldable {
  readonly kind: "rows";
  readonly heading?: string;
  readonly rows: readonly Row[];
}
export interface Row {
  readonly label: string;
  readonly value: string;
  readonly note?: string;
}
export interface TableBlock extends Foldable {
  readonly kind: "table";
  readonly caption: string;
  readonly columns: readonly string[];
  readonly rows: readonly (readonly string[])[];
}
export interface CautionBlock {
  readonly kind: "caution";
  readonly severity: Severity;
  /** The severity in the reader's language. */
  readonly word: string;
  readonly text: string;
  /** How to show on site that it is met. */
  readonly show?: string;
  readonly cites: string;
}
/** A guided question. Its answers are buttons; anything else may be typed. */
export interface QuestionBlock {
  readonly kind: "question";
  readonly prompt: string;
  readonly help?: string;
  /** "2 of 5". */
  readonly progress?: string;
  /** A day is asked for: to pick one is the same as to type it, YYYY-MM-DD, for this question. */
  readonly day?: { readonly aim: Aim; readonly value?: string };
}
export interface ButtonsBlock extends Foldable {
  readonly kind: "buttons";
  readonly buttons: readonly Button[];
}
/**
 * Pressing a button is the same as typing `say`; `aim` says which walk or answer it was offered for, and which fact
 * ("*" where it is about the whole).
 */
export interface Button {
  readonly label: string;
  readonly say: string;
  readonly aim?: Aim;
  readonly style?: "primary" | "danger";
}
export interface Aim {
  readonly walk: string;
  readonly fact: string;
}
/** All the facts of one topic at once; what is sent back is what a person typed or chose in each field. */
export interface FormBlock {
  readonly kind: "form";
  readonly topic: string;
  readonly title: string;
  readonly submit: string;
  readonly fields: readonly FormField[];
}
export interface FormField {
  readonly fact: string;
  readonly label: string;
  readonly help?: string;
  readonly required: boolean;
  readonly value?: string;
  readonly input:
    | { readonly type: "text"; readonly placeholder?: string }
    /** A calendar day; what is sent back is YYYY-MM-DD. */
    | { readonly type: "day" }
    /** A number without a unit. */
    | NumberInput
    | { readonly type: "choice"; readonly options: readonly { readonly value: string; readonly label: string }[] };
  /** A sentence about what was wrong with the last thing typed here. */
  readonly problem?: string;
}
/** Both ends are included; `whole` where a fraction makes no sense. */
export interface NumberInput {
  readonly type: "number";
  readonly min?: number;
  readonly max?: number;
  readonly whole?: true;
}
/**
 * A picture as data, with the words that it needs and a text that says the same. `labels` holds the name of every
 * series and mark by its id, that of the x axis under "x", and short names of the months under "month-1" to "month-12".
 */
export interface ChartBlock {
  readonly kind: "chart";
  readonly chart: Chart;
  /** The units that its numbers are drawn in; the chart itself holds base units. */
  readonly units: UnitSystem;
  readonly title: string;
  readonly alt: string;
  readonly labels: Readonly<Record<string, string>>;
  readonly table: TableBlock;
}
/** A photo or paper that is kept; `text` says what it is. A door shows it, hands it over, or says where it is to be had. */
export interface FileBlock extends Foldable {
  readonly kind: "file";
  readonly file: KeptFile;
  readonly text: string;
}
export interface ProgressBlock {
  readonly kind: "progress";
  readonly text: string;
  readonly done: number;
  readonly total: number;
}
