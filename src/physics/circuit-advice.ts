import type { AnswerTable, FindingOf, FindingSpecs } from "../declaration/answer.ts";
import { q } from "../declaration/answer.ts";
import {
  ADVISED_TOTAL_DROP,
  type CircuitOptionCase,
  conductorChoices,
  conductorForDrop,
  feederSpare_A,
  otherMetal,
  PLUG_IN_BELOW_V,
  PLUG_SHARE,
  supplyChoices,
  totalDrop,
} from "./circuit-options.ts";
import type { CircuitPlan } from "./circuit-plan.ts";
import { nameConductor } from "./circuit-results.ts";

/** What the circuit stands among, as far as it was told. */
interface CircuitSurroundings {
  readonly shared: boolean | undefined;
  readonly disconnect: "in_sight" | "lockable" | "neither" | undefined;
  readonly breaker_listed: boolean | undefined;
  readonly ground_fault: boolean | undefined;
  readonly breaker_A: number | undefined;
  readonly room: string | undefined;
}

/** Where receptacles are asked to trip on ground faults. Source: NEC 2023 210.8(A), from memory. */
const GUARDED_ROOMS: readonly string[] = ["basement", "garage", "crawl_space", "outdoors"];

export const CIRCUIT_ADVICE = {
  drop_high: { share: "share", advised: "share", conductor: "word", better: "share" },
  drop_beyond_table: { share: "share", advised: "share" },
  total_drop_high: { total: "share", advised: "share" },
  other_metal: { other: "word" },
  aluminium_joints: {},
  feeder_full: { spare: "current", load: "current" },
  feeder_holds: { spare: "current" },
  feeder_unknown: {},
  circuit_shared: {},
  plug_in: { load: "current", most: "current", breaker: "current" },
  plug_in_over: { load: "current", most: "current", breaker: "current" },
  plug_in_later: {},
  receptacle_unguarded: {},
  no_disconnect: {},
  breaker_not_listed: {},
  within: {},
  over_limit: {},
} as const satisfies FindingSpecs;
type F = FindingOf<typeof CIRCUIT_ADVICE>;

/** What is lost on the wire, and which conductor keeps the asked share. */
export function dropFindings(known: CircuitOptionCase, plan: CircuitPlan): readonly F[] {
  const found: F[] = [];
  const { drop } = plan;
  const advised = q("share", known.drop_limit);
  if (drop !== undefined && drop.share > known.drop_limit) {
    const share = q("share", drop.share);
    const better = conductorForDrop(known, plan);
    if (better === undefined) found.push({ code: "drop_beyond_table", data: { share, advised } });
    else {
      const conductor = nameConductor(better.row, known.wire_metal);
      found.push({ code: "drop_high", data: { share, advised, conductor, better: q("share", better.share) } });
    }
  }
  const total = totalDrop(known, plan);
  if (total !== undefined && total > ADVISED_TOTAL_DROP)
    found.push({
      code: "total_drop_high",
      data: { total: q("share", total), advised: q("share", ADVISED_TOTAL_DROP) },
    });
  return found;
}

/** What the metal of the wire asks for, and what the other metal would take. */
export function metalFindings(known: CircuitOptionCase, plan: CircuitPlan): readonly F[] {
  const other = otherMetal(known, plan);
  const found: F[] = known.wire_metal === "aluminium" ? [{ code: "aluminium_joints", data: {} }] : [];
  if (other !== undefined) found.push({ code: "other_metal", data: { other: nameConductor(other.row, other.metal) } });
  return found;
}

/** What feeder, panel and disconnect say. */
export function surroundingFindings(known: CircuitOptionCase & CircuitSurroundings, plan: CircuitPlan): readonly F[] {
  const spare_A = feederSpare_A(known, plan);
  const found: F[] = [];
  if (spare_A === undefined) found.push({ code: "feeder_unknown", data: {} });
  else if (spare_A < 0)
    found.push({ code: "feeder_full", data: { spare: q("current", -spare_A), load: q("current", plan.rated_A) } });
  else found.push({ code: "feeder_holds", data: { spare: q("current", spare_A) } });
  if (known.shared === true) found.push({ code: "circuit_shared", data: {} });
  if (known.disconnect === "neither") found.push({ code: "no_disconnect", data: {} });
  if (known.breaker_listed === false) found.push({ code: "breaker_not_listed", data: {} });
  return [...found, ...plugFindings(known, plan)];
}

/** Current of a cord and plug against what its circuit lets one thing use. */
export function isPlugOver({ supply_V, breaker_A }: CircuitOptionCase, plan: CircuitPlan): boolean {
  const circuit_A = breaker_A ?? plan.smallest_A;
  return supply_V < PLUG_IN_BELOW_V && circuit_A !== undefined && plan.load_A > PLUG_SHARE * circuit_A * (1 + 1e-9);
}

function plugFindings(known: CircuitOptionCase & CircuitSurroundings, plan: CircuitPlan): readonly F[] {
  const circuit_A = known.breaker_A ?? plan.smallest_A;
  if (known.supply_V >= PLUG_IN_BELOW_V || circuit_A === undefined) return [];
  const data = {
    load: q("current", plan.load_A),
    most: q("current", PLUG_SHARE * circuit_A),
    breaker: q("current", circuit_A),
  };
  const isUnguarded = GUARDED_ROOMS.includes(known.room ?? "") && known.ground_fault !== true;
  return [
    { code: isPlugOver(known, plan) ? "plug_in_over" : "plug_in", data },
    ...(isUnguarded ? [{ code: "receptacle_unguarded", data: {} } as const] : []),
    { code: "plug_in_later", data: {} },
  ];
}

/** Conductor by conductor, what is lost on the run. */
export function tabulateConductors(known: CircuitOptionCase, plan: CircuitPlan): readonly AnswerTable<F>[] {
  const choices = conductorChoices(known, plan);
  if (choices.length === 0) return [];
  const rows = choices.map(({ row, metal, drop, isWithin }) => [
    nameConductor(row, metal),
    q("voltage", drop.drop_V),
    q("share", drop.share),
    { code: isWithin ? "within" : "over_limit", data: {} } as const,
  ]);
  return [{ id: "conductors", rows }];
}

/** Supply by supply, what the element does. */
export function tabulateSupplies(known: CircuitOptionCase): readonly AnswerTable<F>[] {
  const choices = supplyChoices(known);
  if (choices.length < 2) return [];
  const rows = choices.map((choice) => [
    q("voltage", choice.supply_V),
    q("voltage", choice.rated_V),
    q("power", choice.power_W),
    q("current", choice.current_A),
    choice.breaker_A === undefined ? "–" : q("current", choice.breaker_A),
    q("recovery", choice.recovery_L_s),
  ]);
  return [{ id: "supplies", rows }];
}
