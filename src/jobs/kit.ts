import type { Stock } from "../crew/crew.ts";
import type { KitReason, KitRule } from "./kit-rule.ts";
import type { KIT_TOLD, KitSite } from "./kit-told-facts.ts";

/** One line of the kit: how much of a part, why, and how much of it the truck has already. */
export interface KitLine {
  readonly part: string;
  /** Pieces, or metres of what is cut to length. */
  readonly amount: number;
  /** The rules that ask for it. */
  readonly because: readonly [KitReason, ...KitReason[]];
  readonly onTruck: number;
  /** What must still be loaded. */
  readonly toLoad: number;
  /** True: ordered for the job, so that no shelf is expected to hold it. */
  readonly isOrdered: boolean;
}
export interface Kit {
  readonly lines: readonly KitLine[];
  /** Facts that rules turn on and that nobody has told, each once. */
  readonly open: readonly (keyof typeof KIT_TOLD)[];
}

/**
 * The parts for a job: what every rule asks for on this site, the same part added up, in the order of the rules.
 * @param stock what the truck holds, by part
 */
export function collectKit(rules: readonly KitRule[], site: KitSite, stock: Stock = {}): Kit {
  const lines = new Map<string, KitLine>();
  for (const { id, parts, isOrdered = false } of rules)
    for (const { part, amount } of parts(site) ?? []) {
      const before = lines.get(part);
      const sum = (before?.amount ?? 0) + amount;
      const onTruck = Math.min(sum, stock[part] ?? 0);
      const because = before === undefined ? ([id] as const) : ([...before.because, id] as const);
      lines.set(part, { part, amount: sum, because, onTruck, toLoad: isOrdered ? 0 : sum - onTruck, isOrdered });
    }
  return { lines: [...lines.values()], open: openFacts(rules, site) };
}

function openFacts(rules: readonly KitRule[], site: KitSite): Kit["open"] {
  const known = new Set(
    Object.entries(site).flatMap(([field, value]) => (value === undefined ? [] : [plainId(field)])),
  );
  const open = rules.filter(({ asks }) => asks.length > 0 && !asks.some((fact) => known.has(fact)));
  return [...new Set(open.map(({ asks }) => asks[0]).filter((fact) => fact !== undefined))];
}

/** The id of a fact whose field carries its unit: `line_pressure_kPa` is line_pressure. */
function plainId(field: string): string {
  return field.replace(/_(L|C|kPa|m|m3)$/, "");
}
