import type { Server } from "node:http";
import { createAdaptorServer } from "@hono/node-server";
import type { ChannelReader } from "../../src/desk/house-channels.ts";
import type { Desk } from "../../src/desk.ts";
import type { PageOptions } from "./page.ts";
import { createPictureShelf, type DrawSvg } from "./picture-shelf.ts";
import { RunningDeliveries } from "./running-deliveries.ts";
import type { FindFile } from "./send-file.ts";
import { openUploadShelf } from "./upload-shelf.ts";
import { buildWebApp, type WebAppOptions, type WebLog } from "./web-app.ts";
import type { FindLanguage, WebPerson } from "./web-people.ts";

export interface WebDoorOptions {
  readonly desk: Desk;
  /** `host` is a loopback address; port 0 takes any free one. */
  readonly settings: { readonly host: string; readonly port: number };
  readonly people: readonly WebPerson[];
  readonly log: WebLog;
  readonly languageOf?: FindLanguage;
  readonly company?: WebAppOptions["company"];
  readonly examples?: PageOptions["examples"];
  /** What to type to see the day's work, in each language; left out where nothing answers it. */
  readonly today?: PageOptions["today"];
  readonly pace?: Partial<Pace>;
  /** Draws a chart; without it a chart is its words and numbers. */
  readonly drawSvg?: DrawSvg;
  /** Photos and papers: how large one may be, and where kept ones are found. Without it none come in or go out. */
  readonly files?: { readonly most_bytes: number; readonly find: FindFile };
  /** The channels of the house; without them the page shows the conversation only. */
  readonly channels?: ChannelReader;
}
export interface WebDoor {
  /** One line that says where the chat is. */
  readonly describe: string;
  readonly url: string;
  close(): Promise<void>;
}

/** A few messages full of photos, from a few people at once. */
const UPLOADS = { mostTogether_bytes: 400_000_000, mostAtOnce: 20 } as const;
const LOOPBACK: Readonly<Record<string, string>> = { localhost: "127.0.0.1", "127.0.0.1": "127.0.0.1", "::1": "::1" };
/** How long things may take; tests make them shorter. */
interface Pace {
  /** A line is sent at least this often while work goes on; a browser gives up after three silent ones. */
  readonly heartbeat_ms: number;
  /** How long work goes on for a browser that lost its connection. */
  readonly grace_ms: number;
  /** How long work may go on when the door closes. */
  readonly drain_ms: number;
  /** How long a last card may take to be sent when the door closes. */
  readonly flush_ms: number;
}
const USUAL_PACE: Pace = { heartbeat_ms: 5000, grace_ms: 60_000, drain_ms: 5000, flush_ms: 1000 };
const EXAMPLES: readonly string[] = [
  "expansion 80 gal tank, 50F cold 140F hot 60 psi",
  "mix 135 to 120 with 50 in",
  "circuit 4500W at 208V 60 ft",
];

/** Opens the local web chat on a loopback address. Refuses any other address, and a port that is taken. */
export async function openWebDoor(options: WebDoorOptions): Promise<WebDoor> {
  const { host, port } = options.settings;
  const bound = LOOPBACK[host];
  if (bound === undefined)
    throw new Error(`The web chat opens only on this machine: set its host to 127.0.0.1 or ::1, not "${host}".`);
  const pace = { ...USUAL_PACE, ...options.pace };
  const running = new RunningDeliveries(pace.grace_ms);
  const { files, today, ...rest } = options;
  const uploads = files && (await openUploadShelf({ ...UPLOADS, most_bytes: files.most_bytes }));
  let hosts: readonly string[] = [];
  const app = buildWebApp({
    company: { name: "", isInvented: false },
    examples: { en: EXAMPLES, es: EXAMPLES },
    languageOf: async () => "en",
    ...rest,
    ...(today && { today }),
    ...(files && uploads && { uploads, findFile: files.find }),
    ...(options.drawSvg && { pictures: createPictureShelf(options.drawSvg) }),
    running,
    hosts: () => hosts,
    heartbeat_ms: pace.heartbeat_ms,
  });
  const server = createAdaptorServer({ fetch: app.fetch, overrideGlobalObjects: false }) as Server;
  const taken = await listen(server, bound, port).catch(async (error) => {
    await uploads?.close();
    throw error;
  });
  hosts = namesFor(bound, taken);
  const url = `http://${hosts[0]}/`;
  return {
    describe: `Web: open at ${url}`,
    url,
    close: () => close(server, running, pace).finally(() => uploads?.close()),
  };
}

function listen(server: Server, host: string, port: number): Promise<number> {
  return new Promise((resolve, reject) => {
    server.once("error", (error: NodeJS.ErrnoException) => {
      const isTaken = error.code === "EADDRINUSE";
      const advice = `Port ${port} is taken. Close the program that uses it, or set another port for the web chat.`;
      reject(isTaken ? new Error(advice, { cause: error }) : error);
    });
    server.listen(port, host, () => {
      const address = server.address();
      resolve(typeof address === "object" && address ? address.port : port);
    });
  });
}

/** The names a browser may use for this address; a browser leaves port 80 out. */
function namesFor(bound: string, port: number): readonly string[] {
  const names = bound === "::1" ? ["[::1]", "localhost"] : ["127.0.0.1", "localhost"];
  return names.flatMap((name) => (port === 80 ? [name, `${name}:80`] : [`${name}:${port}`]));
}

/** Takes nothing more, lets what goes on finish and be sent, and then drops what still hangs on. */
async function close(server: Server, running: RunningDeliveries, { drain_ms, flush_ms }: Pace): Promise<void> {
  const closed = new Promise<void>((resolve) => server.close(() => resolve()));
  await running.close(drain_ms);
  const drop = setTimeout(() => server.closeAllConnections(), flush_ms);
  await closed;
  clearTimeout(drop);
}
