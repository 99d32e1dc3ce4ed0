import type { Books } from "../../books/books.ts";
import { q } from "../../declaration/answer.ts";
import { numberResult } from "../../declaration/number-result.ts";
import { type FaultCase, isObservation, type Observation } from "../case.ts";
import { expectReading } from "../expected.ts";
import type { Cause, Check } from "../knowledge.ts";
import { SOMETHING_ELSE } from "../model.ts";
import { rateChecks } from "../next-check.ts";
import { findOnTruck } from "../parts-on-truck.ts";
import { type Candidate, posteriorShares, rankCauses } from "../posterior.ts";
import { findVerdict, type Verdict } from "../verdict.ts";
import { curedCause, expectedFacts, type FaultShelf, faultCase, type Told } from "./fault-case.ts";
import { curedBy, notCuredBy } from "./fault-facts.ts";
import {
  type Answer,
  type AnswerTable,
  type Finding,
  outcomeCode,
  partCode,
  say,
  tabulateCandidates,
} from "./fault-findings.ts";

/** Causes that an answer names. */
const MOST_NAMED = 5;
const BAYES = {
  basis: "computed",
  document: "Bayes' rule over the causes of the knowledge, one cause at a time",
} as const;
const JUDGEMENT = {
  basis: "common_practice",
  document: "Likelihoods of the knowledge: judgement, until this company's own closed faults weigh on them",
} as const;

/** Where the reasoning has come to: cause, remedy, who may do it, what to prove and to tell; or whom to call. */
export function answerFault(shelf: FaultShelf, told: Told, books: Books): Answer {
  const known = faultCase(shelf, told, books);
  const shares = posteriorShares(shelf.model, known);
  const rated = rateChecks(shelf.model, known, shares);
  const candidates = rankCauses(shelf.model, shares, MOST_NAMED);
  const verdict = findVerdict(shelf.model, known, shares, rated);
  const seen = known.steps.filter(isObservation);
  const [top] = candidates;
  const cured = curedCause(shelf, told);
  if (cured !== undefined) return closeFault(cured, candidates, tabulateTrail(shelf, told, books, seen));
  return {
    kind: "answer",
    verdict: verdict?.kind === "found" ? "info" : "caution",
    headline: headline(verdict),
    results: [
      numberResult(
        "confidence",
        q("share", top?.share ?? 0),
        "p = p_0 Π p(seen | cause) / Σ",
        { n_seen: q("count", seen.length), n_causes: q("count", shelf.model.ids.length) },
        BAYES,
        JUDGEMENT,
      ),
    ],
    findings: verdict === undefined ? [] : findings(verdict, known),
    tables: [
      tabulateCandidates(candidates),
      ...tabulateParts(verdict, told),
      ...tabulateTrail(shelf, told, books, seen),
    ],
    next: nextSteps(verdict, candidates),
  };
}

/** The fault is over: what it was, what to prove and to tell, and that it counts from now on. */
function closeFault({ id }: Cause, candidates: readonly Candidate[], trail: readonly AnswerTable[]): Answer {
  const share = candidates.find(({ cause }) => cause === id)?.share ?? 0;
  return {
    kind: "answer",
    verdict: "good",
    headline: say(`cured_${id}`),
    results: [numberResult("confidence", q("share", share), "p = p_0 Π p(seen | cause) / Σ", {}, BAYES, JUDGEMENT)],
    findings: [say(`verify_${id}`), say(`tell_${id}`), say("counts_here")],
    tables: [...trail],
  };
}

function headline(verdict: Verdict | undefined): Finding {
  switch (verdict?.kind) {
    case "found":
    case "probable":
      return say(`${verdict.kind}_${verdict.cause.id}`, { share: q("share", verdict.share) });
    case "call_for":
      return verdict.obstacle.kind === "doer"
        ? say(`call_for_${verdict.obstacle.doer}`, { check: verdict.check })
        : say("needs_tools", { check: verdict.check, tools: verdict.obstacle.tools.join(", ") });
    case "open":
      return say(verdict.mayBeElse ? "open_else" : "open");
    default:
      return say("open");
  }
}

function findings(verdict: Verdict, { counts }: FaultCase): readonly Finding[] {
  if (verdict.kind !== "found" && verdict.kind !== "probable") return [say("how_sure")];
  const times = counts[verdict.cause.id] ?? 0;
  const counted = times > 0 ? [say("counted", { times: q("count", times) })] : [];
  return [...sayCause(verdict.cause, verdict.mayRepair), ...counted, say("how_sure")];
}

/** The precautions of a remedy come before it; what must not be done comes first of all. */
function sayCause({ id, hazards, words, repairBy }: Cause, mayRepair: boolean): readonly Finding[] {
  return [
    ...(words.en.stop === undefined ? [] : [say(`stop_before_${id}`)]),
    say(`why_${id}`),
    ...(mayRepair ? [] : repairBy.map((doer) => say(`repair_by_${doer}`))),
    ...hazards.map((hazard) => say(`first_${hazard}`)),
    say(`remedy_${id}`),
    ...(words.en.parts.length === 0 ? [] : [say(`parts_${id}`)]),
    say(`verify_${id}`),
    say(`tell_${id}`),
  ];
}

/** Causes that are offered where none stands out, for somebody who has found out otherwise. */
const MOST_OFFERED = 3;

function nextSteps(verdict: Verdict | undefined, candidates: readonly Candidate[]): NonNullable<Answer["next"]> {
  if (verdict?.kind !== "found" && verdict?.kind !== "probable")
    return candidates
      .filter(({ cause }) => cause !== SOMETHING_ELSE)
      .slice(0, MOST_OFFERED)
      .map(({ cause }) => ({ say: say(`was_${cause}`), request: `${curedBy(cause)}=yes`, follows: true }));
  const { id } = verdict.cause;
  return [
    { say: say("step_cured"), request: `${curedBy(id)}=yes`, follows: true },
    { say: say("step_not_cured"), request: `${notCuredBy(id)}=yes`, follows: true },
  ];
}

/** The parts of the remedy, and whether they lie in the asker's truck. */
function tabulateParts(verdict: Verdict | undefined, told: Told): readonly AnswerTable[] {
  const truck = told["on_truck"];
  if ((verdict?.kind !== "found" && verdict?.kind !== "probable") || typeof truck !== "string") return [];
  const { id, words } = verdict.cause;
  if (words.en.parts.length === 0) return [];
  const rows = findOnTruck(words.en.parts, truck.split("|")).map(({ listed }, index) => [
    say(partCode(id, index)),
    listed === undefined ? say("not_on_truck") : say("on_truck", { listed }),
  ]);
  return [{ id: "parts", rows }];
}

/** Every check with what was seen and what was expected: the way to the answer. */
function tabulateTrail(
  { knowledge }: FaultShelf,
  told: Told,
  books: Books,
  seen: readonly Observation[],
): readonly AnswerTable[] {
  if (seen.length === 0) return [];
  const row = (one: Observation) => {
    const check = knowledge.checks.find(({ id }) => id === one.check);
    return [say(`check_${one.check}`), shown(check, one), expectedIn(check, told, books)];
  };
  return [{ id: "trail", rows: seen.map(row) }];
}

function shown(check: Check | undefined, one: Observation) {
  if (one.kind === "outcome") return say(outcomeCode(one.check, one.outcome));
  return check?.reading === undefined ? "–" : q(check.reading.quantity, one.value);
}

function expectedIn(check: Check | undefined, told: Told, books: Books) {
  return (check && expectReading(check, expectedFacts(told, books)))?.quantity ?? "–";
}
