import { describe, expect, test } from "vitest";
import { createTeamTokens } from "../../adapters/slack/team-tokens.ts";
import type { Access, Installation, Installations, KeptInstallation } from "../../src/ports/installations.ts";

const HOUR_ms = 3_600_000;
const LIFE_ms = 12 * HOUR_ms;

/** A store in memory; `disk.isFull` lets it fail to write, as a full disk does. */
function memoryOf(access: Access) {
  let kept: KeptInstallation | undefined = {
    team: "T1",
    name: "One",
    botUser: "UBOT",
    scopes: [],
    installedBy: "U1",
    installed_ms: 0,
    access,
    version: 1,
  };
  const disk: { isFull: boolean } = { isFull: false };
  const store: Installations = {
    find: async (team: string) => (team === kept?.team ? kept : undefined),
    findOf: async (workspace: string) => (workspace === "w1" ? kept : undefined),
    save: async (installation: Installation) => {
      kept = { ...installation, version: (kept?.version ?? 0) + 1 };
    },
    renew: async ({ version }: KeptInstallation, next: Access) => {
      if (disk.isFull) throw new Error("disk full");
      if (kept?.version !== version) return false;
      kept = { ...kept, access: next, version: version + 1 };
      return true;
    },
    remove: async () => {
      kept = undefined;
      return true;
    },
  };
  return Object.assign(store, { disk });
}

/** Slack's side: each refresh token is good once; a call waits until the test lets it go. */
function slackOf() {
  const used: string[] = [];
  let calls: (() => void)[] = [];
  let isDown = false;
  return {
    used,
    setDown: (down: boolean) => {
      isDown = down;
    },
    letGo: () => {
      for (const call of calls) call();
      calls = [];
    },
    renew: async (refreshToken: string): Promise<Access> => {
      const isUsed = used.includes(refreshToken);
      used.push(refreshToken);
      await new Promise<void>((resolve) => calls.push(resolve));
      if (isDown) throw new Error("Slack did not answer");
      if (isUsed) throw new Error("Slack refused: invalid_refresh_token");
      return { token: `token ${used.length}`, refreshToken: `refresh ${used.length}`, expires_ms: now + LIFE_ms };
    },
  };
}
let now = 0;

function openTokens(expires_ms: number | undefined, at_ms: number) {
  now = at_ms;
  const installations = memoryOf(
    expires_ms === undefined ? { token: "token 0" } : { token: "token 0", refreshToken: "refresh 0", expires_ms },
  );
  const slack = slackOf();
  const logged: string[] = [];
  const log = { error: (_: object, message: string) => void logged.push(message) };
  const tokens = createTeamTokens({ installations, renew: slack.renew, now_ms: () => now, log });
  const settle = async () => {
    slack.letGo();
    await tokens.settled();
  };
  return { installations, slack, tokens, logged, settle };
}

describe("when a token is renewed", () => {
  test.each([
    ["long before it expires", LIFE_ms, LIFE_ms - 2 * HOUR_ms - 1, 0],
    ["2 hours before it expires", LIFE_ms, LIFE_ms - 2 * HOUR_ms, 1],
    ["after it has expired", LIFE_ms, LIFE_ms + 1, 1],
    ["that never expires", undefined, 10 * LIFE_ms, 0],
  ])("one %s is given at once; renewals: %#", async (_, expires_ms, at_ms, renewals) => {
    const { tokens, slack, settle } = openTokens(expires_ms, at_ms);
    expect(await tokens.find("T1")).toBe("token 0");
    await settle();
    expect(slack.used).toHaveLength(renewals);
    expect(await tokens.find("T1")).toBe(renewals === 0 ? "token 0" : "token 1");
  });

  test("an organisation that has not installed the app has none", async () => {
    const { tokens } = openTokens(LIFE_ms, 0);
    expect(await tokens.find("T2")).toBeUndefined();
    expect(await tokens.find(undefined)).toBeUndefined();
    expect(await tokens.ofWorkspace("w2")).toBeUndefined();
  });

  test("many who ask at once cause one renewal, and none of them waits", async () => {
    const { tokens, slack, settle } = openTokens(LIFE_ms, LIFE_ms - HOUR_ms);
    const asked = Array.from({ length: 20 }, () => tokens.find("T1"));
    expect(new Set(await Promise.all(asked))).toEqual(new Set(["token 0"]));
    await settle();
    expect(slack.used).toEqual(["refresh 0"]);
  });

  test("a call with a token that has expired waits for the next one; one that is still good does not", async () => {
    const { tokens, slack, settle } = openTokens(LIFE_ms, LIFE_ms - HOUR_ms);
    await tokens.find("T1");
    expect(await tokens.fresh("token 0")).toBe("token 0");
    now = LIFE_ms + 1;
    const waiting = [tokens.fresh("token 0"), tokens.ofWorkspace("w1")];
    while (slack.used.length === 0) await Promise.resolve();
    await settle();
    expect(await Promise.all(waiting)).toEqual(["token 1", "token 1"]);
    expect(await tokens.fresh("token 0")).toBe("token 1");
    expect(await tokens.fresh("somebody else's")).toBe("somebody else's");
  });
});

describe("no token is lost", () => {
  test("when two processes renew at once, the one that was too late uses what the other has written", async () => {
    const { tokens, slack, installations, logged, settle } = openTokens(LIFE_ms, LIFE_ms + 1);
    const before = await installations.find("T1");
    if (before === undefined) throw new Error("not installed");
    const waiting = tokens.ofWorkspace("w1");
    await Promise.resolve();
    slack.setDown(true);
    await installations.renew(before, { token: "theirs", refreshToken: "r", expires_ms: now + LIFE_ms });
    while (slack.used.length === 0) await Promise.resolve();
    await settle();
    expect([await waiting, logged]).toEqual(["theirs", []]);
  });

  test("when the store cannot write, the renewed token is kept in mind and written at the next try", async () => {
    const { tokens, slack, installations, settle } = openTokens(LIFE_ms, LIFE_ms - HOUR_ms);
    installations.disk.isFull = true;
    await tokens.find("T1");
    await settle();
    installations.disk.isFull = false;
    now += 60_001;
    await tokens.find("T1");
    await settle();
    expect(slack.used).toEqual(["refresh 0"]);
    expect(await installations.find("T1")).toMatchObject({ access: { token: "token 1", refreshToken: "refresh 1" } });
  });

  test("what could not be written does not take the place of a later installation", async () => {
    const { tokens, installations, settle } = openTokens(LIFE_ms, LIFE_ms - HOUR_ms);
    installations.disk.isFull = true;
    await tokens.find("T1");
    await settle();
    installations.disk.isFull = false;
    const kept = await installations.find("T1");
    if (kept === undefined) throw new Error("not installed");
    await installations.save({ ...kept, access: { token: "new", refreshToken: "new refresh", expires_ms: now } });
    now += 60_001;
    await tokens.find("T1");
    await settle();
    expect(await installations.find("T1")).toMatchObject({ access: { refreshToken: "refresh 2" } });
  });

  test("an organisation that leaves meanwhile is not brought back", async () => {
    const { tokens, installations, settle } = openTokens(LIFE_ms, LIFE_ms - HOUR_ms);
    await tokens.find("T1");
    await installations.remove("T1", now);
    await settle();
    expect(await tokens.find("T1")).toBeUndefined();
  });

  test("while Slack is away the old token goes on, Slack is asked once a minute, and the log says so", async () => {
    const { tokens, slack, logged, settle } = openTokens(LIFE_ms, LIFE_ms - HOUR_ms);
    slack.setDown(true);
    for (const later_ms of [0, 30_000, 31_000]) {
      now += later_ms;
      expect(await tokens.find("T1")).toBe("token 0");
      await settle();
    }
    expect([slack.used.length, logged.length]).toEqual([2, 2]);
  });
});
