import { type AnyCaution, WORST_FIRST } from "../cautions/caution.ts";
import { type Code, isStricter, type LimitId } from "../cautions/code.ts";
import type { BookFault } from "./book-schema.ts";
import type { WrittenAmendment } from "./code-book.ts";

/**
 * What is wrong with the amendments of a book. Safe by default: a caution of severity stop is never silenced, nothing is
 * loosened, and what an amendment cannot do is refused rather than overlooked.
 * @param cautions left out where somebody else judged them already
 */
export function judgeAmendments(
  amendments: readonly WrittenAmendment[],
  cautions: readonly AnyCaution[] | undefined,
  codeAt: (place: string | undefined) => Code | undefined,
): readonly BookFault[] {
  return amendments.flatMap((one, row) => {
    const fault = (field: string, reason: string): BookFault => ({ path: ["amendments", row, field], reason });
    const isTwice = amendments
      .slice(0, row)
      .some(({ caution, place }) => caution === one.caution && place === one.place);
    const caution = cautions?.find(({ id }) => id === one.caution);
    return [
      ...(isTwice ? [fault("caution", `${one.caution} is amended above already; write one amendment for it`)] : []),
      ...(cautions !== undefined && caution === undefined
        ? [
            fault(
              "caution",
              `there is no caution ${one.caution}; say caution to see their ids, or read the page of cautions`,
            ),
          ]
        : []),
      ...judgeAction(one, fault),
      ...(caution === undefined ? [] : judgeAgainst(one, caution, fault)),
      ...judgeLimits(one, codeAt(one.place), row),
    ];
  });
}

type Fault = (field: string, reason: string) => BookFault;

function judgeAction({ action, severity, limit, asks }: WrittenAmendment, fault: Fault): readonly BookFault[] {
  const changes = severity !== undefined || limit !== undefined;
  if (action === "tighten")
    return changes || asks !== undefined
      ? []
      : [fault("action", "tighten needs a severer severity, a stricter limit, or asks")];
  if (changes) return [fault("action", `${action} takes neither severity nor limit; write tighten for those`)];
  if (action === "replace" && asks === undefined)
    return [fault("action", "replace needs asks: what is asked here instead")];
  if (action === "silence" && asks !== undefined)
    return [fault("action", "silence asks nothing; write replace to ask something else")];
  return [];
}

function judgeAgainst({ action, severity }: WrittenAmendment, caution: AnyCaution, fault: Fault): readonly BookFault[] {
  if (action === "silence" && caution.severity === "stop")
    return [
      fault("action", `${caution.id} is a danger to life and cannot be silenced; write replace to ask something else`),
    ];
  const isSeverer = severity === undefined || WORST_FIRST.indexOf(severity) < WORST_FIRST.indexOf(caution.severity);
  if (isSeverer) return [];
  return [fault("severity", `${severity} is not severer than ${caution.severity}, which ${caution.id} has already`)];
}

function judgeLimits({ limit }: WrittenAmendment, code: Code | undefined, row: number): readonly BookFault[] {
  const named = Object.entries(limit ?? {}).flatMap(([id, value]) =>
    value === undefined ? [] : [{ id: id as LimitId, value }],
  );
  if (limit !== undefined && named.length !== 1)
    return [{ path: ["amendments", row, "limit"], reason: "name one limit with its number" }];
  return named.flatMap(({ id, value }) => {
    const adopted = code?.limits[id];
    if (adopted === undefined || isStricter(value, adopted)) return [];
    return [{ path: ["amendments", row, "limit", id], reason: "is not stricter than the code that was adopted" }];
  });
}
