import { connect, type Socket } from "node:net";
import { text } from "node:stream/consumers";
import { afterEach, expect, test } from "vitest";
import type { WebDoor } from "../../adapters/web/open-web-door.ts";
import { openTestDoor, ScriptedDesk } from "./scripted-desk.ts";

const opened: WebDoor[] = [];
afterEach(async () => {
  await Promise.all(opened.splice(0).map((door) => door.close()));
});
async function open(desk = new ScriptedDesk(), host = "127.0.0.1"): Promise<WebDoor & { readonly port: number }> {
  const door = await openTestDoor(desk, { settings: { host, port: 0 } });
  opened.push(door);
  return { ...door, port: Number(new URL(door.url).port) };
}

/** Sends bytes as they are, so that no client tidies the path or the headers. */
async function sendRaw(port: number, request: string): Promise<string> {
  const socket = connect(port, "127.0.0.1");
  socket.end(request);
  return await text(socket);
}
const rawGet = (port: number, path: string) =>
  sendRaw(port, `GET ${path} HTTP/1.1\r\nHost: 127.0.0.1:${port}\r\nConnection: close\r\n\r\n`);

function message(port: number, delivery = "delivery-1"): string {
  const body = JSON.stringify({ delivery, conversation: "conversation-1", user: "wilma", text: "mix" });
  const lines = [
    "POST /messages HTTP/1.1",
    `Host: 127.0.0.1:${port}`,
    `Origin: http://127.0.0.1:${port}`,
    "Content-Type: application/json",
    `Content-Length: ${Buffer.byteLength(body)}`,
    "Connection: close",
  ];
  return `${lines.join("\r\n")}\r\n\r\n${body}`;
}

test("says where the chat is", async () => {
  const door = await open();
  expect(door.describe).toBe(`Web: open at http://127.0.0.1:${door.port}/`);
  expect((await fetch(door.url)).status).toBe(200);
});

test("answers under localhost, too", async () => {
  const { port } = await open(new ScriptedDesk(), "localhost");
  expect(await sendRaw(port, `GET / HTTP/1.1\r\nHost: localhost:${port}\r\nConnection: close\r\n\r\n`)).toMatch(
    /^HTTP\/1.1 200/,
  );
});

const ELSEWHERE = ["0.0.0.0", "::", "192.0.2.1", "example.test", ""];
test.each(ELSEWHERE)("refuses to open on %o, which others can reach", async (host) => {
  await expect(openTestDoor(new ScriptedDesk(), { settings: { host, port: 0 } })).rejects.toThrow(
    /only on this machine/,
  );
});

test("a port that is taken is named with what to do", async () => {
  const { port } = await open();
  const settings = { host: "127.0.0.1", port };
  await expect(openTestDoor(new ScriptedDesk(), { settings })).rejects.toThrow(`Port ${port} is taken`);
});

const TRAVERSALS = [
  "/static/../web-app.ts",
  "/static/../../../package.json",
  "/static/%2e%2e/web-app.ts",
  "/static/..%2fweb-app.ts",
  "/static/%252e%252e/web-app.ts",
  "/static/..\\web-app.ts",
  "/static//etc/passwd",
  "/static/%00app.js",
  "/static/app.js%00.css",
  "/static/",
  "/static",
  "/web-app.ts",
  "/package.json",
];
test.each(TRAVERSALS)("gives no file for %s", async (path) => {
  const { port } = await open();
  const answer = await rawGet(port, path);
  expect(answer).toMatch(/^HTTP\/1.1 40[04] /);
  expect(answer).not.toMatch(/import|root:|"name"/);
});

const STRANGE: readonly { readonly name: string; readonly request: (port: number) => string }[] = [
  { name: "no host", request: () => "GET / HTTP/1.1\r\nConnection: close\r\n\r\n" },
  { name: "another host", request: () => "GET / HTTP/1.1\r\nHost: example.test\r\nConnection: close\r\n\r\n" },
  { name: "another port", request: () => "GET / HTTP/1.1\r\nHost: 127.0.0.1:1\r\nConnection: close\r\n\r\n" },
  {
    name: "an address of another host in its first line",
    request: (port) => `GET http://example.test/ HTTP/1.1\r\nHost: 127.0.0.1:${port}\r\nConnection: close\r\n\r\n`,
  },
  {
    name: "another host that forwards for ours",
    request: (port) =>
      `GET / HTTP/1.1\r\nHost: example.test\r\nX-Forwarded-Host: 127.0.0.1:${port}\r\nConnection: close\r\n\r\n`,
  },
  { name: "no version", request: () => "GET /\r\n\r\n" },
];
test.each(STRANGE)("gives no page to a request with $name", async ({ request }) => {
  const { port } = await open();
  const answer = await sendRaw(port, request(port));
  expect(answer).toMatch(/^HTTP\/1.1 40[03] /);
  expect(answer).not.toContain("<html");
});

test("stops reading a body that goes on for ever", async () => {
  const desk = new ScriptedDesk();
  const { port } = await open(desk);
  const chunk = `${(65_536).toString(16)}\r\n${"x".repeat(65_536)}\r\n`;
  const head = `POST /messages HTTP/1.1\r\nHost: 127.0.0.1:${port}\r\nOrigin: http://127.0.0.1:${port}\r\nContent-Type: application/json\r\nTransfer-Encoding: chunked\r\n\r\n`;
  const socket = connect(port, "127.0.0.1");
  socket.on("error", () => {});
  const answer = new Promise<string>((resolve) => socket.once("data", (data) => resolve(String(data))));
  socket.write(head + chunk.repeat(5));
  expect(await answer).toMatch(/^HTTP\/1.1 413 /);
  socket.destroy();
  expect(desk.received).toEqual([]);
});

/** Sends a message and waits for the first line of its answer, while the connection stays open. */
async function startMessage(port: number): Promise<{ readonly socket: Socket; readonly heard: () => string }> {
  const socket = connect(port, "127.0.0.1");
  let heard = "";
  socket.on("data", (data) => {
    heard += String(data);
  });
  socket.write(message(port));
  await expect.poll(() => heard, { interval: 5 }).toContain(`{"kind":"working"}`);
  return { socket, heard: () => heard };
}

test("a dropped connection is sent again, worked on once and answered", async () => {
  const desk = new ScriptedDesk();
  const { port } = await open(desk);
  desk.hold();
  const dropped = await startMessage(port);
  dropped.socket.destroy();
  const again = await startMessage(port);
  expect(desk.received.length).toBe(1);
  desk.release();
  await expect.poll(again.heard, { interval: 5 }).toContain("You said: mix");
  again.socket.destroy();
  expect(desk.worked.length).toBe(1);
});

test("a connection that drops after the answer was made gets the same card on the next try", async () => {
  const desk = new ScriptedDesk();
  const { port } = await open(desk);
  const first = await sendRaw(port, message(port));
  const second = await sendRaw(port, message(port));
  expect(first).toContain(`"isRepeat":false`);
  expect(second).toContain(`"isRepeat":true`);
  expect(desk.worked.length).toBe(1);
});

test("closing lets work finish and sends its card", async () => {
  const desk = new ScriptedDesk();
  const door = await openTestDoor(desk, { pace: { drain_ms: 60_000, flush_ms: 60_000 } });
  desk.hold();
  const started = await startMessage(Number(new URL(door.url).port));
  const ended = new Promise((resolve) => started.socket.on("close", resolve));
  const closed = door.close();
  await expect(fetch(door.url)).rejects.toThrow();
  desk.release();
  await Promise.all([closed, ended]);
  expect(started.heard()).toContain("You said: mix");
});

test("closing stops work, drops connections and frees the port", async () => {
  const desk = new ScriptedDesk();
  const door = await openTestDoor(desk);
  const port = Number(new URL(door.url).port);
  desk.hold();
  const response = await fetch(`${door.url}messages`, {
    method: "POST",
    headers: { "content-type": "application/json", origin: door.url.slice(0, -1) },
    body: JSON.stringify({ delivery: "delivery-1", conversation: "conversation-1", user: "wilma", text: "mix" }),
  });
  desk.signal?.addEventListener("abort", () => desk.release());
  const rest = response.text().catch(() => "dropped");
  await door.close();
  await rest;
  expect(desk.signal?.aborted).toBe(true);
  await expect(fetch(door.url)).rejects.toThrow();
  opened.push(await openTestDoor(desk, { settings: { host: "127.0.0.1", port } }));
});
