/** A choice that is taken or not, and what taking it costs. */
export interface Choice {
  readonly name: string;
  readonly cost: number;
}
/** What choices must keep to together: `min` ≤ Σ factor × choice ≤ `max`. */
export interface Row {
  readonly terms: readonly (readonly [choice: string, factor: number])[];
  readonly min?: number;
  readonly max?: number;
}
/** A question of yes or no for every choice: the least cost that keeps to all rows. Names are letters, digits and underscores. */
export interface ChoiceModel {
  readonly choices: readonly Choice[];
  readonly rows: readonly Row[];
}
/** "unfinished": it took too long to prove anything. */
export type Solution =
  | { readonly kind: "optimal"; readonly taken: ReadonlySet<string>; readonly cost: number }
  | { readonly kind: "infeasible" }
  | { readonly kind: "unfinished" };

/** Solves a model to its proven optimum. The same model always comes to the same solution. */
export type Solve = (model: ChoiceModel) => Solution;
