import type { Language } from "../messages/language.ts";
import type { KeptFile } from "./files.ts";

/** One reading on a scale of its own: what was measured, and between which ends it is accepted, all in one unit. */
export interface Gauge {
  readonly label: string;
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly valueText: string;
  readonly lowText: string;
  readonly highText: string;
}
/** A photo of a job, with who sent it and when; `instead` is printed where the picture cannot be. */
export interface PaperPhoto {
  readonly file: KeptFile;
  readonly caption: string;
  readonly missing: string;
  readonly elsewhere: string;
}
export type PaperBlock =
  | { readonly kind: "heading"; readonly text: string }
  | { readonly kind: "text"; readonly tone: "plain" | "quiet" | "strong"; readonly text: string }
  /** `widths` are shares of the page. The first row says what stands in each column. */
  | {
      readonly kind: "table";
      readonly widths: readonly number[];
      readonly columns: readonly string[];
      readonly rows: readonly (readonly string[])[];
    }
  /** Label and value, two to a line. */
  | { readonly kind: "pairs"; readonly pairs: readonly (readonly [label: string, value: string])[] }
  | { readonly kind: "gauges"; readonly alt: string; readonly legend: string; readonly gauges: readonly Gauge[] }
  | { readonly kind: "photos"; readonly photos: readonly PaperPhoto[] }
  | {
      readonly kind: "signatures";
      readonly lines: readonly { readonly who: string; readonly date: string }[];
    };

/** A record to print: everything in words already, in one language and one system of units. */
export interface RecordPaper {
  readonly language: Language;
  readonly sheet: "letter" | "a4";
  readonly title: string;
  readonly subject: string;
  readonly company: string;
  /** Stands on every page, such as that the data are invented. */
  readonly warning?: string;
  /** Stands at the foot of every page, before the number of the page: "Job 1007". */
  readonly mark: string;
  readonly foot: string;
  /** Said at the end where the fonts lack something that somebody wrote; a mark stands in its place. */
  readonly leftOut: string;
  readonly page: string;
  readonly of: string;
  /** When what it holds was last changed; the paper bears this date and no other [ms since 1970-01-01 UTC]. */
  readonly at_ms: number;
  readonly blocks: readonly PaperBlock[];
}

/** Fetches a kept picture; nothing where it is no longer there. */
export type ReadPhoto = (hash: string) => Promise<Uint8Array | undefined>;

/** Makes papers. The same record and photos give the same bytes. */
export interface PaperPort {
  drawRecord(paper: RecordPaper, readPhoto: ReadPhoto): Promise<Uint8Array>;
}
