import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type HouseStore, openStore } from "../../adapters/database/open-store.ts";
import { openSlackDoor, type SlackDoor } from "../../adapters/slack/open-slack-door.ts";
import { createTeamTokens, type TeamTokens } from "../../adapters/slack/team-tokens.ts";
import { renewWith } from "../../adapters/slack/token-calls.ts";
import { BOOKS } from "../support/sample-books.ts";
import { type FakeSlack, openFakeSlack } from "./fake-slack.ts";
import { type FakeDesk, fakeDesk } from "./slack-harness.ts";

export const CLIENT = { clientId: "12.34", clientSecret: "invented-client-secret" };
const KEY = new Uint8Array(32).fill(7);

/** A door for many workspaces, with the real store behind it. */
export interface ManyHarness {
  readonly door: SlackDoor;
  readonly slack: FakeSlack;
  readonly store: HouseStore;
  readonly tokens: TeamTokens;
  readonly desk: FakeDesk;
  /** Every line of the log with its data, as text. */
  readonly logged: string[];
  close(): Promise<void>;
}

export async function openMany(now_ms: () => number = Date.now): Promise<ManyHarness> {
  const slack = await openFakeSlack();
  const folder = await mkdtemp(join(tmpdir(), "oldhand-slack-"));
  const path = join(folder, "oldhand.sqlite");
  const store = await openStore({ path, books: BOOKS, ownOrganisations: [], secretKeys: [KEY] });
  const logged: string[] = [];
  const note = (data: object, message: string) => {
    const error = "error" in data && data.error instanceof Error ? `${data.error.stack} ${data.error.cause}` : "";
    logged.push(`${message} ${JSON.stringify(data)} ${error}`);
  };
  const log = { info: note, warn: note, error: note };
  const { installations } = store;
  const renew = renewWith({ ...CLIENT, call_ms: 2_000, now_ms, apiUrl: slack.apiUrl });
  const tokens = createTeamTokens({ installations, renew, now_ms, log });
  const desk = fakeDesk();
  const door = await openSlackDoor({
    desk,
    log,
    installed: { installations, tokens },
    settings: {
      signingSecret: "0123456789abcdef0123456789abcdef",
      oauth: { ...CLIENT, secretKeys: [KEY] },
      host: "127.0.0.1",
      port: 0,
      apiUrl: slack.apiUrl,
      pace: { progressAfter_ms: 0, drain_ms: 2_000, call_ms: 2_000 },
    },
  });
  return {
    door,
    slack,
    store,
    tokens,
    desk,
    logged,
    async close() {
      await door.close();
      await tokens.settled();
      await store.close();
      await slack.close();
      await rm(folder, { recursive: true });
    },
  };
}
