import { writeFile } from "node:fs/promises";
import { resolve } from "node:path";
import type { Settings } from "../src/boundary/settings.ts";
import type { JobRecord } from "../src/jobs/job-record.ts";
import { buildRecordPaper } from "../src/messages/build-record-paper.ts";
import { recordToJson } from "../src/messages/record-json.ts";
import { type Voice, voiceFor } from "../src/messages/voice.ts";
import type { Caller, WorkspaceStore } from "../src/ports/store.ts";
import { readRecordWords } from "./commands/read-record-words.ts";
import { type House, openHouse } from "./open-house.ts";
import { createPapers } from "./papers/create-papers.ts";

/** Whoever may read the files of the house may read its records. */
const OFFICE: Caller = { door: "terminal", organisation: "local", user: "office", name: "office" };

/** Writes the record of a job as a PDF or as JSON, from what the store holds. */
export async function runRecord(settings: Settings, words: readonly string[], root: string): Promise<number> {
  const read = readRecordWords(words);
  if (!read.ok) return complain(read.say);
  const { job, out, isJson, reader } = read.words;
  const house = await openHouse(settings, root, { sendsPosts: false });
  try {
    const workspace = await house.store.openWorkspace(OFFICE);
    const record = await readRecord(workspace, job);
    if (record === undefined) return complain(`There is no job ${job}.`);
    const { language, units } = { ...house.books.company, ...reader };
    const voice: Voice = { ...voiceFor(house.library, { language, units }), books: house.books };
    const bytes = isJson
      ? `${JSON.stringify(recordToJson(voice, record), null, 2)}\n`
      : await print(house, workspace, voice, record);
    const path = resolve(process.cwd(), out);
    await writeFile(path, bytes);
    process.stdout.write(`written: ${path}\n`);
    return 0;
  } finally {
    await house.close();
  }
}

async function readRecord(workspace: WorkspaceStore, number: string): Promise<JobRecord | undefined> {
  const job = await workspace.findJob(number);
  if (job === undefined) return undefined;
  return { job, events: await workspace.jobHistory(number), marks: await workspace.jobMarks(number) };
}

async function print(
  { files, pictures }: House,
  { workspace }: WorkspaceStore,
  voice: Voice,
  record: JobRecord,
): Promise<Uint8Array> {
  const papers = createPapers({ printPhoto: pictures.printPhoto, draw: pictures.drawRecord });
  return await papers.drawRecord(buildRecordPaper(voice, record), (hash) => files.read(workspace, hash));
}

function complain(line: string): number {
  process.stderr.write(`${line}\n`);
  return 2;
}
