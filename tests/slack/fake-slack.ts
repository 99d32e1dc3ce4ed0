import { createServer, type IncomingMessage, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";

/** One call that the door made: of the Web API (`chat.postMessage`), of a response address (`/respond/1`), or of an upload. */
interface Call {
  readonly method: string;
  readonly token: string | undefined;
  readonly body: Readonly<Record<string, unknown>>;
}
interface Answer {
  readonly status?: number;
  readonly headers?: Readonly<Record<string, string>>;
  readonly body?: unknown;
  /** True: no answer at all. */
  readonly hangs?: boolean;
}
type Script = (call: Call, nth: number) => Answer | undefined;

/** Slack's side on the loopback address: records calls, answers as the real one does, or as a test says. */
export interface FakeSlack {
  readonly apiUrl: string;
  readonly calls: readonly Call[];
  responseUrl(name: string): string;
  /** Where a file that somebody sent stands; `script` says what is there. */
  fileUrl(name: string): string;
  /** Answers calls of a method so, while the script gives an answer. */
  script(method: string, script: Script): void;
  /** The call of this method with this number from 0, as soon as it comes. */
  call(method: string, nth?: number): Promise<Call>;
  count(method: string): number;
  close(): Promise<void>;
}

export async function openFakeSlack(): Promise<FakeSlack> {
  const calls: Call[] = [];
  const scripts = new Map<string, Script>();
  let waiters: (() => void)[] = [];
  const of = (method: string) => calls.filter((call) => call.method === method);
  const server = createServer(async (request, response) => {
    const call = await readCall(request);
    const nth = of(call.method).length;
    calls.push(call);
    const scripted = scripts.get(call.method)?.(call, nth);
    if (!scripted?.hangs) reply(response, scripted ?? usualAnswer(call, calls.length, request.headers.host));
    for (const wake of waiters) wake();
    waiters = [];
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const { port } = server.address() as AddressInfo;
  return {
    apiUrl: `http://127.0.0.1:${port}/api/`,
    calls,
    responseUrl: (name) => `http://127.0.0.1:${port}/respond/${name}`,
    fileUrl: (name) => `http://127.0.0.1:${port}/files/${name}`,
    script: (method, script) => {
      scripts.set(method, script);
    },
    count: (method) => of(method).length,
    async call(method, nth = 0) {
      for (;;) {
        const found = of(method)[nth];
        if (found) return found;
        await new Promise<void>((resolve) => waiters.push(resolve));
      }
    },
    async close() {
      server.closeAllConnections();
      await new Promise((resolve) => server.close(resolve));
    },
  };
}

async function readCall(request: IncomingMessage): Promise<Call> {
  const chunks: Buffer[] = [];
  for await (const chunk of request) chunks.push(chunk);
  const method = (request.url ?? "").replace(/^\/api\//, "");
  if (method.startsWith("/upload/"))
    return { method, token: request.headers.authorization, body: { bytes: Buffer.concat(chunks).toString("hex") } };
  const text = Buffer.concat(chunks).toString("utf8");
  const isJson = request.headers["content-type"]?.startsWith("application/json");
  const body = isJson ? (JSON.parse(text) as Record<string, unknown>) : readForm(text);
  return { method, token: request.headers.authorization, body };
}

/** The Web API client sends forms in which blocks and views are JSON. */
function readForm(text: string): Record<string, unknown> {
  const entries = [...new URLSearchParams(text)].map(([key, value]) => [key, readValue(value)]);
  return Object.fromEntries(entries) as Record<string, unknown>;
}

function readValue(value: string): unknown {
  return /^[[{]/.test(value) || value === "true" || value === "false" ? JSON.parse(value) : value;
}

function usualAnswer({ method, body }: Call, number: number, host = ""): Answer {
  if (method.startsWith("/respond/") || method.startsWith("/upload/")) return { body: "ok" };
  if (method === "files.getUploadURLExternal")
    return {
      body: { ok: true, upload_url: `http://${host}/upload/${number}`, file_id: `F${String(number).padStart(9, "0")}` },
    };
  return { body: { ok: true, ts: `1767229000.${String(number).padStart(6, "0")}`, channel: body["channel"] } };
}

function reply(response: ServerResponse, { status = 200, headers = {}, body = {} }: Answer): void {
  response.writeHead(status, { "content-type": "application/json", ...headers });
  if (body instanceof Uint8Array) return void response.end(body);
  response.end(typeof body === "string" ? body : JSON.stringify(body));
}
