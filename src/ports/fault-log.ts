/** Something of ours that failed, with the short id that the person was given, if there was one. */
export interface Fault {
  readonly id: string;
  readonly doing: "open" | "answer" | "save" | "progress" | "post" | "file";
  readonly door: string;
  readonly workspace?: string;
  readonly error: unknown;
}

/** Where faults of ours are written down, so that a reported id can be found. */
export interface FaultLog {
  report(fault: Fault): void;
}
