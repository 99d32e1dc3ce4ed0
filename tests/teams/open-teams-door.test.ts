import { createServer } from "node:net";
import { CloudAdapter, ConfigurationBotFrameworkAuthentication } from "botbuilder";
import express from "express";
import { describe, expect, test } from "vitest";
import { openTeamsDoor } from "../../adapters/teams/open-teams-door.ts";
import { checkSettings } from "../../adapters/teams/settings.ts";
import { APP_ID, FakePlatform, messageActivity, TENANT_ID } from "./fake-platform.ts";
import { echoCard, FakeDesk, openTestDoor, SETTINGS } from "./open-test-door.ts";

const quietLog = { info: () => {}, warn: () => {}, error: () => {} };
const certificate = { thumbprint: "AA", privateKey: "BB" };

describe("settings", () => {
  test.each([
    { name: "no app id", changes: { appId: undefined }, says: /app id is empty/ },
    { name: "an empty app id", changes: { appId: "" }, says: /app id is empty/ },
    { name: "a blank app id", changes: { appId: "  " }, says: /app id is empty/ },
    { name: "an app id that is no id", changes: { appId: "oldhand" }, says: /not an id like/ },
    { name: "an unknown app type", changes: { appType: "Single" }, says: /“Single” is unknown.*SingleTenant/ },
    { name: "a single tenant without its id", changes: { tenantId: undefined }, says: /id of its tenant/ },
    { name: "a tenant that is no id", changes: { tenantId: "oldhand.invalid" }, says: /id of its tenant/ },
    {
      name: "no password and no certificate",
      changes: { password: " " },
      says: /needs its password or its certificate/,
    },
    { name: "a password and a certificate", changes: { certificate }, says: /keep one/ },
    { name: "a managed identity with a password", changes: { appType: "UserAssignedMsi" }, says: /remove them/ },
  ])("refuse $name", async ({ changes, says }) => {
    const opening = openTeamsDoor({ desk: new FakeDesk(), settings: { ...SETTINGS, ...changes }, log: quietLog });
    await expect(opening).rejects.toThrow(says);
    await expect(opening).rejects.toMatchObject({ code: "teams-settings" });
  });

  test("name every fault at once", () => {
    const faults = { appId: "", appType: "Both", password: undefined };
    expect(() => checkSettings({ ...SETTINGS, ...faults })).toThrow(/empty.*unknown.*password/);
  });

  test.each([
    { name: "nothing", appType: undefined, checked: "SingleTenant" },
    { name: "blank", appType: " ", checked: "SingleTenant" },
    { name: "singletenant", appType: "singletenant", checked: "SingleTenant" },
    { name: "MultiTenant", appType: "MultiTenant", checked: "MultiTenant" },
  ])("take the app type $name for $checked", ({ appType, checked }) => {
    expect(checkSettings({ ...SETTINGS, appType }).appType).toBe(checked);
  });

  test("take a certificate or a managed identity in place of the password", () => {
    const { password: _, ...rest } = SETTINGS;
    expect(checkSettings({ ...rest, certificate }).certificate).toEqual(certificate);
    expect(checkSettings({ ...rest, appType: "UserAssignedMsi" }).appType).toBe("UserAssignedMsi");
  });
});

test("the bare library serves unsigned requests when the app id is empty, which is why the door refuses it", async () => {
  const adapter = new CloudAdapter(new ConfigurationBotFrameworkAuthentication({}));
  const served: string[] = [];
  const app = express().use(express.json());
  app.post("/", (request, response) =>
    adapter.process(request, response, async ({ activity }) => void served.push(activity.text)),
  );
  const server = app.listen(0, "127.0.0.1");
  const address = await new Promise<ReturnType<typeof server.address>>((resolve) =>
    server.on("listening", () => resolve(server.address())),
  );
  const port = typeof address === "object" ? address?.port : undefined;
  const body = JSON.stringify(messageActivity(await FakePlatform.start()));
  await fetch(`http://127.0.0.1:${port}/`, { method: "POST", headers: { "content-type": "application/json" }, body });
  server.closeAllConnections();
  server.close();
  expect(served).toEqual(["expansion 80 gal"]);
});

test("opens with the platform's own addresses and credentials when nothing stands in for them", async () => {
  const door = await openTeamsDoor({ desk: new FakeDesk(), settings: SETTINGS, log: quietLog });
  expect(door.describe).toMatch(/^Teams: open at http:\/\/127\.0\.0\.1:\d+\/api\/messages$/);
  const response = await fetch(door.url, {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: "{}",
  });
  expect(response.status).toBe(400);
  await door.close();
});

test("fails to open when its port is taken", async () => {
  const taken = createServer().listen(0, "127.0.0.1");
  const address = await new Promise<ReturnType<typeof taken.address>>((resolve) =>
    taken.on("listening", () => resolve(taken.address())),
  );
  const port = typeof address === "object" && address !== null ? address.port : 0;
  const before = console.error;
  const settings = { ...SETTINGS, port };
  await expect(openTeamsDoor({ desk: new FakeDesk(), settings, log: quietLog })).rejects.toThrow(/EADDRINUSE/);
  expect(console.error).toBe(before);
  await new Promise((resolve) => taken.close(resolve));
});

test("lets work in hand finish when it closes, and answers nobody afterwards", async () => {
  const platform = await FakePlatform.start();
  const door = await openTestDoor({ platform });
  let finish: () => void = () => {};
  const started = new Promise<void>((resolve) => {
    door.desk.answer = async () => {
      resolve();
      await new Promise<void>((done) => {
        finish = done;
      });
      return { card: echoCard("late"), isRepeat: false };
    };
  });
  const answer = door.say();
  await started;
  const closing = door.close();
  finish();
  await closing;
  expect(platform.messages.map(({ body }) => body.summary)).toEqual(["echo late"]);
  expect(await answer).toMatchObject({ status: 200 });
  await expect(fetch(door.url)).rejects.toThrow();
  await platform.stop();
});

test("stops work that does not finish when it closes", async () => {
  const platform = await FakePlatform.start();
  const door = await openTestDoor({ platform, pause: async () => {} });
  door.desk.answer = (_inbound, _show, signal) =>
    new Promise((_, reject) => signal.addEventListener("abort", () => reject(new Error("stopped"))));
  expect(await door.say()).toMatchObject({ status: 200 });
  await door.close();
  expect(door.log.map(({ text }) => text)).toContain("a message was not answered");
  await platform.stop();
});

test("keeps its settings for one app and tenant", () => {
  expect(checkSettings({ ...SETTINGS, tenantId: TENANT_ID.toUpperCase() })).toMatchObject({
    appId: APP_ID,
    tenantId: TENANT_ID,
  });
});
