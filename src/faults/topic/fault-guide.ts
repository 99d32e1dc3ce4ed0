import type { Books } from "../../books/books.ts";
import { q } from "../../declaration/answer.ts";
import { type Guidance, PASSED_OVER } from "../../declaration/topic.ts";
import { toBase } from "../../units/convert.ts";
import { type FaultCase, isObservation } from "../case.ts";
import { findContradiction } from "../contradiction.ts";
import { expectReading } from "../expected.ts";
import type { Check } from "../knowledge.ts";
import { matchComplaint } from "../match-complaint.ts";
import type { Meaning, RatedCheck } from "../next-check.ts";
import { openStops } from "../stops.ts";
import { type Next, whatNext } from "../what-next.ts";
import { curedCause, expectedFacts, type FaultShelf, faultCase, type Told } from "./fault-case.ts";
import { OTHER_SYMPTOM, readyFor, stopOf } from "./fault-facts.ts";
import { expectedCode, type Finding, outcomeCode, say, tabulateCandidates } from "./fault-findings.ts";

/** What is asked of everybody before the reasoning picks checks, because it weighs on many causes and costs nothing. */
const FIRST_ASKED = ["unit", "age", "lately"] as const;

/** The next question of a fault: the stop line first, then what is wrong, then the check that tells most a minute. */
export function nextQuestion(shelf: FaultShelf, told: Told, books: Books): Guidance | undefined {
  if (curedCause(shelf, told) !== undefined) return undefined;
  const isTold = ["complaint", "symptom", "display_code"].some((fact) => told[fact] !== undefined);
  if (!isTold && !isPassed(told, "complaint")) return { fact: "complaint" };
  const known = faultCase(shelf, told, books);
  const [stop] = openStops(shelf.model, known);
  if (stop !== undefined) return { fact: stopOf(stop.id), isStop: true, before: [say(`heard_${stop.id}`)] };
  const guidance = askSymptom(shelf, told, known) ?? askFirst(told, known) ?? askCheck(shelf, told, known, books);
  return guidance && { ...guidance, before: [...sayHeard(told, known), ...(guidance.before ?? [])] };
}

/** What was made of the complaint, said with the first question after it. */
function sayHeard(told: Told, { steps }: FaultCase): readonly Finding[] {
  const isFirst = [...FIRST_ASKED, PASSED_OVER, "symptom"].every((fact) => told[fact] === undefined);
  if (!isFirst || steps.some(isObservation)) return [];
  return steps.flatMap((step) =>
    step.kind === "complaint" ? [say(`${step.isThere ? "heard" : "denied"}_${step.symptom}`)] : [],
  );
}

/** When what was said may be several things, the likeliest are offered. */
function askSymptom({ complaints }: FaultShelf, told: Told, known: FaultCase): Guidance | undefined {
  const isHeard = known.steps.some(({ kind }) => kind === "complaint");
  if (isHeard || told["symptom"] !== undefined || told["display_code"] !== undefined || isPassed(told, "symptom"))
    return undefined;
  const { offers } = matchComplaint(complaints, String(told["complaint"] ?? ""));
  if (offers.length === 0) return { fact: "symptom" };
  return { fact: "symptom", options: [...offers.map(({ symptom }) => symptom), OTHER_SYMPTOM] };
}

function askFirst(told: Told, { unitKind }: FaultCase): Guidance | undefined {
  const open = FIRST_ASKED.find((fact) => {
    const isKnown = told[fact] !== undefined || (fact === "unit" && unitKind !== undefined);
    return !isKnown && !isPassed(told, fact);
  });
  return open && { fact: open };
}

function isPassed(told: Told, fact: string): boolean {
  return String(told[PASSED_OVER] ?? "")
    .split(",")
    .includes(fact);
}

function askCheck(shelf: FaultShelf, told: Told, known: FaultCase, books: Books): Guidance | undefined {
  const next = whatNext(shelf.model, known);
  if (next.kind === "stop" || next.kind === "verdict") return undefined;
  const { check } = next.rated;
  const before = [...contradictions(shelf, known), sayNext(next.rated)];
  const about = [tabulateCandidates(next.candidates), tabulateMeanings(next)];
  if (next.kind === "prepare") return { fact: readyFor(check.id), hazards: next.hazards, before, about };
  return { fact: check.id, before: [...before, ...expectedHere(check, told, books)], about };
}

function sayNext({ check, minutes }: RatedCheck): Finding {
  return say("next_check", { check: check.id, minutes: q("time", toBase(minutes, "min")) });
}

function expectedHere(check: Check, told: Told, books: Books): readonly Finding[] {
  const expected = expectReading(check, expectedFacts(told, books));
  return expected === undefined ? [] : [say(expectedCode(expected.quantity.kind), { expected: expected.quantity })];
}

/** What the last answer contradicts, so that a slip can be put right. */
function contradictions({ model }: FaultShelf, known: FaultCase): readonly Finding[] {
  const place = known.steps.findLastIndex(isObservation);
  const now = known.steps[place];
  if (now === undefined || !isObservation(now)) return [];
  const found = findContradiction(model, { ...known, steps: known.steps.slice(0, place) }, now);
  return found === undefined ? [] : [say("contradicts", { now: found.now, earlier: found.earlier })];
}

function tabulateMeanings({ rated, meanings }: Extract<Next, { readonly rated: RatedCheck }>) {
  const row = ({ outcome, after }: Meaning) => {
    const [top] = after;
    const cause = top === undefined ? "–" : say(`cause_${top.cause}`);
    return [say(outcomeCode(rated.check.id, outcome)), cause, top === undefined ? "–" : q("share", top.share)];
  };
  return { id: "meanings", rows: meanings.map(row) };
}
