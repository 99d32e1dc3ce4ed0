import { afterEach, describe, expect, test } from "vitest";
import { fetchFile } from "../../adapters/slack/fetch-file.ts";
import type { SlackFetch } from "../../adapters/slack/slack-fetch.ts";
import type { Card } from "../../src/messages/card.ts";
import { MOST_FILE_B } from "../../src/ports/files.ts";
import type { FakeSlack } from "./fake-slack.ts";
import { closeOpened, type FakeDesk, fixture, type Json, opened, plainCard, sendEvent } from "./slack-harness.ts";

afterEach(closeOpened);

const PHOTO = Buffer.from([0xff, 0xd8, 0xff, 0xe0, 0, 1, 2, 3]);
/** What a file came to, said by a desk that reads it. */
const reading: FakeDesk["answer"] = async ({ files = [] }): Promise<Card> => {
  const read = await Promise.all(
    files.map((file) =>
      file.read().then(
        (bytes) => `${file.name} ${file.size_B} ${Buffer.from(bytes).toString("hex").slice(0, 40)}`,
        (error: unknown) => `${file.name}: ${String(error)}`,
      ),
    ),
  );
  return plainCard(`got ${read.join("; ")}`);
};
const photo = (slack: FakeSlack, changes: Json = {}): Json => ({
  id: "F0PHOTO001",
  name: "IMG_1.jpg",
  mode: "hosted",
  mimetype: "image/jpeg",
  size: PHOTO.length,
  file_access: "visible",
  url_private: slack.fileUrl("view.jpg"),
  url_private_download: slack.fileUrl("1.jpg"),
  ...changes,
});
const bytes = (slack: FakeSlack, name: string, body: unknown, headers: Readonly<Record<string, string>> = {}) =>
  slack.script(`/files/${name}`, () => ({ headers: { "content-type": "image/jpeg", ...headers }, body }));
const shared = (files: readonly Json[], more: Json = {}) =>
  fixture("message-im", { event: { subtype: "file_share", files, ...more } });

describe("a photo that somebody sends", () => {
  test.each(["message-im", "app-mention"])("in %s reaches the desk, fetched with the bot's token", async (name) => {
    const { door, slack, desk } = await opened(reading);
    bytes(slack, "1.jpg", PHOTO);
    await sendEvent(door, fixture(name, { event: { files: [photo(slack)], text: "<@UBOT> the new relief valve" } }));
    const { body } = await slack.call("chat.postMessage");
    expect(body["text"]).toBe(`got IMG_1.jpg 8 ${PHOTO.toString("hex")}`);
    expect(desk.asked[0]?.text).toBe("the new relief valve");
    expect((await slack.call("/files/1.jpg")).token).toBe("Bearer xoxb-invented");
  });

  test("without words is heard, and nothing is fetched that the desk does not read", async () => {
    const { door, slack, desk } = await opened();
    await sendEvent(door, shared([photo(slack)], { text: "" }));
    await slack.call("chat.postMessage");
    expect(desk.asked).toMatchObject([{ text: "", files: [{ name: "IMG_1.jpg", size_B: 8 }] }]);
    expect(slack.count("/files/1.jpg")).toBe(0);
  });

  test("that is told by its id alone is asked for", async () => {
    const { door, slack } = await opened(reading);
    bytes(slack, "1.jpg", PHOTO);
    slack.script("files.info", () => ({ body: { ok: true, file: photo(slack) } }));
    await sendEvent(door, shared([{ id: "F0PHOTO001", mode: "file_access", file_access: "check_file_info" }]));
    const { body } = await slack.call("chat.postMessage");
    expect(body["text"]).toContain(PHOTO.toString("hex"));
    expect((await slack.call("files.info")).body["file"]).toBe("F0PHOTO001");
  });

  test("is acknowledged before it is fetched", async () => {
    const { door, slack } = await opened(reading, { call_ms: 300 });
    slack.script("/files/1.jpg", () => ({ hangs: true }));
    expect((await sendEvent(door, shared([photo(slack)]))).status).toBe(200);
    await slack.call("/files/1.jpg");
  });

  test("that was deleted meanwhile is left out, and more than ten are not taken", async () => {
    const { door, slack, desk } = await opened();
    const many = Array.from({ length: 14 }, (_, i) => photo(slack, { id: `F${i}`, name: `${i}.jpg` }));
    await sendEvent(door, shared([{ id: "F9", mode: "tombstone" }, ...many]));
    await slack.call("chat.postMessage");
    expect(desk.asked[0]?.files?.map(({ name }) => name)).toEqual(Array.from({ length: 10 }, (_, i) => `${i}.jpg`));
  });
});

describe("a file is not taken", () => {
  const CASES: readonly (readonly [name: string, said: string, prepare: (slack: FakeSlack) => Json])[] = [
    [
      "from a host that is not Slack's",
      "not at Slack",
      (slack) => photo(slack, { url_private_download: "https://files.slack.com.evil.test/a" }),
    ],
    ["over http", "not at Slack", (slack) => photo(slack, { url_private_download: "http://files.slack.com/a" })],
    [
      "from an address with a name in it",
      "not at Slack",
      (slack) => photo(slack, { url_private_download: "https://a@files.slack.com/a" }),
    ],
    [
      "from an address that is none",
      "not at Slack",
      (slack) => photo(slack, { url_private_download: "files.slack.com/a" }),
    ],
    [
      "when Slack sends on to somewhere else",
      "not at Slack",
      (slack) => {
        slack.script("/files/1.jpg", () => ({ status: 302, headers: { location: "https://evil.test/a" } }));
        return photo(slack);
      },
    ],
    [
      "when it is sent on without end",
      "on and on",
      (slack) => {
        slack.script("/files/1.jpg", () => ({ status: 302, headers: { location: slack.fileUrl("1.jpg") } }));
        return photo(slack);
      },
    ],
    [
      "when Slack shows the page to sign in at",
      "a page instead",
      (slack) => {
        bytes(slack, "1.jpg", "<html>", { "content-type": "text/html; charset=utf-8" });
        return photo(slack);
      },
    ],
    [
      "when Slack refuses",
      "file 403",
      (slack) => {
        slack.script("/files/1.jpg", () => ({ status: 403 }));
        return photo(slack);
      },
    ],
    [
      "when Slack does not say where it is",
      "missing_scope",
      (slack) => {
        slack.script("files.info", () => ({ body: { ok: false, error: "missing_scope" } }));
        return { id: "F1", name: "IMG_1.jpg", file_access: "check_file_info" };
      },
    ],
    ["that says it is too large", "bytes", (slack) => photo(slack, { size: MOST_FILE_B + 1 })],
    [
      "that says it is small and is too large",
      "more than 10000000 bytes",
      (slack) => {
        bytes(slack, "1.jpg", Buffer.alloc(MOST_FILE_B + 1, 7));
        return photo(slack, { size: 10 });
      },
    ],
  ];
  test.each(CASES)("%s", async (_, said, prepare) => {
    const { door, slack } = await opened(reading);
    await sendEvent(door, shared([prepare(slack)]));
    const { body } = await slack.call("chat.postMessage");
    expect(body["text"]).toContain("IMG_1.jpg: ");
    expect(body["text"]).toContain(said);
  });

  test("and what was too large is told apart from what was not given", async () => {
    const file = { id: "F1", name: "a.jpg", url: "https://files.slack.com/a" };
    const answer =
      (body: Uint8Array<ArrayBuffer> | string, status = 200): SlackFetch =>
      async () =>
        new Response(body, { status });
    const large = fetchFile(answer(Buffer.alloc(MOST_FILE_B + 1)), file, "xoxb", undefined);
    await expect(large).rejects.toMatchObject({ code: "too_large" });
    await expect(fetchFile(answer("", 500), file, "xoxb", undefined)).rejects.toMatchObject({ code: "slack-refusal" });
    const whole = await fetchFile(answer(Buffer.alloc(MOST_FILE_B, 1)), file, "xoxb", undefined);
    expect(whole.byteLength).toBe(MOST_FILE_B);
  });

  test.each(["https://files.slack.com/a", "https://acme.enterprise.slack.com/a"])("but is from %s", async (url) => {
    const asked: string[] = [];
    const answer: SlackFetch = async (_, init) => {
      asked.push(JSON.stringify(init?.headers));
      return new Response("x");
    };
    await fetchFile(answer, { id: "F1", name: "a", url }, "xoxb-1", undefined);
    expect(asked).toEqual(['{"authorization":"Bearer xoxb-1"}']);
  });
});
