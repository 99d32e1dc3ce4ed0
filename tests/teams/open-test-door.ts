import type { WebFetch } from "../../adapters/teams/fetch-file.ts";
import { openTeamsDoor } from "../../adapters/teams/open-teams-door.ts";
import type { DrawPngWithin } from "../../adapters/teams/picture-message.ts";
import type { DoorLog, Pause } from "../../adapters/teams/port.ts";
import type { Desk, Inbound, Reply } from "../../src/desk.ts";
import type { Card } from "../../src/messages/card.ts";
import type { ConversationReferences } from "../../src/ports/conversation-references.ts";
import type { Caller } from "../../src/ports/store.ts";
import { APP_ID, FakeCredentials, FakePlatform, messageActivity, signToken, TENANT_ID } from "./fake-platform.ts";

export const SETTINGS = {
  appId: APP_ID,
  tenantId: TENANT_ID,
  password: "password-of-the-tests",
  host: "127.0.0.1",
  port: 0,
} as const;

interface LoggedLine {
  readonly level: "info" | "warn" | "error";
  readonly data: object;
  readonly text: string;
}

/** A desk that says back what it was told, or whatever a test wants. */
export class FakeDesk implements Desk {
  readonly received: Inbound[] = [];
  answer: Desk["receive"] = async (inbound) => ({ card: echoCard(inbound.text), isRepeat: false });

  async receive(...parts: Parameters<Desk["receive"]>): Promise<Reply> {
    this.received.push(parts[0]);
    return await this.answer(...parts);
  }
}

export function echoCard(text: string): Card {
  return { title: "Echo", summary: `echo ${text}`, blocks: [{ kind: "headline", text: `echo ${text}` }] };
}

/** Waits only for the signal: nothing happens by the clock. */
export const pauseForever: Pause = (_, signal) =>
  new Promise((resolve) => {
    if (signal.aborted) resolve();
    else signal.addEventListener("abort", () => resolve(), { once: true });
  });

export interface TestDoor {
  readonly platform: FakePlatform;
  readonly desk: FakeDesk;
  readonly log: readonly LoggedLine[];
  readonly url: string;
  /** Posts an activity with a good token, or with these headers. */
  post(
    activity: unknown,
    headers?: Readonly<Record<string, string>>,
  ): Promise<{ status: number; body: string; headers: Headers }>;
  /** Posts a message in the personal chat. */
  say(changes?: object): Promise<{ status: number; body: string }>;
  close(): Promise<void>;
}

export interface TestDoorOptions {
  readonly desk?: Desk;
  readonly settings?: object;
  readonly pause?: Pause;
  readonly random?: () => number;
  readonly endorsements?: readonly string[];
  readonly platform?: FakePlatform;
  readonly drawPng?: DrawPngWithin;
  readonly references?: ConversationReferences;
  readonly readFile?: (caller: Caller, hash: string) => Promise<Uint8Array | undefined>;
  readonly webFetch?: WebFetch;
}

/** The real door with the real library, between a fake platform and a fake desk. */
export async function openTestDoor(options: TestDoorOptions = {}): Promise<TestDoor> {
  const platform = options.platform ?? (await FakePlatform.start(options.endorsements));
  const desk = new FakeDesk();
  const log: LoggedLine[] = [];
  const write = (level: LoggedLine["level"]) => (data: object, text: string) => log.push({ level, data, text });
  const doorLog: DoorLog = { info: write("info"), warn: write("warn"), error: write("error") };
  const door = await openTeamsDoor({
    desk: options.desk ?? desk,
    settings: { ...SETTINGS, ...options.settings },
    log: doorLog,
    credentials: new FakeCredentials(),
    openIdMetadataUrl: platform.openIdMetadataUrl,
    pause: options.pause ?? pauseForever,
    ...(options.random && { random: options.random }),
    ...(options.drawPng && { drawPng: options.drawPng }),
    ...(options.references && { references: options.references }),
    ...(options.readFile && { readFile: options.readFile }),
    ...(options.webFetch && { webFetch: options.webFetch }),
  });
  const post: TestDoor["post"] = async (activity, headers) => {
    const response = await fetch(door.url, {
      method: "POST",
      headers: {
        "content-type": "application/json",
        ...(headers ?? { authorization: `Bearer ${signToken(platform)}` }),
      },
      body: typeof activity === "string" ? activity : JSON.stringify(activity),
    });
    return { status: response.status, body: await response.text(), headers: response.headers };
  };
  return {
    platform,
    desk,
    log,
    url: door.url,
    post,
    say: (changes = {}) => post(messageActivity(platform, changes)),
    close: async () => {
      await door.close();
      if (options.platform === undefined) await platform.stop();
    },
  };
}
