import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { createFileStore } from "../../adapters/files/file-store.ts";
import type { FileStore, SentFile } from "../../src/ports/files.ts";
import { ANA, type JobDesk, jobOf, openJobDesk, sayAll, TEAM_BOOKS } from "../support/job-desk.ts";
import { jpegWith } from "../support/picture-files.ts";
import { textsOf } from "../support/talk.ts";

const PHOTO = jpegWith([]);
let folder: string;
let files: FileStore;
let desk: JobDesk;

beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), "oldhand-desk-files-"));
  files = createFileStore({ folder, keepsPlace: false });
  desk = openJobDesk(TEAM_BOOKS, { files });
});
afterEach(() => rm(folder, { recursive: true, force: true }));

const sent = (name: string, bytes: Uint8Array = PHOTO): SentFile => ({ name, read: async () => bytes });
const failing = (error: Error): SentFile => ({
  name: "IMG_1.jpg",
  read: async () => {
    throw error;
  },
});
const begin = () => sayAll(desk, "job new", "T. M.", "Ostrowick", "skip");
const send = (text: string, ...sending: readonly SentFile[]) => desk.say(text, ANA, "c1", { files: sending });
const kept = async () => (await jobOf(desk.store, "1001"))?.files ?? [];
const said = async (text: string, ...sending: readonly SentFile[]) => textsOf(await send(text, ...sending)).join(" ");

describe("photos and papers sent to the desk", () => {
  test("are kept in the open job, and the card says so once they are", async () => {
    await begin();
    expect(await said("", sent("IMG_1.jpg"))).toContain("Kept in job 1001: IMG_1.jpg.");
    const [file] = await kept();
    expect(file).toMatchObject({ name: "IMG_1.jpg", type: "image/jpeg" });
    const { workspace } = await desk.store.openWorkspace(ANA);
    expect(await files.read(workspace, file?.hash ?? "")).toEqual(PHOTO);
  });

  test("without an open job are not lost in silence: the card says what to type", async () => {
    expect(await said("", sent("IMG_1.jpg"))).toContain("Open the job first, such as “job 1003”");
  });

  test("bring their words along as a note of the job", async () => {
    await begin();
    expect(await said("behind the unit, seen from the door", sent("IMG_1.jpg"))).toContain("Note kept in job 1001.");
    const history = await (await desk.store.openWorkspace(ANA)).jobHistory("1001");
    expect(history.map(({ change }) => change).filter(({ kind }) => kind === "note")).toEqual([
      { kind: "note", text: "behind the unit, seen from the door" },
    ]);
  });

  test.each(["the pan under the heater", "new relief valve, 3/4 in", "no hot water before, see the breaker"])(
    "are not taken for a request by what they show: %s",
    async (text) => {
      await begin();
      expect(await said(text, sent("IMG_1.jpg"))).toContain("Note kept in job 1001.");
      expect(desk.store.commits.at(-1)?.state.walk).toBeUndefined();
    },
  );

  test("with words that ask something are kept, and the question is answered", async () => {
    await begin();
    const card = await send("mix 135 to 120 with 50 in", sent("IMG_1.jpg"));
    // Energy balance of mixing: (120 - 50) / (135 - 50) = 82.4 % hot.
    expect(card.summary).toMatch(/82(\.\d)?\s?%/);
    expect(await kept()).toHaveLength(1);
  });

  test("are kept once when the platform sends the message again", async () => {
    await begin();
    const again = { files: [sent("IMG_1.jpg")], delivery: "same" };
    const first = await desk.say("", ANA, "c1", again);
    expect(await desk.say("", ANA, "c1", again)).toEqual(first);
    expect(await kept()).toHaveLength(1);
  });

  test.each([
    { name: "camera.heic", bytes: Buffer.from("\0\0\0\x18ftypheic\0\0\0\0mif1heic", "latin1"), because: "HEIC" },
    {
      name: "tool.exe",
      bytes: Buffer.from("MZ\x90\0not a picture", "latin1"),
      because: "pictures (JPEG, PNG, WebP) and PDF",
    },
    { name: "empty.jpg", bytes: Buffer.alloc(0), because: "The file is empty" },
  ])("of a kind that is not kept are refused by name: $name", async ({ name, bytes, because }) => {
    await begin();
    const words = await said("", sent(name, bytes), sent("IMG_2.jpg"));
    expect(words).toContain(`${name} is not kept.`);
    expect(words).toContain(because);
    expect((await kept()).map((file) => file.name)).toEqual(["IMG_2.jpg"]);
  });

  test("that the platform does not give are said to be missing, and the fault is reported", async () => {
    await begin();
    expect(await said("", failing(new Error("expired")))).toContain("The chat did not hand the file over.");
    expect(desk.faults).toMatchObject([{ doing: "file", door: "slack", error: { message: "expired" } }]);
  });

  test("that are too large say so, which is no fault", async () => {
    await begin();
    const tooLarge = Object.assign(new Error("20 MB"), { code: "too_large" });
    expect(await said("", failing(tooLarge))).toContain("larger than 10 MB");
    expect([desk.faults, await kept()]).toEqual([[], []]);
  });

  test("are refused where none are kept", async () => {
    desk = openJobDesk();
    await begin();
    expect(await said("", sent("IMG_1.jpg"))).toContain("No files are kept here.");
  });

  test("cannot be read from another workspace", async () => {
    await begin();
    await send("", sent("IMG_1.jpg"));
    const [file] = await kept();
    const { workspace } = await desk.store.openWorkspace({ ...ANA, organisation: "zenith" });
    expect(await files.read(workspace, file?.hash ?? "")).toBeUndefined();
  });

  test("stay in the job when somebody undoes the step before, and that is said", async () => {
    await begin();
    await send("", sent("IMG_1.jpg"));
    expect(textsOf(await desk.say("undo"))).toContain(
      "Job 1001 stays as it was written down. A manager can put it right.",
    );
    expect(await kept()).toHaveLength(1);
  });
});
