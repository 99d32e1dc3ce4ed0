import { performance } from "node:perf_hooks";
import { loadFaults } from "../../adapters/library/load-faults.ts";
import { addSteps, openCase } from "../../src/faults/case.ts";
import { DOERS, type FaultKnowledge } from "../../src/faults/knowledge.ts";
import { buildComplaintBook, matchComplaint } from "../../src/faults/match-complaint.ts";
import { buildModel, type FaultModel } from "../../src/faults/model.ts";
import { rateChecks } from "../../src/faults/next-check.ts";
import { openRandomStream } from "../../src/household/random.ts";
import type { BenchRow } from "./bench-row.ts";
import { drawFault, type Noise, type SyntheticFault } from "./fault-cases.ts";
import { byChecklist, byInformation, byLikeliest, type Played, playFault, type Strategy } from "./fault-play.ts";

export const STRATEGIES = { ours: byInformation, checklist: byChecklist, likeliest: byLikeliest } as const;
export type StrategyName = keyof typeof STRATEGIES;

/** How the faults of a round are drawn and answered. */
export interface Round {
  readonly name: string;
  readonly causes: number;
  readonly noise: Noise;
}
export const ROUNDS: readonly [Round, Round, Round] = [
  { name: "one cause", causes: 1, noise: { wrong: 0, notSure: 0.03 } },
  { name: "one cause, 10 % wrong answers", causes: 1, noise: { wrong: 0.1, notSure: 0.03 } },
  { name: "two causes at once", causes: 2, noise: { wrong: 0, notSure: 0.03 } },
];

export interface Summary {
  readonly cases: number;
  readonly firstRight: number;
  readonly solved: number;
  readonly checks: number;
  readonly minutes: number;
}
export interface RoundResult {
  readonly round: Round;
  readonly total: Readonly<Record<StrategyName, Summary>>;
  /** Of our own reasoning. */
  readonly byCause: ReadonlyMap<string, Summary>;
}

/** Plays the same synthetic faults with every strategy. */
export function playRound(knowledge: FaultKnowledge, round: Round, cases: number, seed: number): RoundResult {
  const model = buildModel(knowledge);
  const faults = Array.from({ length: cases }, (_, day) =>
    drawFault(knowledge, openRandomStream(seed, day), round.causes),
  );
  const play = (strategy: Strategy) => faults.map((fault, day) => playOne(model, fault, strategy, round, seed, day));
  const ours = play(STRATEGIES.ours);
  const names = [...new Set(faults.map(firstCause))];
  const byCause = names.map((cause) => {
    const own = ours.filter((_, day) => faults[day] !== undefined && firstCause(faults[day]) === cause);
    return [cause, summarise(own)] as const;
  });
  return {
    round,
    total: {
      ours: summarise(ours),
      checklist: summarise(play(STRATEGIES.checklist)),
      likeliest: summarise(play(STRATEGIES.likeliest)),
    },
    byCause: new Map(byCause),
  };
}

function firstCause({ causes }: SyntheticFault): string {
  return causes[0]?.id ?? "";
}

function playOne(
  model: FaultModel,
  fault: SyntheticFault,
  strategy: Strategy,
  round: Round,
  seed: number,
  day: number,
) {
  return playFault(model, fault, strategy, round.noise, openRandomStream(seed + 1, day));
}

function summarise(played: readonly Played[]): Summary {
  const mean = (value: (one: Played) => number) => played.reduce((sum, one) => sum + value(one), 0) / played.length;
  return {
    cases: played.length,
    firstRight: mean(({ isFirstRight }) => Number(isFirstRight)),
    solved: mean(({ isSolved }) => Number(isSolved)),
    checks: mean(({ checks }) => checks),
    minutes: mean(({ minutes }) => minutes),
  };
}

/** Synthetic faults of each round, and causes that are looked at for being the worst. */
const CASES = 1000;
const SEED = 7;
const WORST = 10;
const NEXT_CHECK_ms = 20;
const MATCH_ms = 5;

/** Plays all rounds, prints them whole, and gives the rows that have a budget: more solved in fewer minutes, and speed. */
export async function benchFaults(): Promise<{ readonly rows: readonly BenchRow[] }> {
  const knowledge = await loadFaults(new URL("../../src", import.meta.url).pathname);
  const rows: BenchRow[] = [nextCheckRow(knowledge), matchRow(knowledge)];
  for (const round of ROUNDS) {
    const result = playRound(knowledge, round, CASES, SEED);
    printRound(result);
    rows.push(...rowsOf(result));
  }
  return { rows };
}

function rowsOf({ round, total }: RoundResult): readonly BenchRow[] {
  const { ours, checklist, likeliest } = total;
  const solved = Math.max(checklist.solved, likeliest.solved);
  const minutes = Math.min(checklist.minutes, likeliest.minutes);
  return [
    row(`${round.name}: solved`, "%", 100 * ours.solved, 100 * solved, "> 1 of the better", ours.solved > solved),
    row(`${round.name}: minutes`, "min", ours.minutes, minutes, "< 1 of the quicker", ours.minutes < minutes),
  ];
}

function nextCheckRow(knowledge: FaultKnowledge): BenchRow {
  const model = buildModel(knowledge);
  const symptom = knowledge.symptoms[0]?.id ?? "";
  const known = addSteps(openCase({ doers: DOERS }, { age: "mid" }), { kind: "complaint", symptom, isThere: true });
  return speedRow("next check over the whole knowledge", NEXT_CHECK_ms, () => rateChecks(model, known));
}

function matchRow(knowledge: FaultKnowledge): BenchRow {
  const book = buildComplaintBook(knowledge);
  const text = "watter heeter is leking on the flor and makng a lowd noize, no smel, the breker trped twice";
  return speedRow("hearing complaints in a line full of slips", MATCH_ms, () => matchComplaint(book, text));
}

function speedRow(name: string, budget_ms: number, work: () => unknown): BenchRow {
  const times_ms = Array.from({ length: 200 }, () => {
    const start_ms = performance.now();
    work();
    return performance.now() - start_ms;
  });
  const median_ms = times_ms.sort((a, b) => a - b)[100] ?? Number.NaN;
  return row(name, "ms", median_ms, budget_ms, `<= 1 (${budget_ms} ms)`, median_ms <= budget_ms);
}

function row(name: string, unit: string, door: number, bare: number, budget: string, isKept: boolean): BenchRow {
  return { name, unit, door, bare, ratio: door / bare, budget, isKept };
}

function printRound({ round, total, byCause }: RoundResult): void {
  console.log(`\n${round.name}: ${CASES} synthetic faults`);
  console.table(Object.fromEntries(Object.entries(total).map(([name, one]) => [name, rounded(one)])));
  const worst = [...byCause].sort(([, one], [, other]) => one.solved - other.solved).slice(0, WORST);
  console.log(`ours, the ${WORST} worst causes`);
  console.table(Object.fromEntries(worst.map(([cause, one]) => [cause, rounded(one)])));
}

function rounded({ cases, firstRight, solved, checks, minutes }: Summary) {
  const percent = (share: number) => `${Math.round(100 * share)} %`;
  return {
    cases,
    "first remedy right": percent(firstRight),
    solved: percent(solved),
    checks: Number(checks.toFixed(1)),
    minutes: Math.round(minutes),
  };
}
