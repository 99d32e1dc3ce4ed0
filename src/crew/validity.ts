import { CREDENTIAL_KINDS, type CredentialKind } from "./credential-kinds-table.ts";
import type { Credential, CrewMember, Tool } from "./crew.ts";
import { addDays, daysBetween } from "./days.ts";

/** A look into the register counts for so long [days]; common practice of the house. */
const REGISTER_CHECK_days = 90;
/** How far ahead people are told of what runs out [days]. */
export const LAPSE_HORIZONS_days = [30, 60, 90] as const;
export type LapseHorizon = (typeof LAPSE_HORIZONS_days)[number];

/**
 * How a credential stands on a day. "valid" holds through the day on which it expires. "grace": it ran out, and work may go
 * on until `until`. "warns": it ran out, and that stops nobody. "unchecked": nobody has ever looked into the register, or too
 * long ago; that stops nobody either, but is said. "lapsed": it stops the work that needs it.
 */
export type Standing =
  | { readonly is: "valid"; readonly until?: string }
  | { readonly is: "grace"; readonly until: string }
  | { readonly is: "warns" | "lapsed"; readonly until: string }
  | { readonly is: "unchecked"; readonly until?: string };

export function standingOf(credential: Credential, day: string): Standing {
  const { kind, expires, checked, grace_days = 0 } = credential;
  const { lapse, hasRegister } = CREDENTIAL_KINDS[kind];
  if (expires !== undefined && daysBetween(expires, day) > 0) {
    const rule = credential.lapse ?? lapse;
    if (rule === "warns") return { is: "warns", until: expires };
    const until = addDays(expires, rule === "grace" ? grace_days : 0);
    return daysBetween(until, day) > 0 ? { is: "lapsed", until: expires } : { is: "grace", until };
  }
  const until = expires !== undefined && { until: expires };
  const isFresh = checked !== undefined && daysBetween(checked, day) <= REGISTER_CHECK_days;
  return hasRegister && !isFresh ? { is: "unchecked", ...until } : { is: "valid", ...until };
}

/** The best that somebody holds of some kinds on a day, or nothing where they never held one. */
export function bestStanding(
  { credentials }: CrewMember,
  kinds: readonly CredentialKind[],
  day: string,
): Standing | undefined {
  const order = ["valid", "unchecked", "grace", "warns", "lapsed"] as const satisfies readonly Standing["is"][];
  const held = credentials.filter(({ kind }) => kinds.includes(kind)).map((one) => standingOf(one, day));
  return held.sort((a, b) => order.indexOf(a.is) - order.indexOf(b.is))[0];
}

/** True: somebody may do on that day what asks for one of these kinds. */
export function mayWork(member: CrewMember, kinds: readonly CredentialKind[], day: string): boolean {
  const standing = bestStanding(member, kinds, day);
  return standing !== undefined && standing.is !== "lapsed";
}

/** True: the calibration of a tool counts on that day, the last day included. */
export function isCalibrated({ calibratedUntil }: Tool, day: string): boolean {
  return calibratedUntil === undefined || daysBetween(day, calibratedUntil) >= 0;
}

/** Something of a person's that runs out soon. */
export interface Lapse {
  readonly person: string;
  readonly what:
    | { readonly is: "credential"; readonly kind: CredentialKind }
    | { readonly is: "training"; readonly subject: string }
    | { readonly is: "calibration"; readonly tool: string; readonly id: string };
  readonly on: string;
  /** Days from the day asked about to the last day on which it counts. */
  readonly in_days: number;
  readonly within: LapseHorizon;
}

/** What counts on a day and runs out within 90 days after it, the soonest first; each with the horizon that it falls in. */
export function lapsesOf(member: CrewMember, day: string): readonly Lapse[] {
  const { person, credentials, training, tools } = member;
  const dated: readonly (readonly [Lapse["what"], string | undefined])[] = [
    ...credentials.map(({ kind, expires }) => [{ is: "credential", kind }, expires] as const),
    ...training.map(({ subject, until }) => [{ is: "training", subject }, until] as const),
    ...tools.map(({ tool, id, calibratedUntil }) => [{ is: "calibration", tool, id }, calibratedUntil] as const),
  ];
  const soon = dated.flatMap(([what, on]): Lapse[] => {
    if (on === undefined) return [];
    const in_days = daysBetween(day, on);
    const within = LAPSE_HORIZONS_days.find((horizon) => in_days <= horizon);
    return in_days < 0 || within === undefined ? [] : [{ person, what, on, in_days, within }];
  });
  return soon.sort((a, b) => a.in_days - b.in_days);
}
