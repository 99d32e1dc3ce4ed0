/** Every sentence of a job's record, its summary for the team and its papers. Both languages have this shape. */
export interface RecordTexts {
  /** Words of the record as a page: its name, and what stands on every page. */
  readonly paper: {
    readonly title: (job: string) => string;
    readonly fileName: (job: string) => string;
    readonly subject: (unit: string, place: string) => string;
    readonly page: string;
    readonly of: string;
    readonly decides: string;
    readonly invented: string;
    readonly fileText: (job: string) => string;
    readonly jsonText: (job: string) => string;
    readonly sheetText: string;
    /** The paper could not be made now. */
    readonly notMade: string;
    /** What somebody wrote has signs that the fonts of the paper lack; `[…]` stands in their place. */
    readonly leftOut: string;
    readonly signatures: string;
    readonly signatureNote: string;
    readonly crewSigns: string;
    readonly customerSigns: string;
    readonly dateSigned: string;
    readonly photoMissing: (name: string) => string;
    readonly photoElsewhere: (name: string) => string;
  };
  readonly opened: string;
  readonly started: string;
  readonly closed: string;
  /** Names the moment of the last change. */
  readonly asOfLabel: string;
  readonly rowColumns: {
    readonly what: string;
    readonly stands: string;
    readonly value: string;
    readonly amount: string;
  };
  readonly measuredCount: (accepted: string, all: string) => string;
  readonly measuredRow: string;
  readonly inThread: string;
  readonly threadTitle: (job: string) => string;
  readonly noPaperYet: (job: string) => string;
  readonly readingBy: string;
  readonly itemColumns: readonly [what: string, owner: string, due: string];
  readonly closedItems: string;
  readonly closedItem: (by: string, when: string) => string;
  readonly cautionColumns: readonly [caution: string, stands: string];
  readonly seen: (by: string, when: string) => string;
  readonly skipped: (by: string, when: string, because: string) => string;
  readonly notes: string;
  readonly byWhen: (by: string, when: string) => string;
  readonly faultWalk: string;
  readonly faultColumns: readonly [what: string, found: string, by: string];
  readonly faultFinding: string;
  readonly photos: string;
  readonly papers: string;
  readonly fileBy: (name: string, by: string, when: string) => string;
  readonly chartTitle: string;
  readonly chartLegend: string;
  readonly chartAlt: (lines: string) => string;
  readonly chartLine: (what: string, measured: string, low: string, high: string) => string;
}
