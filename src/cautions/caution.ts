import type { DataOf, DatumKind, Decider, RaisedCaution, Severity } from "../declaration/answer.ts";
import type { Source } from "../declaration/source.ts";
import type { Amendment, Code } from "./code.ts";
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
  readonly check: (site: SiteFacts, code: Code) => DataOf<D> | undefined;
  readonly examples: {
    readonly fires: readonly [Example, ...Example[]];
    readonly silent: readonly [Example, ...Example[]];
  };
}
export interface Example {
  readonly name: string;
  readonly site: SiteFacts;
  /** Family of the plumbing code that the case stands under, where it matters. */
  readonly plumbing?: string;
}

/** A caution with its own data type erased. */
export interface AnyCaution {
  readonly id: string;
  readonly severity: Severity;
  readonly cites: readonly [Citation, ...Citation[]];
  readonly decides: Decider;
  readonly data: DataSpec;
  readonly check: (site: SiteFacts, code: Code) => RaisedCaution["data"] | undefined;
  readonly examples: CautionDeclaration<DataSpec>["examples"];
}

/** Declares a caution; the type of its data follows from `data`. */
export function declareCaution<const D extends DataSpec>(declaration: CautionDeclaration<D>): CautionDeclaration<D> {
  return declaration;
}

export const WORST_FIRST = ["stop", "must", "should", "note"] as const satisfies readonly Severity[];

/** Every caution that these facts raise under this code, as amended, worst first, then by id. */
export function raiseCautions(cautions: readonly AnyCaution[], site: SiteFacts, code: Code): readonly RaisedCaution[] {
  return raiseAll(cautions, site, code).filter(({ local }) => local?.action !== "silence");
}

/** The cautions that these facts would raise, had no local amendment silenced them. */
export function silencedCautions(
  cautions: readonly AnyCaution[],
  site: SiteFacts,
  code: Code,
): readonly RaisedCaution[] {
  return raiseAll(cautions, site, code).filter(({ local }) => local?.action === "silence");
}

function raiseAll(cautions: readonly AnyCaution[], site: SiteFacts, code: Code): readonly RaisedCaution[] {
  const amendments = new Map(code.amendments.map((amendment) => [amendment.caution, amendment]));
  const raised = cautions.flatMap((caution): RaisedCaution[] => {
    const amendment = amendments.get(caution.id);
    const data = caution.check(site, amendment === undefined ? code : withStricterLimit(code, amendment));
    if (data === undefined) return [];
    const { id, severity, cites, decides } = caution;
    const plain = { id, severity, data, cites, decides };
    // A danger to life is raised whatever a book says about it.
    const isKept = amendment === undefined || (severity === "stop" && amendment.action === "silence");
    return [isKept ? plain : amend(plain, amendment)];
  });
  return raised.sort(
    (a, b) => WORST_FIRST.indexOf(a.severity) - WORST_FIRST.indexOf(b.severity) || a.id.localeCompare(b.id),
  );
}

function withStricterLimit(code: Code, { limit, cites }: Amendment): Code {
  if (limit === undefined) return code;
  const { bound } = code.limits[limit.id];
  return { ...code, limits: { ...code.limits, [limit.id]: { value: limit.value, bound, cites } } };
}

function amend(raised: RaisedCaution, amendment: Amendment): RaisedCaution {
  const { action, severity, asks, because, cites } = amendment;
  const { checkedOn: _, ...by } = cites;
  const [first, ...others] = raised.cites;
  return {
    ...raised,
    ...(severity !== undefined && { severity }),
    cites: action === "replace" ? [cites] : [first, ...others, ...(action === "tighten" ? [cites] : [])],
    local: { action, because, by, ...(asks !== undefined && { asks }) },
  };
}
