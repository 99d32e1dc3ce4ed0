/** The part of Adaptive Cards 1.5 that Oldhand uses, typed so that nothing else can be sent. */
export interface AdaptiveCard {
  readonly $schema: string;
  readonly type: "AdaptiveCard";
  readonly version: "1.5";
  readonly lang: string;
  readonly fallbackText: string;
  readonly speak: string;
  readonly body: readonly AdaptiveElement[];
}

export type AdaptiveElement =
  | AdaptiveText
  | AdaptiveRichText
  | AdaptiveContainer
  | AdaptiveFacts
  | AdaptiveTable
  | AdaptiveImage
  | AdaptiveActions
  | AdaptiveInput;

type Spacing = "none" | "small" | "medium" | "large";
type Colour = "default" | "good" | "warning" | "attention" | "accent";

/** Markdown is read in here: only texts without any of its characters may come this way. */
interface AdaptiveText {
  readonly type: "TextBlock";
  readonly text: string;
  readonly wrap: true;
  readonly style?: "heading";
  readonly size?: "medium" | "large";
  readonly weight?: "bolder";
  readonly spacing?: Spacing;
}
/** No Markdown is read in here. */
export interface AdaptiveRichText {
  readonly type: "RichTextBlock";
  readonly inlines: readonly AdaptiveRun[];
  readonly spacing?: Spacing;
}
export interface AdaptiveRun {
  readonly type: "TextRun";
  readonly text: string;
  readonly size?: "small" | "medium" | "large";
  readonly weight?: "bolder";
  readonly color?: Colour;
  readonly isSubtle?: true;
}
export interface AdaptiveContainer {
  readonly type: "Container";
  readonly style?: "emphasis" | Colour;
  readonly bleed?: true;
  readonly separator?: true;
  readonly spacing?: Spacing;
  readonly id?: string;
  readonly isVisible?: false;
  readonly minHeight?: string;
  readonly verticalContentAlignment?: "center";
  readonly selectAction?: AdaptiveToggle;
  readonly items: readonly AdaptiveElement[];
}
/** Pressed, it shows what is hidden, or hides it again. */
interface AdaptiveToggle {
  readonly type: "Action.ToggleVisibility";
  readonly title: string;
  readonly targetElements: readonly string[];
}
interface AdaptiveFacts {
  readonly type: "FactSet";
  readonly facts: readonly { readonly title: string; readonly value: string }[];
}
/** The first row is the header, by default: the schema and the renderer spell the property that says so differently. */
export interface AdaptiveTable {
  readonly type: "Table";
  readonly columns: readonly { readonly width: number }[];
  readonly rows: readonly {
    readonly type: "TableRow";
    readonly cells: readonly { readonly type: "TableCell"; readonly items: readonly AdaptiveElement[] }[];
  }[];
}
interface AdaptiveImage {
  readonly type: "Image";
  readonly url: string;
  readonly altText: string;
  readonly size: "stretch";
  /** A tap shows it as large as the screen. */
  readonly msteams: { readonly allowExpand: true };
}
export interface AdaptiveActions {
  readonly type: "ActionSet";
  readonly actions: readonly AdaptiveSubmit[];
}
export interface AdaptiveSubmit {
  readonly type: "Action.Submit";
  readonly title: string;
  readonly tooltip?: string;
  readonly style?: "positive" | "destructive";
  readonly associatedInputs: "auto" | "none";
  readonly data: Readonly<Record<string, unknown>>;
}
interface AdaptiveField {
  readonly id: string;
  readonly label: string;
  readonly isRequired?: true;
  readonly errorMessage?: string;
  readonly value?: string;
}
export type AdaptiveInput =
  | (AdaptiveField & { readonly type: "Input.Text"; readonly placeholder?: string })
  | (AdaptiveField & { readonly type: "Input.Date" })
  | (Omit<AdaptiveField, "value"> & {
      readonly type: "Input.Number";
      readonly value?: number;
      readonly min?: number;
      readonly max?: number;
    })
  | (AdaptiveField & {
      readonly type: "Input.ChoiceSet";
      readonly style: "compact" | "expanded";
      readonly wrap: true;
      readonly choices: readonly { readonly title: string; readonly value: string }[];
    });
