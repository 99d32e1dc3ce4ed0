import { createHmac } from "node:crypto";
import { readFileSync } from "node:fs";
import { type Agent, request } from "node:http";
import type { DoorLog } from "../../adapters/slack/door-log.ts";
import { openSlackDoor, type SlackDoor } from "../../adapters/slack/open-slack-door.ts";
import type { ReadKept } from "../../adapters/slack/send-files.ts";
import type { DrawPng } from "../../adapters/slack/send-pictures.ts";
import type { Pace } from "../../adapters/slack/settings.ts";
import type { WalkOffer } from "../../adapters/slack/start-walk.ts";
import type { Desk, Inbound, Reply, ShowProgress } from "../../src/desk.ts";
import type { Card } from "../../src/messages/card.ts";
import { SAMPLE_CARDS } from "../support/sample-cards.ts";
import { type FakeSlack, openFakeSlack } from "./fake-slack.ts";

const SECRET = "0123456789abcdef0123456789abcdef";
export type Json = Record<string, unknown>;

/** A desk that notes what it was asked and answers as the test says. */
export interface FakeDesk extends Desk {
  readonly asked: Inbound[];
  answer: (inbound: Inbound, show: ShowProgress, signal: AbortSignal) => Card | Promise<Card>;
  isRepeat: boolean;
}
export const plainCard = (text: string): Card => ({
  title: "Answer",
  summary: text,
  blocks: [{ kind: "headline", text }],
});

export function fakeDesk(answer: FakeDesk["answer"] = (inbound) => plainCard(inbound.text)): FakeDesk {
  return {
    asked: [],
    answer,
    isRepeat: false,
    async receive(inbound, show, signal): Promise<Reply> {
      this.asked.push(inbound);
      return { card: await this.answer(inbound, show, signal), isRepeat: this.isRepeat };
    },
  };
}

export interface Harness {
  readonly door: SlackDoor;
  readonly slack: FakeSlack;
  readonly desk: Desk;
  readonly logged: { readonly level: string; readonly data: object; readonly message: string }[];
  close(): Promise<void>;
}

/** Invented walks, as the shortcut offers them. */
export const WALKS: WalkOffer = {
  language: "en",
  walks: [
    { label: "Survey <of> the site & more", say: "survey" },
    { label: "Start-up", say: "startup" },
  ],
};

/** Short waits, so that a test that shows lateness does not take long. */
const QUICK: Partial<Pace> = { progressAfter_ms: 0, progressEvery_ms: 1, drain_ms: 2_000, call_ms: 5_000 };

export async function openHarness(
  desk: Desk = fakeDesk(),
  pace: Partial<Pace> = {},
  drawPng?: DrawPng,
  readKept?: ReadKept,
): Promise<Harness> {
  const slack = await openFakeSlack();
  const logged: Harness["logged"] = [];
  const note = (level: string) => (data: object, message: string) => {
    logged.push({ level, data, message });
  };
  const log: DoorLog = { info: note("info"), warn: note("warn"), error: note("error") };
  const door = await openSlackDoor({
    desk,
    log,
    walksFor: async () => WALKS,
    ...(drawPng && { drawPng }),
    ...(readKept && { readKept }),
    settings: {
      signingSecret: SECRET,
      botToken: "xoxb-invented",
      host: "127.0.0.1",
      port: 0,
      apiUrl: slack.apiUrl,
      pace: { ...QUICK, ...pace },
    },
  });
  return {
    door,
    slack,
    desk,
    logged,
    async close() {
      await door.close();
      await slack.close();
    },
  };
}

export interface Posted {
  readonly status: number;
  readonly body: string;
  readonly headers: Readonly<Record<string, string | string[] | undefined>>;
}
export interface PostOptions {
  readonly headers?: Readonly<Record<string, string>>;
  readonly age_s?: number;
  readonly secret?: string;
  readonly agent?: Agent;
  readonly path?: string;
}

/** Now, as Slack's clock says it; the door reads the same one [s]. */
const clock_s = () => Math.floor(Date.now() / 1000);

export function sign(body: string, { age_s = 0, secret = SECRET }: PostOptions = {}): Record<string, string> {
  const time = String(clock_s() - age_s);
  const hash = createHmac("sha256", secret).update(`v0:${time}:${body}`).digest("hex");
  return { "x-slack-request-timestamp": time, "x-slack-signature": `v0=${hash}` };
}

/** Sends a body as it is. */
export function post(
  door: SlackDoor,
  body: string,
  headers: Readonly<Record<string, string>>,
  options: PostOptions = {},
): Promise<Posted> {
  const { agent, path = "/slack/events" } = options;
  return new Promise((resolve, reject) => {
    const sent = request(
      `${door.url}${path}`,
      { method: "POST", headers: { "content-length": Buffer.byteLength(body), ...headers }, ...(agent && { agent }) },
      (response) => {
        let text = "";
        response.setEncoding("utf8").on("data", (part) => {
          text += part;
        });
        response.on("end", () => resolve({ status: response.statusCode ?? 0, body: text, headers: response.headers }));
      },
    );
    sent.on("error", reject).end(body);
  });
}

const FORM = { "content-type": "application/x-www-form-urlencoded" };

/** A fixture with some of its fields changed. */
export function fixture(name: string, changes: Json = {}): Json {
  const text = readFileSync(new URL(`fixtures/${name}.json`, import.meta.url), "utf8");
  return merge(JSON.parse(text) as Json, changes);
}

function merge(base: Json, changes: Json): Json {
  const isObject = (value: unknown): value is Json =>
    typeof value === "object" && value !== null && !Array.isArray(value);
  const merged = { ...base };
  for (const [key, value] of Object.entries(changes)) {
    const old = merged[key];
    merged[key] = isObject(old) && isObject(value) ? merge(old, value) : value;
  }
  return merged;
}

export function sendEvent(door: SlackDoor, event: Json, options: PostOptions = {}): Promise<Posted> {
  const body = JSON.stringify(event);
  const headers = { "content-type": "application/json", ...sign(body, options), ...options.headers };
  return post(door, body, headers, options);
}

export function sendForm(door: SlackDoor, fields: Json, options: PostOptions = {}): Promise<Posted> {
  const body = new URLSearchParams(
    Object.entries(fields).map(([key, value]): [string, string] => [key, String(value)]),
  ).toString();
  return post(door, body, { ...FORM, ...sign(body, options), ...options.headers }, options);
}

/** Presses, forms and shortcuts: JSON in one field of a form. */
export function sendPayload(door: SlackDoor, payload: Json, options: PostOptions = {}): Promise<Posted> {
  return sendForm(door, { payload: JSON.stringify(payload) }, options);
}

export interface Opened extends Harness {
  readonly desk: FakeDesk;
}

/** Opens a door for one test at a time; call `closeOpened` after each. */
let last: Harness | undefined;
export async function opened(
  answer?: FakeDesk["answer"],
  pace: Partial<Pace> = {},
  drawPng?: DrawPng,
  readKept?: ReadKept,
): Promise<Opened> {
  const desk = fakeDesk(answer);
  last = await openHarness(desk, pace, drawPng, readKept);
  return { ...last, desk };
}
export async function closeOpened(): Promise<void> {
  await last?.close();
  last = undefined;
}

export function sample(name: string): Card {
  const card = SAMPLE_CARDS[name];
  if (card === undefined) throw new Error(`no sample card ${name}`);
  return card;
}

/** A slash command whose answers go to `/respond/slash`. */
export function slash(slack: FakeSlack, changes: Json = {}): Json {
  return fixture("slash-command", { response_url: slack.responseUrl("slash"), ...changes });
}

/** A press of a button whose answers go to `/respond/press`. */
export function press(slack: FakeSlack, name = "button-in-thread", changes: Json = {}): Json {
  return fixture(name, { response_url: slack.responseUrl("press"), ...changes });
}
