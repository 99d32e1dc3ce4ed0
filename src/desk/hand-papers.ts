import type { Paper } from "../jobs/job-act.ts";
import type { JobRecord } from "../jobs/job-record.ts";
import { buildRecordPaper } from "../messages/build-record-paper.ts";
import type { Block, FileBlock } from "../messages/card.ts";
import { problem } from "../messages/notes.ts";
import { recordToJson } from "../messages/record-json.ts";
import { RECORD_TEXTS } from "../messages/record-words.ts";
import { type Voice, voiceFor } from "../messages/voice.ts";
import { writeSheet } from "../messages/write-sheet.ts";
import type { KeptFile } from "../ports/files.ts";
import type { Service } from "./serve.ts";
import { shortId } from "./short-id.ts";
import type { JobWriting, Written } from "./write-job.ts";

/** A message whose papers are made: where they are kept, and for whom. */
interface Handing {
  readonly service: Service;
  readonly writing: JobWriting;
  readonly written: Written;
}

/**
 * Makes the papers that an answer hands over, and keeps them: they are on the disk before anything names them.
 * A paper that cannot be made is said in its place and costs nobody the answer.
 */
export async function handPapers(service: Service, writing: JobWriting, written: Written): Promise<Written> {
  const handing: Handing = { service, writing, written };
  const { acts = [], reader, card } = written.shown;
  const wanted = acts.flatMap((act) => (act.kind === "paper" ? [act.paper] : []));
  const { turn } = writing;
  const voice: Voice = { ...voiceFor(turn.library, reader), ...(turn.books && { books: turn.books }) };
  if (wanted.length === 0) return written;
  const added: Block[] = [];
  for (const paper of wanted) added.push(await handOver(handing, voice, () => makePaper(handing, voice, paper)));
  return { ...written, shown: { ...written.shown, card: { ...card, blocks: [...card.blocks, ...added] } } };
}

async function handOver({ service, writing }: Handing, voice: Voice, make: () => Promise<FileBlock>): Promise<Block> {
  const { room, inbound } = service;
  const notMade = problem(RECORD_TEXTS[voice.language].paper.notMade);
  // A house without files hands nothing over; that is no fault, and is said all the same.
  if (room.files === undefined) return notMade;
  try {
    return await make();
  } catch (error) {
    const { door } = inbound.caller;
    room.faults.report({ id: shortId(room), doing: "file", door, workspace: writing.workspace, error });
    return notMade;
  }
}

async function makePaper(handing: Handing, voice: Voice, paper: Paper): Promise<FileBlock> {
  const texts = RECORD_TEXTS[voice.language].paper;
  if (paper.kind === "sheet") {
    const file = await put(handing, `${paper.name}.csv`, "text/csv", encode(writeSheet(paper)));
    return { kind: "file", file, text: texts.sheetText };
  }
  const record = await recordOf(handing, paper.job);
  if (paper.form === "pdf") return await printRecord(handing, voice, record);
  const json = `${JSON.stringify(recordToJson(voice, record), null, 2)}\n`;
  const file = await put(handing, `${texts.fileName(paper.job)}.json`, "application/json", encode(json));
  return { kind: "file", file, text: texts.jsonText(paper.job) };
}

async function printRecord(handing: Handing, voice: Voice, record: JobRecord): Promise<FileBlock> {
  const { room, workspace } = handing.service;
  const { files, papers } = room;
  if (files === undefined || papers === undefined) throw new Error("nothing here makes papers");
  const { number } = record.job;
  const texts = RECORD_TEXTS[voice.language].paper;
  const readPhoto = async (hash: string) => await files.read(workspace.workspace, hash);
  const bytes = await papers.drawRecord(buildRecordPaper(voice, record), readPhoto);
  const file = await put(handing, `${texts.fileName(number)}.pdf`, "application/pdf", bytes);
  return { kind: "file", file, text: texts.fileText(number) };
}

async function put({ service }: Handing, ...paper: PaperBytes): Promise<KeptFile> {
  const { files } = service.room;
  if (files === undefined) throw new Error("nothing here keeps papers");
  return await files.put(service.workspace.workspace, ...paper);
}
type PaperBytes = readonly [name: string, type: "text/csv" | "application/json" | "application/pdf", bytes: Uint8Array];

/** The record as this message leaves it; any other job as it stands. */
async function recordOf({ service, written }: Handing, number: string): Promise<JobRecord> {
  const { workspace } = service;
  if (written.record?.job.number === number) return written.record;
  const [job, events, marks] = [
    await workspace.findJob(number),
    await workspace.jobHistory(number),
    await workspace.jobMarks(number),
  ];
  if (job === undefined) throw new Error("an answer hands over the record of a job that is not there");
  return { job, events, marks };
}

function encode(text: string): Uint8Array {
  return new TextEncoder().encode(text);
}
