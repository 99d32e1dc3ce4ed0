import { access } from "node:fs/promises";
import { join } from "node:path";
import type { Books } from "../../src/books/books.ts";
import { readCatalogue } from "../../src/boundary/catalogue-book.ts";
import {
  assumeCode,
  type CodeBook,
  type CodeContext,
  readCode,
  readShippedLimits,
} from "../../src/boundary/code-book.ts";
import { readCompany, readPeople } from "../../src/boundary/company-books.ts";
import { type DisplayCodeBook, readDisplayCodes } from "../../src/boundary/display-codes-book.ts";
import { freezeDeep } from "../../src/boundary/freeze-deep.ts";
import { type JobsBook, type JobsContext, readJobs } from "../../src/boundary/jobs-book.ts";
import { readPlaces } from "../../src/boundary/places-book.ts";
import { readPrices } from "../../src/boundary/prices-book.ts";
import type { AnyCaution } from "../../src/cautions/caution.ts";
import type { FaultKnowledge } from "../../src/faults/knowledge.ts";
import { loadCrew } from "./load-crew.ts";
import { readBook } from "./read-book.ts";

/** The demo company's books, which also hold the limits of the model codes. */
const SHIPPED = new URL("../../seeds", import.meta.url).pathname;

/**
 * Loads and freezes a company's books; every fault of a file is told at once.
 * @param cautions what the company may amend; left out where the same books were judged before
 * @param faults what the company's display codes may point to; left out likewise
 */
export async function loadBooks(
  folder: string,
  cautions?: readonly AnyCaution[],
  faults?: FaultKnowledge,
): Promise<Books> {
  const company = await readBook(folder, "company", readCompany);
  const people = await readBook(folder, "people", readPeople);
  const catalogue = await readBook(folder, "catalogue", readCatalogue);
  const places = await readBook(folder, "places", readPlaces);
  const prices = await readBook(folder, "prices", readPrices);
  const [home, ...others] = places.places.map(({ id }) => id);
  const code = await readCodeBook(folder, [home ?? "", ...others], cautions);
  const models = catalogue.models.map(({ id }) => id);
  const display = await readDisplayCodeBook(folder, models, faults);
  const jobs = await readJobsBook(folder, { people: people.people });
  const crew = await loadCrew(
    folder,
    people.people.map(({ id }) => id),
  );
  const books = [
    company,
    people,
    catalogue,
    places,
    prices,
    code,
    ...(display ? [display] : []),
    ...(jobs ? [jobs] : []),
    crew,
  ];
  const isInvented = books.every((book) => book.isInvented);
  return freezeDeep({
    company: { ...company, isInvented },
    people: people.people,
    catalogue: catalogue.models,
    places: places.places,
    prices: prices.prices,
    code: code.code,
    codes: code.codes,
    displayCodes: display?.displayCodes ?? [],
    jobs: jobs?.jobs ?? [],
    jobEvents: jobs?.events ?? [],
    crew: crew.crew,
    ...(faults && { causeNames: nameCauses(faults) }),
  });
}

function nameCauses({ causes }: FaultKnowledge): NonNullable<Books["causeNames"]> {
  return Object.fromEntries(causes.map(({ id, words }) => [id, { en: words.en.label, es: words.es.label }] as const));
}

/** A company that has written no code.yaml works under the model codes, and is told so. */
async function readCodeBook(
  folder: string,
  places: CodeContext["places"],
  cautions: readonly AnyCaution[] | undefined,
): Promise<CodeBook> {
  const context = await codeContext(places, cautions);
  return (await isThere(folder, "code.yaml"))
    ? readBook(folder, "code", (contents) => readCode(contents, context))
    : assumeCode(context);
}

/** What a company's code book is read against: the limits of the model codes, its places, and what it may amend. */
export async function codeContext(
  places: CodeContext["places"],
  cautions: readonly AnyCaution[] | undefined,
): Promise<CodeContext> {
  const shipped = await readBook(SHIPPED, "code", readShippedLimits);
  return { shipped, places, ...(cautions && { cautions }) };
}

/** A company that has written no display codes does without: the catalogue's own stay. */
async function readDisplayCodeBook(
  folder: string,
  models: readonly string[],
  faults: FaultKnowledge | undefined,
): Promise<DisplayCodeBook | undefined> {
  const name = "display-codes";
  if (!(await isThere(folder, `${name}.yaml`)) && !(await isThere(folder, `${name}.csv`))) return undefined;
  return await readBook(folder, name, (contents) => readDisplayCodes(contents, { models, ...(faults && { faults }) }));
}

/** A company that begins with an empty record has no jobs.yaml. */
async function readJobsBook(folder: string, context: JobsContext): Promise<JobsBook | undefined> {
  if (!(await isThere(folder, "jobs.yaml"))) return undefined;
  return await readBook(folder, "jobs", (contents) => readJobs(contents, context));
}

function isThere(folder: string, file: string): Promise<boolean> {
  return access(join(folder, file)).then(
    () => true,
    () => false,
  );
}
