import type { Hazard } from "../faults/knowledge.ts";

/** What is seen to before a hand goes in, hazard by hazard: short lines, in the order they are done. */
export type HazardTexts = Readonly<Record<Hazard, HazardText>>;
export interface HazardText {
  readonly label: string;
  readonly steps: readonly [string, ...string[]];
}
