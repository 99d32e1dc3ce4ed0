import type { Books } from "../books/books.ts";
import { type AnswerTable, type FindingOf, type FindingSpecs, q } from "../declaration/answer.ts";
import type { Job } from "../jobs/job.ts";
import { CREW_WORDS, type CrewWord, namesOf, partAmount, partWord, personName } from "./crew-words.ts";
import type { Lack, Want } from "./ready.ts";
import type { Lapse, Standing } from "./validity.ts";

/** Why something is missing, as cells of a table. */
export const READY_WHYS = {
  ...CREW_WORDS,
  why_none: {},
  why_training: { until: "word" },
  why_lapsed: { until: "word" },
  why_grace: { until: "word" },
  why_warns: { until: "word" },
  why_unchecked: {},
  why_calibration: { until: "word" },
  why_short: { short: "count" },
  why_short_length: { short: "length" },
  why_load: { short: "count" },
  why_load_length: { short: "length" },
  why_hours: { needed: "time", free: "time" },
  why_off: {},
  why_no_hours: {},
  why_helpers: { needed: "count", given: "count" },
  why_not_in_crew_book: {},
  calibration_of: { en: "word", es: "word", id: "word" },
  within: { horizon: "count" },
} as const satisfies FindingSpecs;
export type ReadyWord = FindingOf<typeof READY_WHYS>;

/**
 * Everything that is missing: of whom or which job, what, why, and who or which truck could stand in; what stops the work
 * first. Behind somebody who is down for another job on that day stands its number.
 */
export function tabulateLacks(lacks: readonly Lack[], day: string, books: Books): AnswerTable<ReadyWord> {
  const inOrder = [...lacks.filter(({ stops }) => stops), ...lacks.filter(({ stops }) => !stops)];
  return {
    id: "missing",
    rows: inOrder.map(({ who, want }) => [
      personName(who, books),
      nameWant(want, books),
      sayWhy(want, books),
      sayOthers(who, want, day, books),
    ]),
  };
}

function sayOthers(who: string, want: Want, day: string, books: Books): ReadyWord | string {
  if (want.is === "part") {
    const { trucks } = books.crew.trucks;
    const holding = trucks.filter(({ id }) => want.trucks.includes(id)).map(({ name }) => name);
    return holding.length === 0 ? "—" : holding.join(", ");
  }
  if (!("others" in want)) return "—";
  if (want.others.length === 0) return namesOf([], books);
  const busyOn = (id: string) => jobsOn(day, books).find(({ number, people }) => number !== who && people.includes(id));
  const named = want.others.map((id) => ({ name: personName(id, books), job: busyOn(id)?.number }));
  const [free, busy] = [named.filter(({ job }) => job === undefined), named.filter(({ job }) => job !== undefined)];
  return [...free.map(({ name }) => name), ...busy.map(({ name, job }) => `${name} (${job})`)].join(", ");
}

/** The jobs of a day that somebody still works on. */
export function jobsOn(day: string, { jobs }: Books): readonly Job[] {
  return jobs.filter((job) => job.day === day && job.status !== "cancelled" && job.status !== "complete");
}

/** What runs out within 90 days, the soonest first, with the horizon that it falls in. */
export function tabulateLapses(lapses: readonly Lapse[], books: Books): AnswerTable<ReadyWord> {
  const soonest = [...lapses].sort((a, b) => a.in_days - b.in_days);
  return {
    id: "lapses",
    rows: soonest.map(({ person, what, on, within }) => [
      personName(person, books),
      nameLapse(what, books),
      on,
      { code: "within", data: { horizon: q("count", within) } },
    ]),
  };
}

function nameLapse(what: Lapse["what"], books: Books): ReadyWord {
  switch (what.is) {
    case "credential":
      return { code: what.kind, data: {} };
    case "training":
      return { code: "training", data: { subject: what.subject } };
    case "calibration": {
      const { data } = toolName(what.tool, books);
      return { code: "calibration_of", data: { ...data, id: what.id } };
    }
  }
}

function toolName(tool: string, books: Books): { readonly data: { readonly en: string; readonly es: string } } {
  const name = books.crew.parts.find(({ id }) => id === tool)?.name;
  return { data: { en: name?.en ?? tool, es: name?.es ?? tool } };
}

function nameWant(want: Want, books: Books): CrewWord {
  switch (want.is) {
    case "credential":
      return { code: want.kind, data: {} };
    case "skill":
      return { code: want.skill, data: {} };
    case "training":
      return { code: "training", data: { subject: want.subject } };
    case "tool":
    case "calibration":
      return partWord(want.tool, books);
    case "part":
      return partWord(want.part, books);
    case "hours":
    case "off":
    case "no_hours":
    case "unknown_person":
      return { code: "working_hours", data: {} };
    case "helpers":
    case "permit":
    case "survey":
      return { code: want.is, data: {} };
  }
}

function sayWhy(want: Want, books: Books): ReadyWord {
  switch (want.is) {
    case "credential":
    case "skill":
      return sayStanding(want.standing);
    case "training":
      return { code: "why_training", data: { until: want.until } };
    case "calibration":
      return { code: "why_calibration", data: { until: want.until } };
    case "part":
      return sayShort(want, books);
    case "hours":
      return { code: "why_hours", data: { needed: q("time", want.needed_s), free: q("time", want.free_s) } };
    case "off":
      return { code: "why_off", data: {} };
    case "no_hours":
      return { code: "why_no_hours", data: {} };
    case "helpers":
      return { code: "why_helpers", data: { needed: q("count", want.needed), given: q("count", want.given) } };
    case "unknown_person":
      return { code: "why_not_in_crew_book", data: {} };
    case "tool":
    case "permit":
    case "survey":
      return { code: "why_none", data: {} };
  }
}

export function sayStanding(standing: Standing | undefined): ReadyWord {
  if (standing === undefined || standing.is === "valid") return { code: "why_none", data: {} };
  if (standing.is === "unchecked") return { code: "why_unchecked", data: {} };
  return { code: `why_${standing.is}`, data: { until: standing.until } };
}

function sayShort({ part, short, inShop }: Extract<Want, { is: "part" }>, books: Books): ReadyWord {
  if (partAmount(part, short, books).kind === "length")
    return { code: inShop ? "why_load_length" : "why_short_length", data: { short: q("length", short) } };
  return { code: inShop ? "why_load" : "why_short", data: { short: q("count", short) } };
}
