import { createServer, type IncomingMessage, type Server, type ServerResponse } from "node:http";
import type { DoorLog } from "./door-log.ts";
import { guardRequest } from "./request-guard.ts";
import { rememberSignatures } from "./signature-memory.ts";

type Listener = (request: IncomingMessage, response: ServerResponse) => void;

export interface ServerSettings {
  /** Bolt's listener; throws when the request is not for it. Left out where Slack is listened to over a socket. */
  readonly listener?: Listener | undefined;
  /** Of the pages by which the app is installed. */
  readonly pages?: Listener | undefined;
  /** True once Bolt found the request's signature right. */
  readonly isVerified?: (request: IncomingMessage) => boolean;
  /** What the health route tells. */
  readonly health: () => object;
  readonly log: DoorLog;
}
export interface SlackServer {
  listen(port: number, host: string): Promise<string>;
  /** Takes no more requests and lets go of idle connections. */
  close(): Promise<void>;
}

/** Where Slack sends everything: events, commands, presses, forms. */
export const EVENTS_PATH = "/slack/events";
export const HEALTH_PATH = "/slack/health";
/** Where an organisation installs the app, and where Slack sends the browser back to. */
export const INSTALL_PATH = "/slack/install";
export const REDIRECT_PATH = "/slack/oauth_redirect";
/** Slack's own limit for an answer is 3 s; a slower request comes from somebody else [ms]. */
const SLOWEST_REQUEST_ms = 15_000;
const IDLE_CHECK_ms = 20;

/** The HTTP server in front of Bolt: guard, health, graceful end. */
export function createSlackServer({ listener, pages, isVerified, health, log }: ServerSettings): SlackServer {
  const memory = rememberSignatures(Date.now);
  let isClosing = false;

  const serve = (request: IncomingMessage, response: ServerResponse) => {
    if (isClosing) return answer(response, 503, { connection: "close" });
    if (request.method === "GET" && request.url === HEALTH_PATH) return tell(response, health());
    const listen = request.method === "GET" ? pages : listener;
    if (listen === undefined) return answer(response, 404);
    const guarded = guardRequest(request.headers, memory, Date.now());
    if (guarded.kind === "refused") {
      log.warn({ because: guarded.because }, "a request was refused");
      return answer(response, 401, { "x-slack-no-retry": "1" });
    }
    if (guarded.kind === "signed")
      response.once("close", () => {
        const isDone = isVerified?.(request) === true && response.statusCode < 500;
        if (isDone) memory.accept(guarded.signature);
        else memory.forget(guarded.signature);
      });
    try {
      listen(request, response);
    } catch {
      answer(response, 404);
    }
  };
  const server = createServer({ requestTimeout: SLOWEST_REQUEST_ms, headersTimeout: SLOWEST_REQUEST_ms }, serve);

  return {
    listen: (port, host) => listen(server, port, host),
    close() {
      isClosing = true;
      return closeGently(server);
    },
  };
}

function answer(response: ServerResponse, status: number, headers: Readonly<Record<string, string>> = {}): void {
  response.writeHead(status, headers);
  response.end();
}

function tell(response: ServerResponse, body: object): void {
  response.writeHead(200, { "content-type": "application/json" });
  response.end(JSON.stringify(body));
}

async function listen(server: Server, port: number, host: string): Promise<string> {
  await new Promise<void>((resolve, reject) => {
    server.once("error", reject);
    server.listen(port, host, () => {
      server.off("error", reject);
      resolve();
    });
  });
  const address = server.address();
  const taken = typeof address === "object" && address !== null ? address.port : port;
  return `http://${host.includes(":") ? `[${host}]` : host}:${taken}`;
}

/** `close` alone waits for clients that keep their connection open, for as long as they like. */
async function closeGently(server: Server): Promise<void> {
  const closed = new Promise<void>((resolve) => server.close(() => resolve()));
  const tick = setInterval(() => server.closeIdleConnections(), IDLE_CHECK_ms);
  server.closeIdleConnections();
  await closed;
  clearInterval(tick);
}
