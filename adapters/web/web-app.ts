import { randomBytes } from "node:crypto";
import { serveStatic } from "@hono/node-server/serve-static";
import { type Context, Hono } from "hono";
import { bodyLimit } from "hono/body-limit";
import {
  MOST_FILES,
  MOST_TEXT_CHARACTERS,
  type ReadWebMessage,
  readWebMessage,
  type WebMessage,
} from "../../src/boundary/web-message.ts";
import type { ChannelReader } from "../../src/desk/house-channels.ts";
import type { Desk, Inbound } from "../../src/desk.ts";
import type { Language } from "../../src/messages/language.ts";
import { type AnswerLine, streamAnswer } from "./answer-stream.ts";
import { DOOR_TEXTS } from "./door-texts.ts";
import { guardRequests, sendSecureHeaders } from "./guard-requests.ts";
import { type PageOptions, renderPage } from "./page.ts";
import type { PictureShelf } from "./picture-shelf.ts";
import type { RunningDeliveries } from "./running-deliveries.ts";
import { type FindFile, placeOfFile, sandboxFiles, sendFile } from "./send-file.ts";
import { type PostParts, sendPosts } from "./send-posts.ts";
import { findUploads, takeUpload } from "./take-upload.ts";
import type { UploadShelf } from "./upload-shelf.ts";
import { callerOf, type FindLanguage, type WebPerson } from "./web-people.ts";

/** Where faults are written; never what a person typed. */
export interface WebLog {
  error(data: object, message: string): void;
}

export interface WebAppOptions {
  readonly desk: Desk;
  readonly people: readonly WebPerson[];
  readonly company: PageOptions["company"] & PostParts["company"];
  readonly examples: PageOptions["examples"];
  readonly today?: NonNullable<PageOptions["today"]>;
  readonly languageOf: FindLanguage;
  readonly log: WebLog;
  readonly running: RunningDeliveries;
  /** The names under which this server may be asked for, the usual one first. */
  readonly hosts: () => readonly string[];
  /** A line is sent at least this often while work goes on. */
  readonly heartbeat_ms: number;
  /** Pictures of charts; without them a chart is its words and numbers. */
  readonly pictures?: PictureShelf;
  /** Where photos and papers wait for their message; without it none can be sent. */
  readonly uploads?: UploadShelf;
  /** Finds kept files; without it they are named and not handed over. */
  readonly findFile?: FindFile;
  /** The channels of the house; without them the page shows the conversation only. */
  readonly channels?: ChannelReader;
}

/** Largest body of a message [bytes]; a form of a hundred full fields fits. */
const MOST_BODY_BYTES = 256 * 1024;
const STATIC_FOLDER = new URL("./static", import.meta.url).pathname;

/** The web chat without its network: the page, its files, and one address that messages are sent to. */
export function buildWebApp(options: WebAppOptions): Hono {
  const app = new Hono();
  app.use("/files/*", sandboxFiles);
  app.use(sendSecureHeaders);
  app.use(guardRequests(options.hosts));
  app.use(async (c, next) => {
    await next();
    c.header("Cache-Control", "no-cache");
  });
  app.get("/", async (c) => c.html(renderPage(await describePage(options))));
  const keepName = (path: string) => path.replace(/^\/static/, "");
  app.get("/static/*", serveStatic({ root: STATIC_FOLDER, rewriteRequestPath: keepName }));
  app.get("/pictures/:name", (c) => sendPicture(c, options));
  app.get("/files/:hash", (c) => sendFile(c, options));
  app.get("/posts", (c) => sendPosts(c, { ...options, lookFor: lookFor(options) }));
  app.post("/uploads/:id", (c) => takeUpload(c, options));
  app.post("/messages", limitBody, (c) => takeMessage(c, options));
  app.notFound((c) => c.text("There is nothing here. The chat is at /.\n", 404));
  app.onError((error, c) => c.text(`${wordFault(options, error, "en")}\n`, 500));
  return app;
}

async function sendPicture(c: Context, { pictures }: WebAppOptions): Promise<Response> {
  const svg = await pictures?.draw(c.req.param("name") ?? "");
  if (svg === undefined) return c.text("That picture is no longer kept. Ask again to see it.\n", 404);
  return c.body(svg, 200, { "Content-Type": "image/svg+xml; charset=utf-8" });
}

const limitBody = bodyLimit({
  maxSize: MOST_BODY_BYTES,
  onError: (c) => refuse(c, 413, DOOR_TEXTS.en.refused.tooLong(MOST_TEXT_CHARACTERS)),
});

async function describePage(options: WebAppOptions): Promise<PageOptions> {
  const { people, languageOf, uploads, channels } = options;
  const known = people.map(async (person) => ({ person, language: await languageOf(callerOf(person)) }));
  return {
    ...options,
    people: await Promise.all(known),
    hasPosts: channels !== undefined,
    ...(uploads && { mostFile_bytes: uploads.most_bytes }),
  };
}

function lookFor({ pictures, findFile }: WebAppOptions): PostParts["lookFor"] {
  return (person) => ({
    ...(pictures && { pictureOf: pictures.placeOf }),
    ...(findFile && { fileOf: (file) => placeOfFile(person, file) }),
  });
}

async function takeMessage(c: Context, options: WebAppOptions): Promise<Response> {
  const read = await readBody(c);
  const user = read.ok ? read.message.user : read.user;
  const person = options.people.find((one) => one.user === user);
  const language = person ? await options.languageOf(callerOf(person)) : "en";
  const words = DOOR_TEXTS[language].refused;
  if (!read.ok) {
    const text = {
      malformed: words.malformed,
      empty: words.empty,
      "too-long": words.tooLong(MOST_TEXT_CHARACTERS),
      "too-many-files": words.tooManyFiles(MOST_FILES),
    };
    return refuse(c, 400, text[read.problem]);
  }
  if (!person) return refuse(c, 400, words.unknownPerson);
  const { here, missing } = findUploads(options.uploads, person, read.message.files ?? []);
  if (missing.length > 0) return sendLine(c, 200, { kind: "missing", files: missing });
  const inbound = { ...toInbound(read.message, person), ...(here.length > 0 && { files: here }) };
  const { desk } = options;
  const running = options.running.find(inbound.delivery, (show, signal) => desk.receive(inbound, show, signal));
  return streamAnswer(c, running, {
    delivery: read.message.delivery,
    language: () => options.languageOf(callerOf(person)),
    wordFault: (error, spoken) => wordFault(options, error, spoken),
    heartbeat_ms: options.heartbeat_ms,
    look: lookFor(options)(person),
  });
}

async function readBody(c: Context): Promise<ReadWebMessage> {
  const isJson = /^application\/json\b/i.test(c.req.header("content-type") ?? "");
  if (!isJson) return { ok: false, problem: "malformed" };
  const body: unknown = await c.req.json().catch(() => undefined);
  return readWebMessage(body);
}

/** The browser's ids are scoped by the person, so that nobody is handed the answer to somebody else's message. */
function toInbound(message: WebMessage, person: WebPerson): Inbound {
  const { text, aim, form } = message;
  return {
    caller: callerOf(person),
    conversation: `web:${message.conversation}`,
    delivery: `web:${person.user}:${message.delivery}`,
    text,
    ...(aim && { aim }),
    ...(form && { form }),
  };
}

function refuse(c: Context, status: 400 | 413, text: string): Response {
  return sendLine(c, status, { kind: "refused", text });
}

function sendLine(c: Context, status: 200 | 400 | 413, line: AnswerLine): Response {
  return c.body(`${JSON.stringify(line)}\n`, status, { "Content-Type": "application/x-ndjson; charset=utf-8" });
}

/** A short id joins what the person reads with what the log holds. */
function wordFault({ log }: WebAppOptions, error: unknown, language: Language): string {
  const id = randomBytes(4).toString("hex");
  log.error({ door: "web", id, error }, "a message was not answered");
  return DOOR_TEXTS[language].refused.fault(id);
}
