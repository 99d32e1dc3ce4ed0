import type { Receiver } from "@slack/bolt";
import type { Desk } from "../../src/desk.ts";
import type { Installations } from "../../src/ports/installations.ts";
import { createChannelQueue } from "./channel-queue.ts";
import { type DoorLog, nameDoor } from "./door-log.ts";
import { Hearing } from "./hearing.ts";
import { HomeTab } from "./home-tab.ts";
import { createHttpReceiver } from "./http-receiver.ts";
import { createInstallPages } from "./installing.ts";
import { openApp } from "./open-app.ts";
import { listenForRemoval } from "./removal.ts";
import type { ReadKept } from "./send-files.ts";
import type { DrawPng } from "./send-pictures.ts";
import { checkSettings, type SlackSettings, USUAL_PACE } from "./settings.ts";
import { createSlackServer, EVENTS_PATH, HEALTH_PATH, INSTALL_PATH, type ServerSettings } from "./slack-server.ts";
import { createSocketLine, type SocketLine } from "./socket-line.ts";
import type { WalksFor } from "./start-walk.ts";
import { oneTeam, type TeamTokens } from "./team-tokens.ts";
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
  /** Needed where any workspace may install the app. */
  readonly installed?: Installed;
}
/** The organisations that have installed the app, and their tokens. */
export interface Installed {
  readonly installations: Installations;
  readonly tokens: TeamTokens;
}

/** Over https, and then with what the server needs; or over a socket. */
type Way = { readonly receiver: Receiver } & Pick<ServerSettings, "listener" | "isVerified">;

/** Opens the Slack door: requests in, cards out. Over https, Slack itself is not called before somebody speaks. */
export async function openSlackDoor(parts: SlackDoorSettings): Promise<SlackDoor> {
  const { desk, settings, log: houseLog, drawPng, readKept, walksFor = noWalks, installed } = parts;
  checkSettings(settings);
  const { signingSecret, botToken, appToken, oauth, apiUrl } = settings;
  const log = nameDoor(houseLog);
  const pace = { ...USUAL_PACE, ...settings.pace };
  const work = watchWork();
  const wait = waitUntilStopped(work.signal);
  const slack = { log, call_ms: pace.call_ms, ...(apiUrl !== undefined && { apiUrl }) };
  const line = appToken === undefined ? undefined : createSocketLine({ ...slack, appToken, wait });
  const { receiver, ...signed }: Way = line ? { receiver: line } : createHttpReceiver(signingSecret ?? "", log);
  const { installations } = installed ?? {};
  const app = openApp({
    receiver,
    tokens: tokensOf(botToken, installed),
    hearing: new Hearing({ desk, pace, log, work, ...(drawPng && { drawPng }), ...(readKept && { readKept }) }),
    home: new HomeTab({ desk, work, log }),
    work,
    walksFor,
    queue: createChannelQueue({ wait, jitter: Math.random }),
    pace,
    log,
    ...(apiUrl !== undefined && { apiUrl }),
  });
  listenForRemoval(app, oauth && installations, log);
  const server = createSlackServer({
    ...signed,
    pages: oauth && installations && createInstallPages({ ...slack, oauth, installations }),
    health: () => ({ door: "slack", working: work.count(), ...(line && { socket: line.state() }) }),
    log,
  });
  const url = await openBoth(line, () => server.listen(settings.port, settings.host));
  return {
    url,
    describe: describe(url, line !== undefined, oauth !== undefined),
    async close() {
      if (line) {
        await app.finish();
        await line.close();
      }
      await server.close();
      await work.drain(pace.drain_ms);
    },
  };
}

const noWalks: WalksFor = async () => ({ language: "en", walks: [] });

function tokensOf(botToken: string | undefined, installed: Installed | undefined): TeamTokens {
  if (botToken !== undefined) return oneTeam(botToken);
  if (installed === undefined) throw new Error("a Slack door for many workspaces needs to know who has installed it");
  return installed.tokens;
}

/** Listens, and connects where there is a socket; when one of the two fails, neither is left open. */
async function openBoth(line: SocketLine | undefined, listen: () => Promise<string>): Promise<string> {
  await line?.open();
  try {
    return await listen();
  } catch (error) {
    await line?.close();
    throw error;
  }
}

function describe(url: string, isSocket: boolean, isForMany: boolean): string {
  const way = isSocket ? "open over a socket" : `open at ${url}${EVENTS_PATH}`;
  return `Slack: ${way}, health at ${url}${HEALTH_PATH}${isForMany ? `, to install at ${url}${INSTALL_PATH}` : ""}`;
}
