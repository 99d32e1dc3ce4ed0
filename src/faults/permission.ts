import type { Asker } from "./case.ts";
import type { Check, Doer, Hazard } from "./knowledge.ts";

/** Why somebody cannot do a check now. */
export type Obstacle =
  | { readonly kind: "doer"; readonly doer: Doer }
  | { readonly kind: "tools"; readonly tools: readonly string[] };

/** What anybody may do who stands in front of the unit. */
const FOR_EVERYBODY: readonly Doer[] = ["household", "crew"];
/** Hazards that only somebody with one of these on record may go near, whatever the check itself says. */
const GATED: Partial<Record<Hazard, readonly [Doer, ...Doer[]]>> = {
  live: ["qualified", "electrician"],
  refrigerant: ["refrigerant"],
};

/** What keeps this person from a check: the credential first, for no tool makes up for it; nothing when they may. */
export function findObstacle({ doer, hazards, tools }: Check, asker: Asker): Obstacle | undefined {
  if (!mayAct(asker, doer)) return { kind: "doer", doer };
  for (const hazard of hazards) {
    const needed = GATED[hazard];
    if (needed !== undefined && !needed.some((one) => asker.doers.includes(one)))
      return { kind: "doer", doer: needed[0] };
  }
  const missing = tools.filter((tool) => asker.tools !== undefined && !asker.tools.includes(tool));
  return missing.length === 0 ? undefined : { kind: "tools", tools: missing };
}

/** True when the record lets this person do what a check or a remedy asks for; an electrician is qualified. */
export function mayAct({ doers }: Asker, doer: Doer): boolean {
  if (FOR_EVERYBODY.includes(doer) || doers.includes(doer)) return true;
  return doer === "qualified" && doers.includes("electrician");
}
