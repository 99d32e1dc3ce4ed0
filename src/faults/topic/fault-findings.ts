import type { Answer, AnswerTable, Finding, FindingSpecs } from "../../declaration/answer.ts";
import { q } from "../../declaration/answer.ts";
import type { QuantityKind } from "../../units/quantity-kinds.ts";
import { DOERS, type FaultKnowledge, HAZARDS } from "../knowledge.ts";
import { SOMETHING_ELSE } from "../model.ts";
import type { Candidate } from "../posterior.ts";

export type { Answer, AnswerTable, Finding };

/** What may be said of a fault whatever the knowledge holds. */
export const PLAIN_FAULT_FINDINGS = {
  next_check: { check: "fact", minutes: "time" },
  contradicts: { now: "fact", earlier: "fact" },
  not_judged: { check: "fact" },
  needs_tools: { check: "fact", tools: "word" },
  open: {},
  open_else: {},
  how_sure: {},
  step_cured: {},
  step_not_cured: {},
  step_post: {},
  counts_here: {},
  counted: { times: "count" },
  on_truck: { listed: "word" },
  not_on_truck: {},
  cause_something_else: {},
} as const satisfies FindingSpecs;

/** Tables of the topic with their columns. */
export const FAULT_TABLES = {
  candidates: ["cause", "share", "bar"],
  meanings: ["outcome", "means", "share"],
  trail: ["check", "seen", "expected"],
  parts: ["part", "truck"],
} as const;

/** Everything that may be said with this knowledge; each entry's own sentences stand in its file. */
export function faultFindings({ symptoms, causes, checks }: FaultKnowledge): FindingSpecs {
  const readings = new Set(checks.flatMap(({ reading }) => (reading ? [reading.quantity] : [])));
  return {
    ...PLAIN_FAULT_FINDINGS,
    ...Object.fromEntries([...readings].map((kind) => [expectedCode(kind), { expected: kind }])),
    ...Object.fromEntries(HAZARDS.map((hazard) => [`first_${hazard}`, {}])),
    ...Object.fromEntries(
      DOERS.flatMap((doer) => [
        [`repair_by_${doer}`, {}],
        [`call_for_${doer}`, { check: "fact" }],
      ]),
    ),
    ...Object.fromEntries(
      symptoms.flatMap(({ id }) => [
        [`heard_${id}`, {}],
        [`denied_${id}`, {}],
      ]),
    ),
    ...Object.fromEntries(
      causes.flatMap(({ id, words }) => [
        [`found_${id}`, { share: "share" }],
        [`probable_${id}`, { share: "share" }],
        [`cured_${id}`, {}],
        [`was_${id}`, {}],
        ...["cause", "why", "remedy", "parts", "verify", "tell"].map((part) => [`${part}_${id}`, {}]),
        ...(words.en.stop === undefined ? [] : [[`stop_before_${id}`, {}]]),
        ...words.en.parts.map((_, index) => [partCode(id, index), {}]),
      ]),
    ),
    ...Object.fromEntries(
      checks.flatMap(({ id, outcomes }) => [
        [`check_${id}`, {}],
        ...outcomes.map((outcome) => [outcomeCode(id, outcome.id), {}]),
      ]),
    ),
  };
}

export function expectedCode(kind: QuantityKind): string {
  return `expected_${kind}`;
}

export function outcomeCode(check: string, outcome: string): string {
  return `outcome_${check}_${outcome}`;
}

export function partCode(cause: string, index: number): string {
  return `part_${index + 1}_of_${cause}`;
}

export function say(code: string, data: Finding["data"] = {}): Finding {
  return { code, data };
}

const BAR_LENGTH = 10;

/** The likeliest causes, each with its share in words and as a bar. */
export function tabulateCandidates(candidates: readonly Candidate[]): AnswerTable {
  return {
    id: "candidates",
    rows: candidates.map(({ cause, share }) => [
      say(cause === SOMETHING_ELSE ? "cause_something_else" : `cause_${cause}`),
      q("share", share),
      bar(share),
    ]),
  };
}

function bar(share: number): string {
  const full = Math.round(share * BAR_LENGTH);
  return "█".repeat(full) + "░".repeat(BAR_LENGTH - full);
}
