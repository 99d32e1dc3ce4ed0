/** One line of the comparison: what is ours against the bare thing, measured in the same run. */
export interface BenchRow {
  readonly name: string;
  readonly unit: string;
  readonly door: number;
  readonly bare: number;
  readonly ratio: number;
  readonly budget: string;
  readonly isKept: boolean;
}
