import { existsSync } from "node:fs";
import { readdir } from "node:fs/promises";
import { basename, join } from "node:path";
import type { BookRead } from "../../src/boundary/book-schema.ts";
import { readCause, readCheck, readGroups, readSymptom } from "../../src/boundary/fault-files.ts";
import { EXPECTED_READINGS } from "../../src/faults/expected.ts";
import { type FaultKnowledge, NO_FAULTS } from "../../src/faults/knowledge.ts";
import { findKnowledgeProblems, type KnowledgeProblem } from "../../src/faults/knowledge-problems.ts";
import { hazards as en } from "../../src/messages/en/hazards.ts";
import { hazards as es } from "../../src/messages/es/hazards.ts";
import { LibraryFault } from "./library-fault.ts";
import { type FaultFile, readFaultFile } from "./read-fault-file.ts";

const FOLDER = ["faults", "knowledge"] as const;
const ID = /^[a-z][a-z0-9_]*$/;
const PRECAUTIONS = [stepsOf(en), stepsOf(es)];
const EXPECTED = new Map([...EXPECTED_READINGS].map(([id, { quantity }]) => [id, quantity]));

/** Entries of one folder, each with the file that it was read from. */
interface Shelf<T> {
  readonly entries: readonly T[];
  readonly files: ReadonlyMap<string, FaultFile>;
}

/**
 * Loads what is known of faults: one file an entry, its name the id. Everything is checked against itself; all faults are
 * told at once, each with file and line.
 * @param root the folder that holds `faults`; where there is none, nothing is known
 * @throws LibraryFault
 */
export async function loadFaults(root: string): Promise<FaultKnowledge> {
  const folder = join(root, ...FOLDER);
  if (!existsSync(folder)) return NO_FAULTS;
  const faults: string[] = [];
  const [symptoms, causes, checks, groups] = await Promise.all([
    readShelf(folder, "symptoms", readSymptom, faults),
    readShelf(folder, "causes", readCause, faults),
    readShelf(folder, "checks", readCheck, faults),
    readGroupsFile(folder, faults),
  ]);
  if (faults.length > 0) throw new LibraryFault(faults.toSorted());
  const knowledge = {
    symptoms: symptoms.entries,
    causes: causes.entries,
    checks: checks.entries,
    groups: groups.entries,
  };
  const shelves = { symptom: symptoms, cause: causes, check: checks, group: groups };
  const fileOf = ({ kind, id }: KnowledgeProblem) => shelves[kind].files.get(kind === "group" ? "groups" : id);
  const problems = findKnowledgeProblems(knowledge, { expected: EXPECTED, precautions: PRECAUTIONS });
  if (problems.length > 0)
    throw new LibraryFault(
      problems.map((problem) => {
        const file = fileOf(problem);
        return `${file?.file ?? problem.id} ${file?.where(problem.at) ?? ""}: ${problem.reason}`;
      }),
    );
  return knowledge;
}

async function readShelf<T>(
  folder: string,
  name: string,
  read: (id: string, contents: unknown) => BookRead<T>,
  faults: string[],
): Promise<Shelf<T>> {
  const path = join(folder, name);
  const listed = existsSync(path) ? await readdir(path) : [];
  const found = listed.filter((file) => file.endsWith(".yaml")).toSorted();
  const reads = await Promise.all(
    found.map(async (file) => {
      const id = basename(file, ".yaml");
      const said = nameOf(name, file);
      if (!ID.test(id)) {
        faults.push(`${said}: its name is its id: small letters, digits and underscores`);
        return undefined;
      }
      return await readEntry(join(path, file), said, (contents) => read(id, contents), faults).then(
        (one) => one && ([id, one] as const),
      );
    }),
  );
  const good = reads.filter((one) => one !== undefined);
  return {
    entries: good.map(([, { entry }]) => entry),
    files: new Map(good.map(([id, { file }]) => [id, file])),
  };
}

async function readGroupsFile(folder: string, faults: string[]): Promise<Shelf<readonly string[]>> {
  const one = await readEntry(join(folder, "groups.yaml"), nameOf("groups.yaml"), readGroups, faults);
  return { entries: one?.entry ?? [], files: new Map(one ? [["groups", one.file]] : []) };
}

async function readEntry<T>(
  path: string,
  said: string,
  read: (contents: unknown) => BookRead<T>,
  faults: string[],
): Promise<{ readonly entry: T; readonly file: FaultFile } | undefined> {
  const file = existsSync(path) ? await readFaultFile(path, said) : { fault: `${said}: is missing` };
  if ("fault" in file) {
    faults.push(file.fault);
    return undefined;
  }
  const entry = read(file.data);
  if (entry.ok) return { entry: entry.value, file };
  faults.push(...entry.faults.map(({ path: at, reason }) => `${said} ${file.where(at)}: ${reason}`));
  return undefined;
}

function nameOf(...parts: readonly string[]): string {
  return join("src", ...FOLDER, ...parts);
}

function stepsOf(texts: typeof en) {
  return Object.fromEntries(Object.entries(texts).map(([hazard, { steps }]) => [hazard, steps]));
}
