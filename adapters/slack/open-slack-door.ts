import type { IncomingMessage } from "node:http";
import { AuthorizationError, HTTPReceiver } from "@slack/bolt";
import type { Desk } from "../../src/desk.ts";
import { createChannelQueue } from "./channel-queue.ts";
import { type DoorLog, nameDoor, toBoltLogger } from "./door-log.ts";
import { Hearing } from "./hearing.ts";
import { HomeTab } from "./home-tab.ts";
import { openApp, type TeamTokens } from "./open-app.ts";
import type { ReadKept } from "./send-files.ts";
import type { DrawPng } from "./send-pictures.ts";
import { checkSettings, type SlackSettings, USUAL_PACE } from "./settings.ts";
import { createSlackServer, EVENTS_PATH, HEALTH_PATH } from "./slack-server.ts";
import type { WalksFor } from "./start-walk.ts";
import { waitUntilStopped } from "./wait.ts";
import { watchWork } from "./work-in-flight.ts";

export interface SlackDoor {
  /** One line: where the door is. */
  readonly describe: string;
  /** Where it listens, such as `http://127.0.0.1:3001`. */
  readonly url: string;
  /** Takes nothing more, finishes what is going on, and ends. */
  close(): Promise<void>;
}

export interface SlackDoorSettings {
  readonly desk: Desk;
  readonly settings: SlackSettings;
  readonly log: DoorLog;
  /** Draws charts; without it a chart is its words and numbers. */
  readonly drawPng?: DrawPng;
  /** Reads the photos and papers that an answer hands over; without it they are only named. */
  readonly readKept?: ReadKept;
  /** What the shortcut that starts a walk offers; without it, nothing. */
  readonly walksFor?: WalksFor;
}

/** A press of a button carries its whole message along, some 100,000 bytes at most: own limit [bytes]. */
const MOST_BODY_bytes = 1_000_000;

/** Opens the Slack door: signed requests in, cards out. Slack itself is not called before somebody speaks. */
export async function openSlackDoor(parts: SlackDoorSettings): Promise<SlackDoor> {
  const { desk, settings, log: houseLog, drawPng, readKept, walksFor = noWalks } = parts;
  checkSettings(settings);
  const log = nameDoor(houseLog);
  const pace = { ...USUAL_PACE, ...settings.pace };
  const work = watchWork();
  const verified = new WeakSet<IncomingMessage>();
  const receiver = new HTTPReceiver({
    signingSecret: settings.signingSecret,
    endpoints: EVENTS_PATH,
    bodyLimit: MOST_BODY_bytes,
    logger: toBoltLogger(log),
    // Bolt asks for these after it has found the signature right, and only then.
    customPropertiesExtractor: (request) => {
      verified.add(request);
      return {};
    },
    processEventErrorHandler: async ({ error, response }) => {
      log.error({ error }, "a request failed");
      if (!response.headersSent) response.writeHead(error instanceof AuthorizationError ? 401 : 500).end();
      return true;
    },
  });
  openApp({
    receiver,
    tokens: oneTeam(settings.botToken),
    hearing: new Hearing({ desk, pace, log, work, ...(drawPng && { drawPng }), ...(readKept && { readKept }) }),
    home: new HomeTab({ desk, work, log }),
    work,
    walksFor,
    queue: createChannelQueue({ wait: waitUntilStopped(work.signal), jitter: Math.random }),
    pace,
    log,
    ...(settings.apiUrl !== undefined && { apiUrl: settings.apiUrl }),
  });
  const server = createSlackServer({
    listener: receiver.requestListener,
    isVerified: (request) => verified.has(request),
    health: () => ({ door: "slack", working: work.count() }),
    log,
  });
  const url = await server.listen(settings.port, settings.host);
  return {
    url,
    describe: `Slack: open at ${url}${EVENTS_PATH}, health at ${url}${HEALTH_PATH}`,
    async close() {
      await server.close();
      await work.drain(pace.drain_ms);
    },
  };
}

const noWalks: WalksFor = async () => ({ language: "en", walks: [] });

/** The token of an app that is installed in one organisation, from the settings. */
function oneTeam(botToken: string): TeamTokens {
  return { find: async () => botToken };
}
