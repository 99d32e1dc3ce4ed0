import { type AdoptedCode, type Code, type CodeArea, isStricter, type Limit, type LimitId } from "../cautions/code.ts";
import { LIMIT_IDS, type LimitRow, type LimitTable, type LimitValue } from "./code-limits.ts";

/**
 * The numbers that hold at a place, each with the document that is followed: the place's own; else the adopted family
 * and edition; else the adopted family in its nearest edition; else the strictest of all. What disagrees is kept beside.
 */
export function resolveLimits(
  table: LimitTable,
  adopted: Readonly<Record<CodeArea, AdoptedCode>>,
  place: string,
): Code["limits"] {
  const resolved = LIMIT_IDS.map((id): [LimitId, Limit] => {
    const row = table[id];
    if (row === undefined) throw new Error(`the limits that come with Oldhand lack ${id}`);
    return [id, resolve(row, adopted[row.area], place)];
  });
  return Object.fromEntries(resolved) as Code["limits"];
}

function resolve({ values }: LimitRow, adopted: AdoptedCode, place: string): Limit {
  const [first, ...rest] = values.filter((one) => one.place === undefined || one.place === place);
  const all: readonly [LimitValue, ...LimitValue[]] = first === undefined ? [values[0]] : [first, ...rest];
  const { value, bound, cites } = follow(all, adopted, place);
  const others = all.filter((one) => one.value !== value).map((one) => ({ value: one.value, cites: one.cites }));
  return { value, bound, cites, ...(others.length > 0 && { others }) };
}

function follow(all: readonly [LimitValue, ...LimitValue[]], adopted: AdoptedCode, place: string): LimitValue {
  const own = all.find((one) => one.place === place);
  if (own !== undefined) return own;
  const year = (code: AdoptedCode | undefined) => Number.parseInt(code?.edition ?? "", 10) || 0;
  const away = (one: LimitValue) => Math.abs(year(one.code) - year(adopted));
  const [nearest] = all
    .filter(({ code }) => code?.family === adopted.family)
    .sort(
      (a, b) =>
        Number(b.code?.edition === adopted.edition) - Number(a.code?.edition === adopted.edition) || away(a) - away(b),
    );
  return nearest ?? all.reduce((strictest, one) => (isStricter(one.value, strictest) ? one : strictest));
}
