import { once } from "node:events";
import type { Server } from "node:http";
import type { AddressInfo } from "node:net";
import express, { type ErrorRequestHandler, type Express } from "express";
import type { Desk } from "../../src/desk.ts";
import type { ConversationReferences } from "../../src/ports/conversation-references.ts";
import type { Caller } from "../../src/ports/store.ts";
import type { StandIns } from "./botbuilder/connect.ts";
import { BotbuilderGateway } from "./botbuilder/gateway.ts";
import { createFetchFile, type WebFetch } from "./fetch-file.ts";
import { createReferenceKeeper } from "./keep-references.ts";
import type { DrawPngWithin } from "./picture-message.ts";
import { DONE, type DoorLog, type Pause } from "./port.ts";
import { createService } from "./serve-event.ts";
import { checkSettings, type TeamsSettings } from "./settings.ts";

/** The path that bots are registered with by convention. */
const MESSAGES_PATH = "/api/messages";
/** Largest request that is read: more than the largest message of Teams. Our own choice. */
const MOST_REQUEST_BYTES = "256kb";
/** Time for the last answers to leave when the door closes. Our own choice. */
const LAST_ANSWERS_ms = 1_000;

/** What stands in for the platform's own services is left out but in tests. */
export interface TeamsDoorParts extends StandIns {
  readonly desk: Desk;
  readonly settings: TeamsSettings;
  readonly log: DoorLog;
  /** Draws charts; without it a chart is its words and numbers. */
  readonly drawPng?: DrawPngWithin;
  /** Where it is noted which conversations posts may go to; without it none are. */
  readonly references?: ConversationReferences;
  /** A kept file of the caller's workspace; without it no files are handed over. */
  readonly readFile?: (caller: Caller, hash: string) => Promise<Uint8Array | undefined>;
  readonly webFetch?: WebFetch;
  readonly pause?: Pause;
  readonly random?: () => number;
}

export interface TeamsDoor {
  /** One line: where the door is. */
  readonly describe: string;
  /** Where the platform must send, through whatever makes this address public. */
  readonly url: string;
  close(): Promise<void>;
}

/**
 * Opens the Teams door.
 * @returns when it listens; fails with clear sentences when the settings would leave it open to strangers
 */
export async function openTeamsDoor(parts: TeamsDoorParts): Promise<TeamsDoor> {
  const { desk, log, readFile, pause = waitFor, random = Math.random, webFetch = fetch } = parts;
  const settings = checkSettings(parts.settings);
  const patience = { pause, random, now_ms: Date.now };
  const serve = createService({ desk, log, pause, readFile, webFetch, drawPng: parts.drawPng });
  const keeper = createReferenceKeeper(parts.references, log);
  const { credentials, openIdMetadataUrl } = parts;
  const gateway = new BotbuilderGateway({
    settings,
    serve,
    log,
    patience,
    pause,
    credentials,
    openIdMetadataUrl,
    notice: keeper.hear,
    fetchFile: (token) => createFetchFile(token, webFetch),
  });
  const server: Server = hostGateway(gateway, () => server.listening).listen(settings.port, settings.host);
  try {
    await once(server, "listening");
  } catch (error) {
    await gateway.close();
    throw error;
  }
  const url = `http://${settings.host}:${portOf(server.address())}${MESSAGES_PATH}`;
  return {
    describe: `Teams: open at ${url}`,
    url,
    close: async () => {
      const closed = once(server, "close");
      const answered = new AbortController();
      server.close();
      await gateway.close();
      await keeper.settled();
      await Promise.race([closed, pause(LAST_ANSWERS_ms, answered.signal)]);
      answered.abort(DONE);
      server.closeAllConnections();
      await closed;
    },
  };
}

function hostGateway(gateway: BotbuilderGateway, isListening: () => boolean): Express {
  const app = express();
  app.disable("x-powered-by");
  app.disable("etag");
  app.post(MESSAGES_PATH, express.json({ limit: MOST_REQUEST_BYTES }), async (request, response) => {
    const { status, body } = await gateway.receive(request.headers.authorization ?? "", request.body);
    response.status(status);
    // A connection that is kept alive would keep a closing door open.
    if (!isListening()) response.set("connection", "close");
    if (body === undefined) response.end();
    else response.json(body);
  });
  app.all(MESSAGES_PATH, (_, response) => {
    response.status(405).end();
  });
  app.use((_, response) => {
    response.status(404).end();
  });
  app.use(refuseSilently);
  return app;
}

/** What could not be read is refused with its status and nothing else. */
const refuseSilently: ErrorRequestHandler = (error, _request, response, _next) => {
  const status: unknown = error instanceof Error && "status" in error ? error.status : undefined;
  response.status(typeof status === "number" ? status : 500).end();
};

function portOf(address: AddressInfo | string | null): number {
  return typeof address === "object" && address !== null ? address.port : 0;
}

/** A timer that ends without an error when it is cut short, because one is cut short for nearly every message. */
function waitFor(ms: number, signal: AbortSignal): Promise<void> {
  if (signal.aborted) return Promise.resolve();
  return new Promise((resolve) => {
    const finish = () => {
      clearTimeout(timer);
      signal.removeEventListener("abort", finish);
      resolve();
    };
    const timer = setTimeout(finish, ms);
    signal.addEventListener("abort", finish);
  });
}
