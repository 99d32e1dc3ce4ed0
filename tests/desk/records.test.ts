import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test, vi } from "vitest";
import { z } from "zod";
import { createFileStore } from "../../adapters/files/file-store.ts";
import type { Card, FileBlock } from "../../src/messages/card.ts";
import type { FileStore } from "../../src/ports/files.ts";
import type { PaperPort, RecordPaper } from "../../src/ports/papers.ts";
import type { Caller } from "../../src/ports/store.ts";
import { ANA, BEN, type JobDesk, openJobDeskOn, sayAll, TEAM_BOOKS } from "../support/job-desk.ts";
import { createMemoryStore } from "../support/memory-store.ts";
import { SMALL_JPEG } from "../support/small-jpeg.ts";
import { headlineOf, textsOf } from "../support/talk.ts";

const STRANGER: Caller = { ...ANA, organisation: "other", user: "U9" };
const BEGIN = ["job new", "T. M.", "Ostrowick", "2026-11-25"] as const;
const VISIT = ["survey model hollin-50, closed, 65 psi, set to 125F, 240 V"] as const;
const CLOSE = [...VISIT, "startup", "done", "stop", "done", "no", "marisol", "2026-12-01"] as const;
const CLOSED = [...BEGIN, ...CLOSE] as const;

let folder = "";
let files: FileStore;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "oldhand-records-"));
  files = createFileStore({ folder, keepsPlace: false });
});
afterAll(() => rm(folder, { recursive: true }));

interface Bench extends JobDesk {
  readonly printed: RecordPaper[];
}

function openBench(draw?: PaperPort["drawRecord"]): Bench {
  const printed: RecordPaper[] = [];
  const papers: PaperPort = {
    drawRecord:
      draw ??
      (async (paper) => {
        printed.push(paper);
        return Buffer.from(`%PDF- ${JSON.stringify(paper)}`);
      }),
  };
  return Object.assign(openJobDeskOn(createMemoryStore(), TEAM_BOOKS, { files, papers }), { printed });
}

const filesOf = ({ blocks }: Card): readonly FileBlock[] =>
  blocks.flatMap((block) => (block.kind === "file" ? [block] : []));
const postsOf = ({ store }: Bench) => store.commits.flatMap(({ posts = [] }) => posts);
const photo = { name: "left.jpg", read: async () => SMALL_JPEG };

const quantity = z.strictObject({ value: z.number(), unit: z.string(), text: z.string() });
const said = { by: z.string(), at: z.iso.datetime() };
const fact = z.strictObject({
  ...said,
  id: z.string(),
  topic: z.string(),
  label: z.string(),
  value: z.union([z.string(), z.number(), z.boolean()]),
  unit: z.string(),
  text: z.string(),
});
const remark = z.strictObject({ ...said, text: z.string() });
/** The shape that programs may rely on, written down once more so that no change of it passes unseen. */
const RECORD = z.strictObject({
  form: z.literal(1),
  job: z.string(),
  is_invented: z.boolean(),
  company: z.string(),
  customer: z.string(),
  place: z.string(),
  status: z.string(),
  status_text: z.string(),
  day: z.iso.date().nullable(),
  permit: z.string().nullable(),
  model: z.string().nullable(),
  model_name: z.string().nullable(),
  people: z.array(z.strictObject({ id: z.string(), name: z.string() })),
  opened_at: z.iso.datetime(),
  started_at: z.iso.datetime().nullable(),
  closed_at: z.iso.datetime().nullable(),
  time_on_site_s: z.number().nullable(),
  facts: z.array(fact),
  readings: z.array(
    z.strictObject({
      ...said,
      id: z.string(),
      label: z.string(),
      measured: quantity,
      expected: quantity.nullable(),
      is_accepted: z.boolean(),
      because: z.string().nullable(),
      text: z.string(),
    }),
  ),
  steps: z.array(z.strictObject({ label: z.string(), text: z.string() })),
  items: z.array(
    z.strictObject({
      id: z.string(),
      what: z.string(),
      owner: z.string(),
      owner_name: z.string(),
      due: z.iso.date(),
      closed: z.strictObject(said).nullable(),
    }),
  ),
  cautions: z.array(
    z.strictObject({
      ...said,
      id: z.string(),
      severity: z.enum(["stop", "must", "should", "note"]).nullable(),
      act: z.enum(["seen", "skipped"]),
      because: z.string().nullable(),
      caution: z.string(),
      text: z.string(),
    }),
  ),
  parts: z.array(z.strictObject({ id: z.string(), name: z.string(), amount: z.number(), unit: z.enum(["", "m"]) })),
  notes: z.array(remark),
  fault_checks: z.array(fact),
  fault_remarks: z.array(remark),
  files: z.array(
    z.strictObject({
      ...said,
      name: z.string(),
      type: z.string(),
      size_B: z.number(),
      sha256: z.string().regex(/^[0-9a-f]{64}$/),
    }),
  ),
  history: z.array(
    z.strictObject({
      ...said,
      number: z.number(),
      kind: z.string(),
      door: z.string(),
      text: z.string(),
      change: z.looseObject({ kind: z.string() }),
      amends: z.number().nullable(),
      amended_by: z.number().nullable(),
    }),
  ),
});

describe("the record of a job", () => {
  test("is shown and handed over as a page and as JSON of a fixed shape, to anybody of the company", async () => {
    const desk = openBench();
    await sayAll(desk, ...CLOSED);
    const card = await desk.say("record 1001", BEN, "elsewhere");
    expect(headlineOf(card)).toBe("Record of job 1001: T. M., Ostrowick.");
    const [page, json, ...others] = filesOf(card);
    expect(others).toEqual([]);
    expect(page?.file).toMatchObject({ name: "job-1001-record.pdf", type: "application/pdf" });
    const bytes = await files.read("acme", json?.file.hash ?? "");
    const read = RECORD.parse(JSON.parse(Buffer.from(bytes ?? []).toString("utf8")));
    expect(read).toMatchObject({ job: "1001", customer: "T. M.", status: "open_items" });
    expect(read.items.every(({ owner }) => owner === "marisol")).toBe(true);
    expect(read.history.map(({ number }) => number)).toEqual(read.history.map((_, at) => at + 1));
    expect(desk.faults).toEqual([]);
  });

  test("is nobody's of another company, who is told nothing of it", async () => {
    const desk = openBench();
    await sayAll(desk, ...CLOSED);
    const card = await desk.say("record 1001", STRANGER, "c9");
    expect(headlineOf(card)).toBe("There is no job “1001”. Check the number.");
    expect(filesOf(card)).toEqual([]);
    const [page] = filesOf(await desk.say("record 1001"));
    expect(await files.read("other", page?.file.hash ?? "")).toBeUndefined();
  });

  test("says what to type where no job is open", async () => {
    expect(headlineOf(await openBench().say("record"))).toMatch(/^No job is open here/);
  });

  test("comes once a delivery: the same message again gives the same card and makes no paper", async () => {
    const desk = openBench();
    await sayAll(desk, ...CLOSED);
    const ask = () => desk.say("record 1001", ANA, "c1", { delivery: "again" });
    const first = await ask();
    const made = desk.printed.length;
    expect(await ask()).toEqual(first);
    expect(desk.printed.length).toBe(made);
  });

  test("a paper that cannot be made costs nobody the answer nor the close-out", async () => {
    const desk = openBench(async () => {
      throw new Error("no paper left");
    });
    await sayAll(desk, ...CLOSED);
    expect(postsOf(desk)).toHaveLength(2);
    const card = await desk.say("record 1001");
    expect(headlineOf(card)).toBe("Record of job 1001: T. M., Ostrowick.");
    expect(textsOf(card).some((text) => text.startsWith("The paper could not be made"))).toBe(true);
    expect(desk.faults.map(({ doing }) => doing)).toEqual(["file"]);
  });
});

test("a message that writes nothing into its job reads nothing of what is kept about it", async () => {
  const store = createMemoryStore();
  const desk = openJobDeskOn(store, TEAM_BOOKS, { files });
  const workspace = await store.openWorkspace(ANA);
  vi.spyOn(store, "openWorkspace").mockResolvedValue(workspace);
  await sayAll(desk, ...BEGIN);
  const reads = [
    vi.spyOn(workspace, "jobMarks"),
    vi.spyOn(workspace, "hasPost"),
    vi.spyOn(workspace, "jobHistory"),
  ] as const;
  await sayAll(desk, "help", "units si", "help mix");
  expect(reads.map(({ mock }) => mock.calls.length)).toEqual([0, 0, 0]);
  await desk.say("job note seen from the road");
  expect(reads.every(({ mock }) => mock.calls.length > 0)).toBe(true);
});

describe("the summary", () => {
  test("is short, and its thread holds the rest with photos and the record as a page", async () => {
    const desk = openBench();
    await sayAll(desk, ...BEGIN);
    await desk.say("", ANA, "c1", { files: [photo] });
    await sayAll(desk, ...CLOSE);
    const [first, rest, ...others] = postsOf(desk);
    expect(others).toEqual([]);
    expect(rest?.follows).toBe(first?.id);
    expect(filesOf(first?.card ?? { title: "", blocks: [], summary: "" })).toEqual([]);
    expect(rest && filesOf(rest.card).map(({ file }) => file.name)).toEqual(["left.jpg"]);
    expect(rest?.paper).toMatchObject({ name: "job-1001-record.pdf", record: { title: "Record of job 1001" } });
    expect([first?.paper, desk.printed]).toEqual([undefined, []]);
    expect(rest && filesOf(rest.card)[0]?.text).toMatch(/^left\.jpg: Ana, 25 Nov \d\d:\d\d$/);
  });

  test("is put right in both places by a photo and by a caution that is seen to later", async () => {
    const desk = openBench();
    await sayAll(desk, ...CLOSED);
    const [first, rest] = postsOf(desk);
    await desk.say("", ANA, "c1", { files: [photo] });
    const later = postsOf(desk).slice(2);
    expect(later.map(({ updates }) => updates)).toEqual([first?.id, rest?.id]);
    expect(later[1] && filesOf(later[1].card).map(({ file }) => file.name)).toEqual(["left.jpg"]);
    expect(later[1]?.paper?.record.blocks.some(({ kind }) => kind === "photos")).toBe(true);
    expect(new Set(postsOf(desk).map(({ id }) => id)).size).toBe(4);
  });

  test("costs nothing where the company has no channel for it", async () => {
    const { teamChannel: _, ...company } = TEAM_BOOKS.company;
    const store = createMemoryStore();
    const desk = openJobDeskOn(store, { ...TEAM_BOOKS, company }, { files });
    const workspace = await store.openWorkspace(ANA);
    const hasPost = vi.spyOn(workspace, "hasPost");
    vi.spyOn(store, "openWorkspace").mockResolvedValue(workspace);
    const card = await sayAll(desk, ...CLOSED);
    expect(textsOf(card).join(" ")).toContain("names no team_channel");
    expect(store.commits.flatMap(({ posts = [] }) => posts)).toEqual([]);
    expect(hasPost).not.toHaveBeenCalled();
  });

  test("names what was seen to in any conversation about the job, and not what was taken back", async () => {
    const desk = openBench();
    await sayAll(desk, ...BEGIN);
    await desk.say("job number=1001", BEN, "c2");
    await desk.say("caution garage, set to 140F, no mixing valve", BEN, "c2");
    await desk.say("seen hot_storage_without_mixing_valve", BEN, "c2");
    const rows = async () => {
      const card = await desk.say("record 1001");
      const block = card.blocks.find((one) => one.kind === "rows" && one.heading === "Cautions seen to");
      return block?.kind === "rows" ? block.rows : [];
    };
    expect(await rows()).toEqual([
      { label: expect.stringContaining("140 °F"), value: expect.stringMatching(/^Seen, done: Ben, 25 Nov/) },
    ]);
    await desk.say("undo", BEN, "c2");
    expect(await rows()).toEqual([]);
  });
});
