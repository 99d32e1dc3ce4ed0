import type { DataOf, DatumKind, Decider, RaisedCaution, Severity } from "../declaration/answer.ts";
import type { Source } from "../declaration/source.ts";
import type { SiteFacts } from "./site-facts.ts";

type DataSpec = Readonly<Record<string, DatumKind>>;

/** Where a caution comes from; `checkedOn` says when somebody last looked. */
export interface Citation extends Source {
  readonly checkedOn: string;
}

/** One code or safety caution: what triggers it, who says so, who decides, and cases that fire and that stay silent. */
export interface CautionDeclaration<D extends DataSpec> {
  readonly id: string;
  readonly severity: Severity;
  readonly cites: readonly [Citation, ...Citation[]];
  readonly decides: Decider;
  readonly data: D;
  /** The data of the caution when these facts raise it, else nothing. */
  readonly check: (site: SiteFacts) => DataOf<D> | undefined;
  readonly examples: {
    readonly fires: readonly [Example, ...Example[]];
    readonly silent: readonly [Example, ...Example[]];
  };
}
export interface Example {
  readonly name: string;
  readonly site: SiteFacts;
}

/** A caution with its own data type erased. */
export interface AnyCaution {
  readonly id: string;
  readonly severity: Severity;
  readonly cites: readonly [Citation, ...Citation[]];
  readonly decides: Decider;
  readonly data: DataSpec;
  readonly check: (site: SiteFacts) => RaisedCaution["data"] | undefined;
  readonly examples: CautionDeclaration<DataSpec>["examples"];
}

/** Declares a caution; the type of its data follows from `data`. */
export function declareCaution<const D extends DataSpec>(declaration: CautionDeclaration<D>): CautionDeclaration<D> {
  return declaration;
}

const WORST_FIRST: readonly Severity[] = ["stop", "must", "should", "note"];

/** Every caution that these facts raise, worst first, then by id. */
export function raiseCautions(cautions: readonly AnyCaution[], site: SiteFacts): readonly RaisedCaution[] {
  const raised = cautions.flatMap((caution): RaisedCaution[] => {
    const data = caution.check(site);
    if (data === undefined) return [];
    const { id, severity, cites, decides } = caution;
    return [{ id, severity, data, cites, decides }];
  });
  return raised.sort(
    (a, b) => WORST_FIRST.indexOf(a.severity) - WORST_FIRST.indexOf(b.severity) || a.id.localeCompare(b.id),
  );
}
