import { afterEach, describe, expect, test } from "vitest";
import type { ReadKept } from "../../adapters/slack/send-files.ts";
import { closeOpened, fixture, opened, sample, sendEvent, sendForm, slash } from "./slack-harness.ts";

afterEach(closeOpened);

const BYTES = Buffer.from("a photo");
const kept: ReadKept = async ({ organisation }) => (organisation === "T1" ? BYTES : undefined);
const openIt = (answer = () => sample("file"), readKept: ReadKept = kept) => opened(answer, {}, undefined, readKept);

describe("the files of an answer", () => {
  test("follow it into its thread, byte for byte", async () => {
    const { door, slack } = await openIt();
    await sendEvent(door, fixture("app-mention"));
    const { body } = await slack.call("files.completeUploadExternal");
    expect(body).toMatchObject({ channel_id: "C1", thread_ts: "1767225600.000100" });
    expect((await slack.call("files.getUploadURLExternal")).body).toMatchObject({
      filename: "IMG_1.jpg",
      length: String(BYTES.length),
      alt_txt: "Photo from Wren, 20 kB",
    });
    const put = slack.calls.find(({ method }) => method.startsWith("/upload/"));
    expect(put?.body["bytes"]).toContain(BYTES.toString("hex"));
    expect(slack.calls[0]?.method).toBe("chat.postMessage");
  });

  test("that are for the asker alone go into the direct messages", async () => {
    const { door, slack } = await openIt(() => ({ ...sample("file"), isPrivate: true }));
    slack.script("chat.postMessage", () => ({ body: { ok: true, channel: "D1", ts: "1.1" } }));
    await sendForm(door, slash(slack));
    expect((await slack.call("files.completeUploadExternal")).body["channel_id"]).toBe("D1");
    expect((await slack.call("chat.postMessage")).body["channel"]).toBe("U1");
    expect((await slack.call("/respond/slash")).body["response_type"]).toBe("ephemeral");
  });

  test("go into the direct messages where the bot may not put them", async () => {
    const { door, slack } = await openIt();
    slack.script("chat.postMessage", () => ({ body: { ok: true, channel: "D1", ts: "1.1" } }));
    slack.script("files.completeUploadExternal", ({ body }) =>
      body["channel_id"] === "C1" ? { body: { ok: false, error: "not_in_channel" } } : undefined,
    );
    await sendForm(door, slash(slack));
    expect((await slack.call("files.completeUploadExternal", 1)).body["channel_id"]).toBe("D1");
  });

  test.each([
    ["is gone", async () => undefined],
    [
      "cannot be read",
      async () => {
        throw new Error("disk");
      },
    ],
  ] satisfies [string, ReadKept][])("that %s is still named, and a line in the log", async (_, readKept) => {
    const { door, slack, logged } = await openIt(undefined, readKept);
    await sendEvent(door, fixture("app-mention"));
    await door.close();
    expect(slack.calls.map(({ method }) => method)).toEqual(["chat.postMessage"]);
    expect(logged.filter(({ level }) => level === "warn")).toHaveLength(1);
    expect(JSON.stringify(logged)).not.toContain("Wren");
  });
});
