import type { Books } from "../../books/books.ts";
import type { KnownFacts } from "../../declaration/facts.ts";
import { type Guidance, PASSED_OVER } from "../../declaration/topic.ts";
import { STEPS } from "../job-rules.ts";
import { readEntry } from "./amend-job.ts";
import { readItem } from "./items.ts";
import type { JobFinding } from "./job-facts.ts";

/** What a new job, an item, a plan, a reason and an entry put right still lack; everything else is answered at once. */
export function nextQuestion(known: KnownFacts, books: Books): Guidance<JobFinding> | undefined {
  const isOpen = (fact: string) => known[fact] === undefined && !isPassed(known, fact);
  const ask = (...facts: readonly string[]) => {
    const fact = facts.find(isOpen);
    return fact === undefined ? undefined : { fact };
  };
  const task = known["task"]?.value;
  if (task === "new") return ask("customer", "town", "day");
  if (known["number"] === undefined && books.openJob === undefined) return undefined;
  if (known["amend"] !== undefined) {
    const told = readEntry(textOf(known, "amend"));
    return told === undefined || told.rest !== "" ? undefined : ask("right");
  }
  if (known["item"] !== undefined || task === "item") return askItem(known, books, ask);
  if (task === "call_back" && mayBecome("called_back", known, books)) return ask("call_back");
  if (task === "cancel" && mayBecome("cancelled", known, books)) return ask("cancel");
  if (task === "plan") return known["crew"] === undefined ? ask("day", "crew") : undefined;
  return undefined;
}

function askItem(
  known: KnownFacts,
  books: Books,
  ask: (...facts: readonly string[]) => Guidance<JobFinding> | undefined,
): Guidance<JobFinding> | undefined {
  const item = textOf(known, "item");
  if (item === undefined) return ask("item");
  const told = readItem(item, books);
  return ask(...(told.owner === undefined ? ["owner"] : []), ...(told.due === undefined ? ["due"] : []));
}

/** Where the job is known and cannot go there, the rules say so at once, without a question first. */
function mayBecome(status: "called_back" | "cancelled", known: KnownFacts, { openJob }: Books): boolean {
  const number = textOf(known, "number");
  if (openJob === undefined || (number !== undefined && number !== openJob.number)) return true;
  return STEPS[openJob.status][status] !== undefined;
}

function textOf(known: KnownFacts, fact: string): string | undefined {
  const value = known[fact]?.value;
  return typeof value === "string" ? value : undefined;
}

function isPassed(known: KnownFacts, fact: string): boolean {
  return String(known[PASSED_OVER]?.value ?? "")
    .split(",")
    .includes(fact);
}
