import { type AnswerTable, type FindingOf, type FindingSpecs, type NextStep, q } from "../declaration/answer.ts";
import { writeRequest } from "../declaration/write-request.ts";
import { toBase } from "../units/convert.ts";
import type { RoomCase, RoomSetUp } from "./room-case.ts";
import { type RoomDay, runRoomDay } from "./room-day.ts";
import { airThroughDucts } from "./room-ducts.ts";
import { SHELLS } from "./room-shell-table.ts";
import { heatBill } from "./room-side.ts";
import { type RoomScore, scoreRoom } from "./room-verdict.ts";
import type { SampledDay } from "./sample-day.ts";

/** What may be done about a room; in this order they usually cost more and more (common practice). */
export const ROOM_CHANGES = [
  "undercut",
  "grilles",
  "louvred",
  "open",
  "exhaust",
  "intake",
  "both",
  "less_compressor",
] as const;
export type RoomChange = (typeof ROOM_CHANGES)[number];

export interface RoomRemedy {
  readonly change: RoomChange;
  readonly day: RoomDay;
  readonly score: RoomScore;
}

const BEFORE_AFTER = { before: "temperature", after: "temperature" } as const;
/** How each change is named in the table, and as the one thing to do. */
export const ROOM_CHANGE_FINDINGS = {
  change_none: {},
  change_undercut: { gap: "dimension" },
  change_grilles: { each: "opening_area" },
  change_louvred: {},
  change_open: {},
  change_exhaust: {},
  change_intake: {},
  change_both: {},
  change_less_compressor: {},
  fix_undercut: { ...BEFORE_AFTER, gap: "dimension" },
  fix_grilles: { ...BEFORE_AFTER, each: "opening_area" },
  fix_louvred: BEFORE_AFTER,
  fix_open: BEFORE_AFTER,
  fix_exhaust: BEFORE_AFTER,
  fix_intake: BEFORE_AFTER,
  fix_both: BEFORE_AFTER,
  fix_less_compressor: BEFORE_AFTER,
  remark_as_asked: {},
  remark_works: {},
  remark_helps: {},
  remark_no_help: {},
  remark_costs_heat: {},
} as const satisfies FindingSpecs;
type Said = FindingOf<typeof ROOM_CHANGE_FINDINGS>;
type Asked = Parameters<typeof writeRequest>[1];

export const WIDE_UNDERCUT_m = toBase(1, "in");
/** Free area of each of two grilles: 240 in² in all, as ENERGY STAR advises for a small room. */
export const GRILLE_EACH_m2 = toBase(120, "in2");
/** With less of its air than this no unit should be run; judgement. */
export const LEAST_AIR = 0.4;
/** A change that warms the low by less than this is none [K]. */
const NOTICED_K = 0.5;
/** Electricity over the present that a change may cost and still be called a help [-]. */
const NOT_DEARER = 1.05;
const MOST_STEPS = 3;

/** Changes that are open to this room, cheapest first. */
export function listRoomChanges({ set, where, unit }: RoomCase): readonly RoomChange[] {
  const { door, ducts, mode } = set;
  const mayOpen = SHELLS[where].mayOpen && door.door !== "open";
  const isDucted = ducts.choice !== "none";
  const hasGrilles = Math.min(door.lowGrille_m2, door.highGrille_m2) >= GRILLE_EACH_m2;
  const isFree: Readonly<Record<RoomChange, boolean>> = {
    undercut: mayOpen && door.door === "plain" && door.undercut_m < WIDE_UNDERCUT_m,
    grilles: mayOpen && door.door !== "louvred" && !hasGrilles,
    louvred: mayOpen && door.door !== "louvred",
    open: mayOpen,
    exhaust: !isDucted,
    intake: !isDucted,
    both: ducts.choice !== "both",
    less_compressor: mode !== "both_together" && mode !== "elements_only" && mayRunBoth(unit),
  };
  return ROOM_CHANGES.filter((change) => isFree[change]);
}

function mayRunBoth({ controls }: RoomCase["unit"]): boolean {
  return controls.policies.includes("both_together");
}

/** Runs the winter day with one thing changed; nothing where its ducts would choke the fan. */
export function tryRoomChange(
  known: RoomCase,
  change: RoomChange,
  day: SampledDay,
  openCop: number,
): RoomRemedy | undefined {
  const changed = { ...known, set: applyChange(known.set, change) };
  if (airThroughDucts(known.heatPump, changed.set.ducts).share < LEAST_AIR) return undefined;
  const run = runRoomDay(changed, "winter", day);
  return { change, day: run, score: scoreRoom(run, openCop, heatBill(changed, run)) };
}

export function applyChange(set: RoomSetUp, change: RoomChange): RoomSetUp {
  const { door, ducts } = set;
  switch (change) {
    case "undercut":
      return { ...set, door: { ...door, undercut_m: WIDE_UNDERCUT_m } };
    case "grilles":
      return { ...set, door: { ...door, lowGrille_m2: GRILLE_EACH_m2, highGrille_m2: GRILLE_EACH_m2 } };
    case "louvred":
    case "open":
      return { ...set, door: { ...door, door: change } };
    case "less_compressor":
      return { ...set, mode: "both_together" };
    default:
      return { ...set, ducts: { ...ducts, choice: change } };
  }
}

/** The cheapest change that makes the room serve. */
export function cheapestThatWorks(remedies: readonly RoomRemedy[]): RoomRemedy | undefined {
  return remedies.find(({ score }) => score.verdict === "good");
}

/** Where none makes it serve, the one that leaves the room warmest. */
export function bestHelp(now: RoomDay, remedies: readonly RoomRemedy[]): RoomRemedy | undefined {
  const [best] = remedies.filter((remedy) => isHelp(now, remedy)).toSorted((a, b) => b.day.lowest_C - a.day.lowest_C);
  return best;
}

/** A warmer room that is not bought with electricity or with heat of the house. */
function isHelp(now: RoomDay, { day, score }: RoomRemedy): boolean {
  const isWarmer = day.lowest_C > now.lowest_C + NOTICED_K;
  return isWarmer && !score.costsHeat && day.summary.electricity_kWh < now.summary.electricity_kWh * NOT_DEARER;
}

export function sayFix(now: RoomDay, { change, day }: RoomRemedy): Said {
  const data = { before: q("temperature", now.lowest_C), after: q("temperature", day.lowest_C) };
  if (change === "undercut") return { code: "fix_undercut", data: { ...data, gap: q("dimension", WIDE_UNDERCUT_m) } };
  if (change === "grilles") return { code: "fix_grilles", data: { ...data, each: q("opening_area", GRILLE_EACH_m2) } };
  return { code: `fix_${change}`, data };
}

function sayChange(change: RoomChange): Said {
  if (change === "undercut") return { code: "change_undercut", data: { gap: q("dimension", WIDE_UNDERCUT_m) } };
  if (change === "grilles") return { code: "change_grilles", data: { each: q("opening_area", GRILLE_EACH_m2) } };
  return { code: `change_${change}`, data: {} };
}

/** Every change with what the same winter day came to. */
export function tabulateRoomRemedies(now: RoomDay, remedies: readonly RoomRemedy[]): AnswerTable<Said> {
  const row = (say: Said, { lowest_C, highestHumidity, summary, days }: RoomDay, remark: Said) => [
    say,
    q("temperature", lowest_C),
    q("share", Math.min(1, highestHumidity)),
    q("ratio", summary.systemCop),
    q("energy", summary.electricity_kWh / days),
    remark,
  ];
  const asked = row({ code: "change_none", data: {} }, now, { code: "remark_as_asked", data: {} });
  return {
    id: "remedies",
    rows: [asked, ...remedies.map((remedy) => row(sayChange(remedy.change), remedy.day, remarkOn(now, remedy)))],
  };
}

function remarkOn(now: RoomDay, remedy: RoomRemedy): Said {
  const { score } = remedy;
  if (score.verdict === "good") return { code: "remark_works", data: {} };
  if (score.costsHeat) return { code: "remark_costs_heat", data: {} };
  return { code: isHelp(now, remedy) ? "remark_helps" : "remark_no_help", data: {} };
}

/** The changes that work, cheapest first, else those that help most, as requests. */
export function offerRoomRemedies(
  asked: Asked,
  now: RoomDay,
  remedies: readonly RoomRemedy[],
): readonly NextStep<Said>[] {
  const working = remedies.filter(({ score }) => score.verdict === "good");
  const best = bestHelp(now, remedies);
  const helping = best === undefined ? [] : [best];
  const offered = working.length > 0 ? working : helping;
  return offered.slice(0, MOST_STEPS).map(({ change }) => ({
    say: sayChange(change),
    request: writeRequest("room", { ...asked, ...asFacts(change) }),
  }));
}

function asFacts(change: RoomChange): Asked {
  switch (change) {
    case "undercut":
      return { undercut: q("dimension", WIDE_UNDERCUT_m) };
    case "grilles":
      return { low_grille: q("opening_area", GRILLE_EACH_m2), high_grille: q("opening_area", GRILLE_EACH_m2) };
    case "louvred":
    case "open":
      return { door: change };
    case "less_compressor":
      return { mode: "both_together" };
    default:
      return { duct: change };
  }
}
