import loadHighs from "highs";
import type { ChoiceModel, Solution, Solve } from "../../src/ports/solver.ts";
import { writeLp } from "./write-lp.ts";

/** Nobody waits longer for a plan of one company [s]. */
const LONGEST_s = 5;
const HALF = 0.5;
/** What a proven optimum asks for: no gap between the best solution and the bound. */
const TO_THE_END = {
  mip_rel_gap: 0,
  mip_abs_gap: 0,
  random_seed: 0,
  output_flag: false,
  time_limit: LONGEST_s,
} as const;

/** The package's types describe its CommonJS form, in which the loader is one step further down than in this one. */
const load = loadHighs as unknown as typeof loadHighs.default;

/** Opens HiGHS, a solver of mixed-integer programs, as WebAssembly in this process. */
export async function openHighsSolver(): Promise<Solve> {
  const highs = await load();
  return (model) => {
    const bare = judgeBareRows(model);
    if (bare !== undefined) return bare;
    const solution = highs.solve(
      writeLp({ ...model, rows: model.rows.filter(({ terms }) => terms.length > 0) }),
      TO_THE_END,
    );
    if (solution.Status === "Infeasible") return { kind: "infeasible" };
    if (solution.Status !== "Optimal") return { kind: "unfinished" };
    const taken = model.choices.filter(({ name }) => primalOf(solution.Columns[name]) > HALF);
    return {
      kind: "optimal",
      taken: new Set(taken.map(({ name }) => name)),
      cost: taken.reduce((total, { cost }) => total + cost, 0),
    };
  };
}

/** What needs no solver: a row without a term is kept by nothing or by anything, and no choices leave nothing to choose. */
function judgeBareRows({ choices, rows }: ChoiceModel): Solution | undefined {
  const isBroken = rows.some(({ terms, min = 0, max = 0 }) => terms.length === 0 && (min > 0 || max < 0));
  if (isBroken) return { kind: "infeasible" };
  return choices.length === 0 ? { kind: "optimal", taken: new Set(), cost: 0 } : undefined;
}

function primalOf(column: object | undefined): number {
  return column !== undefined && "Primal" in column && typeof column.Primal === "number" ? column.Primal : 0;
}
