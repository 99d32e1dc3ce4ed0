import { expect, test } from "vitest";
import { RunningDeliveries } from "../../adapters/web/running-deliveries.ts";
import { openUploadShelf, type UploadShelf } from "../../adapters/web/upload-shelf.ts";
import { buildWebApp, type WebAppOptions } from "../../adapters/web/web-app.ts";
import { jpegWith } from "../support/picture-files.ts";
import { PEOPLE, ScriptedDesk } from "./scripted-desk.ts";

const HOST = "127.0.0.1:4100";
const MOST = 1000;
const LIMITS = { most_bytes: MOST, mostTogether_bytes: 2500, mostAtOnce: 2 };
const MESSAGE = { delivery: "delivery-1", conversation: "conversation-1", user: "wilma", text: "" };
const PHOTO = new Uint8Array(jpegWith([]));
const ORIGIN = { origin: `http://${HOST}` };

/** An app with a shelf for uploads, which is cleared away after the test. */
async function withApp(
  use: (app: ReturnType<typeof buildWebApp>, desk: ScriptedDesk, uploads: UploadShelf) => Promise<void>,
  options: Partial<WebAppOptions> = {},
): Promise<void> {
  const uploads = await openUploadShelf(LIMITS);
  const desk = new ScriptedDesk();
  const app = buildWebApp({
    desk,
    people: PEOPLE,
    company: { name: "Invented & Sons", isInvented: true },
    examples: { en: [], es: [] },
    languageOf: async () => "en",
    log: { error: () => {} },
    running: new RunningDeliveries(60_000),
    hosts: () => [HOST],
    heartbeat_ms: 60_000,
    uploads,
    ...options,
  });
  await use(app, desk, uploads).finally(() => uploads.close());
}
type App = ReturnType<typeof buildWebApp>;
type UploadBody = Uint8Array<ArrayBuffer> | ReadableStream<Uint8Array>;

async function upload(
  app: App,
  id: string,
  body: UploadBody,
  user = "wilma",
  headers: Record<string, string> = ORIGIN,
) {
  return await app.request(`http://${HOST}/uploads/${id}?user=${user}`, { method: "POST", body, headers });
}
async function say(app: App, body: object): Promise<Record<string, unknown>> {
  const headers = { ...ORIGIN, "content-type": "application/json" };
  const response = await app.request(`http://${HOST}/messages`, {
    method: "POST",
    headers,
    body: JSON.stringify(body),
  });
  const line = (await response.text()).trimEnd().split("\n").at(-1) ?? "";
  return JSON.parse(line);
}
const streamOf = (...pieces: readonly Uint8Array[]) =>
  new ReadableStream<Uint8Array>({
    start: (out) => {
      for (const piece of pieces) out.enqueue(piece);
      out.close();
    },
  });

test("a photo comes ahead of its message, and the desk reads what was sent", async () => {
  await withApp(async (app, desk) => {
    expect((await upload(app, "upload-one", PHOTO)).status).toBe(204);
    const answer = await say(app, { ...MESSAGE, files: [{ id: "upload-one", name: "panel.jpg" }] });
    expect(answer["kind"]).toBe("card");
    const [file] = desk.received[0]?.files ?? [];
    expect([file?.name, file?.size_B]).toEqual(["panel.jpg", PHOTO.length]);
    expect(Buffer.from((await file?.read()) ?? []).equals(PHOTO)).toBe(true);
  });
});

test("a message whose files are not here is not taken; it says which to send again", async () => {
  await withApp(async (app, desk) => {
    await upload(app, "upload-one", PHOTO);
    const files = ["upload-one", "upload-two"].map((id) => ({ id, name: "a.jpg" }));
    expect(await say(app, { ...MESSAGE, files })).toEqual({ kind: "missing", files: ["upload-two"] });
    expect(desk.received).toEqual([]);
    await upload(app, "upload-two", PHOTO);
    expect((await say(app, { ...MESSAGE, files }))["kind"]).toBe("card");
  });
});

test("a message that comes twice with its photo is worked on once", async () => {
  await withApp(async (app, desk) => {
    await upload(app, "upload-one", PHOTO);
    const message = { ...MESSAGE, files: [{ id: "upload-one", name: "a.jpg" }] };
    const first = await say(app, message);
    await upload(app, "upload-one", PHOTO);
    const second = await say(app, message);
    expect([first["isRepeat"], second["isRepeat"]]).toEqual([false, true]);
    expect(desk.worked).toHaveLength(1);
  });
});

test("what one person sent is not there for another", async () => {
  await withApp(async (app) => {
    await upload(app, "upload-one", PHOTO, "wilma");
    const answer = await say(app, { ...MESSAGE, user: "nadia", files: [{ id: "upload-one", name: "a.jpg" }] });
    expect(answer["kind"]).toBe("missing");
  });
});

const TOO_LARGE: readonly { readonly name: string; readonly body: () => UploadBody; readonly told?: string }[] = [
  { name: "one that says so before", body: () => new Uint8Array(MOST + 1), told: String(MOST + 1) },
  { name: "one that comes in pieces and says nothing", body: () => streamOf(new Uint8Array(MOST), new Uint8Array(1)) },
];
test.each(TOO_LARGE)("a file over the limit is refused with what to do: $name", async ({ body, told }) => {
  await withApp(async (app) => {
    const headers = { ...ORIGIN, ...(told !== undefined && { "content-length": told }) };
    const init = { method: "POST", body: body(), headers, duplex: "half" } as const;
    const response = await app.request(`http://${HOST}/uploads/upload-one?user=wilma`, init);
    expect(response.status).toBe(413);
    expect(await response.text()).toContain("Choose a smaller picture");
    const answer = await say(app, { ...MESSAGE, files: [{ id: "upload-one", name: "a.jpg" }] });
    expect(answer["kind"]).toBe("missing");
  });
});

test("a file of just the limit is taken", async () => {
  await withApp(async (app) => expect((await upload(app, "upload-one", new Uint8Array(MOST))).status).toBe(204));
});

const STRAY: readonly { readonly name: string; readonly id: string; readonly user: string; readonly status: number }[] =
  [
    { name: "an unknown person", id: "upload-one", user: "nobody", status: 400 },
    { name: "an id that leads elsewhere", id: "..%2F..%2Fetc", user: "wilma", status: 400 },
    { name: "an id of one letter", id: "a", user: "wilma", status: 400 },
  ];
test.each(STRAY)("takes no file for $name", async ({ id, user, status }) => {
  await withApp(async (app) => expect((await upload(app, id, PHOTO, user)).status).toBe(status));
});

test("takes no file from the page of another site", async () => {
  await withApp(async (app) => {
    expect((await upload(app, "upload-one", PHOTO, "wilma", { origin: "https://example.test" })).status).toBe(403);
    expect((await upload(app, "upload-one", PHOTO, "wilma", {})).status).toBe(403);
  });
});

test("eleven files are too many for one message, and it says how to go on", async () => {
  await withApp(async (app, desk) => {
    const files = Array.from({ length: 11 }, (_, at) => ({ id: `upload-${at}-x`, name: "a.jpg" }));
    const answer = await say(app, { ...MESSAGE, files });
    expect(answer).toMatchObject({ kind: "refused", text: expect.stringContaining("Send 10 first") });
    expect(desk.received).toEqual([]);
  });
});

test("the shelf holds so much and lets the oldest go", async () => {
  await withApp(async (_, __, uploads) => {
    for (const key of ["a", "b", "c"]) await uploads.take(key, streamOf(new Uint8Array(1000)));
    expect(["a", "b", "c"].map((key) => uploads.find(key) !== undefined)).toEqual([false, true, true]);
  });
});

test("more uploads at once than the shelf takes are told to come again", async () => {
  await withApp(async (app, _, uploads) => {
    const ends: (() => void)[] = [];
    const slow = () =>
      new ReadableStream<Uint8Array>({
        start: (out) => {
          ends.push(() => out.close());
        },
      });
    const held = [0, 1].map((at) => uploads.take(`held-${at}`, slow()));
    expect((await upload(app, "upload-one", PHOTO)).status).toBe(503);
    for (const end of ends) end();
    expect(await Promise.all(held)).toEqual(["taken", "taken"]);
    expect((await upload(app, "upload-one", PHOTO)).status).toBe(204);
  });
});

test("an upload that breaks off leaves nothing behind", async () => {
  await withApp(async (_, __, uploads) => {
    const broken = new ReadableStream<Uint8Array>({
      start: (out) => out.enqueue(PHOTO),
      pull: (out) => out.error(new Error("gone")),
    });
    await expect(uploads.take("a", broken)).rejects.toThrow("gone");
    expect(uploads.find("a")).toBe(undefined);
  });
});

const HASH = "a1".repeat(32);
const find: NonNullable<WebAppOptions["findFile"]> = async (caller, hash) => {
  if (hash !== HASH || caller.user !== "wilma") return undefined;
  return { bytes: PHOTO, type: "image/jpeg" };
};
async function fetchFile(app: App, query: Record<string, string>, hash = HASH): Promise<Response> {
  return await app.request(`http://${HOST}/files/${hash}?${new URLSearchParams(query)}`);
}

test("a kept photo is shown to who may have it, and may do nothing in the page", async () => {
  await withApp(
    async (app) => {
      const response = await fetchFile(app, { user: "wilma", name: "panel.jpg" });
      expect(response.status).toBe(200);
      expect(Buffer.from(await response.arrayBuffer()).equals(PHOTO)).toBe(true);
      const { headers } = response;
      expect(headers.get("content-type")).toBe("image/jpeg");
      expect(headers.get("content-disposition")).toMatch(/^inline; filename="panel.jpg"/);
      expect(headers.get("x-content-type-options")).toBe("nosniff");
      const policy = headers.get("content-security-policy")?.split("; ");
      expect(policy).toContain("sandbox");
      expect(policy).toContain("default-src 'none'");
      expect(headers.get("cross-origin-resource-policy")).toBe("same-origin");
      expect(headers.get("cache-control")).toContain("private");
    },
    { findFile: find },
  );
});

test.each([
  { name: "another person's workspace", query: { user: "nadia" }, hash: HASH },
  { name: "nobody", query: { user: "nobody" }, hash: HASH },
  { name: "no name at all", query: {}, hash: HASH },
  { name: "another hash", query: { user: "wilma" }, hash: "b2".repeat(32) },
])("a file is not there for $name", async ({ query, hash }) => {
  await withApp(async (app) => expect((await fetchFile(app, { ...query }, hash)).status).toBe(404), { findFile: find });
});

test.each([
  { type: "application/pdf", served: "application/pdf" },
  { type: "unknown", served: "application/octet-stream" },
  { type: "text/html", served: "application/octet-stream" },
  { type: "image/svg+xml", served: "application/octet-stream" },
])("bytes that are $type are only handed over, as $served", async ({ type, served }) => {
  const findFile = async () => ({ bytes: PHOTO, type });
  await withApp(
    async (app) => {
      const { headers } = await fetchFile(app, { user: "wilma", name: "panel.jpg" });
      expect(headers.get("content-type")).toBe(served);
      expect(headers.get("content-disposition")).toMatch(/^attachment;/);
    },
    { findFile },
  );
});

/** Expected by RFC 8187, 3.2.1 (which signs stand for themselves) and RFC 6266, 4.3. */
const NAMES: readonly { readonly name: string; readonly header: string }[] = [
  { name: "panel 1.jpg", header: `inline; filename="panel 1.jpg"; filename*=UTF-8''panel%201.jpg` },
  { name: "válvula.jpg", header: `inline; filename="v_lvula.jpg"; filename*=UTF-8''v%C3%A1lvula.jpg` },
  {
    name: `a"b\r\nX-Evil: 1.jpg`,
    header: `inline; filename="a_b__X-Evil_ 1.jpg"; filename*=UTF-8''a_b__X-Evil_%201.jpg`,
  },
  { name: "../../etc/passwd", header: `inline; filename="__.._etc_passwd"; filename*=UTF-8''__.._etc_passwd` },
  { name: "it's (1)*.jpg", header: `inline; filename="it's (1)_.jpg"; filename*=UTF-8''it%27s%20%281%29_.jpg` },
  { name: "", header: `inline; filename="file"; filename*=UTF-8''file` },
];
test.each(NAMES)("a file called $name is called safely", async ({ name, header }) => {
  await withApp(
    async (app) => {
      const response = await fetchFile(app, { user: "wilma", name });
      expect(response.headers.get("content-disposition")).toBe(header);
    },
    { findFile: find },
  );
});
