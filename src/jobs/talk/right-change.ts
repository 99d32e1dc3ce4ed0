import type { Books } from "../../books/books.ts";
import { findByName, findModel } from "../../equipment/find-model.ts";
import { isInitialsOrNickname } from "../customer.ts";
import { findPeople, findPerson } from "../find-people.ts";
import type { Job, JobChange, OpenItem } from "../job.ts";
import { judgeReading } from "../startup-reading.ts";
import { takeDay } from "./items.ts";

type Right =
  | { readonly change: JobChange }
  | { readonly refused: "not_readable" | "only_withdrawn" | "say_which_fact" };
type Of<K extends JobChange["kind"]> = Extract<JobChange, { readonly kind: K }>;

const UNREADABLE: Right = { refused: "not_readable" };
/** What has no other side to it: it happened or it did not. */
const ONLY_WITHDRAWN: readonly JobChange["kind"][] = ["status", "item_closed", "file", "withdrawn"];
const BECAUSE = /^(.*?)\s+(?:because|porque|ya que)\s+(.+)$/is;

/**
 * What an entry says once it is put right: of its kind, with only what was said changed.
 * @param before what it says now
 * @param typed what is right instead
 */
export function rightChange(job: Job, before: JobChange, typed: string, books: Books): Right {
  if (typed === "" && !ONLY_WITHDRAWN.includes(before.kind)) return UNREADABLE;
  switch (before.kind) {
    case "note":
      return { change: { ...before, text: typed } };
    case "trail":
      return { change: { ...before, text: typed } };
    case "permit":
      return { change: { ...before, permit: typed } };
    case "reading":
      return rightReading(job, before, typed, books);
    case "facts":
      return rightFacts(before, typed, books);
    case "parts":
      return rightParts(before, typed, books);
    case "unit": {
      const found = findModel(books.catalogue, typed);
      return found.ok ? { change: { ...before, model: found.entry.id } } : UNREADABLE;
    }
    case "planned":
      return rightPlan(before, typed, books);
    case "opened":
      return rightOpening(before, typed, books);
    case "item_opened":
      return { change: { ...before, item: { ...before.item, ...rightItem(typed, books) } } };
    case "status":
    case "item_closed":
    case "file":
    case "withdrawn":
      return { refused: "only_withdrawn" };
  }
}

function rightReading(job: Job, before: Of<"reading">, typed: string, { readTyped, ...books }: Books): Right {
  const [, measured = typed, because] = BECAUSE.exec(typed) ?? [];
  const value = readTyped?.({ quantity: before.reading.quantity.kind }, measured);
  return typeof value === "number" ? { change: judgeReading(job, books, before, value, because) } : UNREADABLE;
}

/** The fact that takes what was typed; of several that could, it must be named. */
function rightFacts({ topic, facts, kind }: Of<"facts">, typed: string, { readTyped }: Books): Right {
  const fitting = Object.keys(facts).flatMap((fact) => {
    const value = readTyped?.({ topic, fact }, typed);
    return value === undefined ? [] : [{ fact, value }];
  });
  const [only, ...others] = fitting;
  if (only === undefined) return UNREADABLE;
  if (others.length > 0) return { refused: "say_which_fact" };
  return { change: { kind, topic, facts: { ...facts, [only.fact]: only.value } } };
}

/** "drain-pan 1, heat-trap 2": these counts stand instead, none takes a part out, and the others stay. */
function rightParts({ parts, kind }: Of<"parts">, typed: string, { crew }: Books): Right {
  const counted = new Map(Object.entries(parts));
  for (const piece of typed.split(/[,;]/).filter((part) => part.trim() !== "")) {
    const [, before, name, after] =
      /^\s*(\d+(?:\.\d+)?)?\s*[x×]?\s*(.*?)\s*(?:[x×=:]?\s*(\d+(?:\.\d+)?))?\s*$/i.exec(piece) ?? [];
    const named = crew.parts.map(({ id, name: words }) => ({ id, name: words.en, other: words.es }));
    const found = [
      findByName(named, name ?? ""),
      findByName(
        named.map((one) => ({ ...one, name: one.other })),
        name ?? "",
      ),
    ].find(({ ok }) => ok);
    const amount = Number(before ?? after);
    if (found?.ok !== true || !(amount >= 0)) return UNREADABLE;
    if (amount === 0) counted.delete(found.entry.id);
    else counted.set(found.entry.id, amount);
  }
  return { change: { kind, parts: Object.fromEntries(counted) } };
}

/** Of the pieces between commas, a day is the day, a name the owner, and words what is to be done. */
function rightItem(typed: string, books: Books): Partial<OpenItem> {
  const { rest, day } = takeDay(typed);
  const pieces = rest.split(/[,;]/).filter((piece) => piece.trim() !== "");
  const owner = pieces.map((piece) => findPerson(piece, books)).find(({ ok }) => ok);
  const what = pieces
    .filter((piece) => !findPerson(piece, books).ok)
    .join(",")
    .trim();
  return {
    ...(day !== undefined && { due: day }),
    ...(owner?.ok === true && { owner: owner.entry.id }),
    ...(what !== "" && { what }),
  };
}

function rightPlan(before: Of<"planned">, typed: string, books: Books): Right {
  const { rest: names, day } = takeDay(typed);
  const found = names === "" ? undefined : findPeople(names, books);
  if (found?.ok === false) return UNREADABLE;
  return { change: { ...before, ...(day !== undefined && { day }), ...(found && { people: found.ids }) } };
}

function rightOpening(before: Of<"opened">, typed: string, { places }: Books): Right {
  const { rest: words, day } = takeDay(typed);
  const place = words === "" ? undefined : findByName(places, words);
  if (place?.ok === false && !isInitialsOrNickname(words)) return UNREADABLE;
  return {
    change: {
      ...before,
      ...(day !== undefined && { day }),
      ...(place?.ok === true && { place: place.entry.name }),
      ...(place?.ok === false && { customer: words }),
    },
  };
}
