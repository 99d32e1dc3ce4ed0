import { afterEach, beforeEach, expect, test } from "vitest";
import { createMemoryStore, type MemoryStore } from "../support/memory-store.ts";
import { FakePlatform, TENANT_ID } from "./fake-platform.ts";
import { openTestDoor, type TestDoor } from "./open-test-door.ts";

const CHANNEL = "19:jobs@thread.tacv2";
const TEAM = "19:crew@thread.tacv2";
const inChannel = {
  conversation: { id: `${CHANNEL};messageid=1700`, conversationType: "channel", tenantId: TENANT_ID },
  channelData: { tenant: { id: TENANT_ID }, team: { id: TEAM }, channel: { id: CHANNEL } },
};
let store: MemoryStore;
let platform: FakePlatform;
let door: TestDoor;
beforeEach(async () => {
  store = createMemoryStore();
  platform = await FakePlatform.start();
  door = await openTestDoor({ references: store.conversations, platform });
});
afterEach(async () => {
  await door.close();
  await platform.stop();
});

/** What is noted of a conversation once everything heard so far is. */
async function noted(conversation: string) {
  await door.close();
  door = await openTestDoor({ references: store.conversations, platform });
  return await store.conversations.find(TENANT_ID, conversation);
}

test("every message notes how its conversation is reached, a channel without its thread", async () => {
  await door.say();
  await door.say({ ...inChannel, id: "2" });
  expect(await noted("19:chat")).toEqual({
    tenant: TENANT_ID,
    conversation: "19:chat",
    kind: "personal",
    serviceUrl: platform.url,
    bot: "28:oldhand",
  });
  expect(await noted(CHANNEL)).toMatchObject({ kind: "channel", team: TEAM, conversation: CHANNEL });
});

test("what asks nothing notes it too: being added, a reaction", async () => {
  const reaction = { type: "messageReaction", reactionsAdded: [{ type: "like" }], text: undefined };
  await door.say({ ...reaction, conversation: { id: "19:a", conversationType: "groupChat", tenantId: TENANT_ID } });
  await door.say({ ...inChannel, type: "installationUpdate", action: "add", text: undefined });
  expect(await noted("19:a")).toMatchObject({ kind: "groupChat" });
  expect(await noted(CHANNEL)).toMatchObject({ kind: "channel" });
});

test("what a stranger sends notes nothing", async () => {
  await door.post({ type: "message", channelId: "msteams", serviceUrl: "https://x.invalid", ...inChannel }, {});
  expect(await noted(CHANNEL)).toBeUndefined();
});

test.each([
  { name: "the bot is removed from the team", type: "conversationUpdate", membersRemoved: [{ id: "28:oldhand" }] },
  { name: "the app is removed", type: "installationUpdate", action: "remove" },
])("it is forgotten when $name", async ({ name: _, ...event }) => {
  await door.say(inChannel);
  const general = { conversation: { id: TEAM, conversationType: "channel", tenantId: TENANT_ID } };
  await door.say({ ...inChannel, ...general, ...event, id: "2", text: undefined });
  expect(await noted(CHANNEL)).toBeUndefined();
});

test.each([
  { name: "somebody else is removed", type: "conversationUpdate", membersRemoved: [{ id: "29:ben" }] },
  { name: "the app is upgraded", type: "installationUpdate", action: "remove-upgrade" },
])("it is kept when $name", async ({ name: _, ...event }) => {
  await door.say(inChannel);
  await door.say({ ...inChannel, ...event, id: "2", text: undefined });
  expect(await noted(CHANNEL)).toMatchObject({ conversation: CHANNEL });
});

test("a deleted channel is forgotten, and the others of its team are not", async () => {
  const other = "19:office@thread.tacv2";
  await door.say(inChannel);
  await door.say({
    ...inChannel,
    id: "2",
    conversation: { id: other, conversationType: "channel", tenantId: TENANT_ID },
  });
  await door.say({
    type: "conversationUpdate",
    text: undefined,
    conversation: { id: TEAM, conversationType: "channel", tenantId: TENANT_ID },
    channelData: { ...inChannel.channelData, eventType: "channelDeleted" },
  });
  expect(await noted(CHANNEL)).toBeUndefined();
  expect(await noted(other)).toMatchObject({ team: TEAM });
});

test("a store that fails costs a line in the log and no answer", async () => {
  const broken = { ...store.conversations, keep: () => Promise.reject(new Error("disk full")) };
  await door.close();
  door = await openTestDoor({ references: broken, platform });
  expect(await door.say()).toMatchObject({ status: 200 });
  await door.close();
  expect(platform.messages).toHaveLength(1);
  expect(door.log).toMatchObject([{ level: "warn", text: "where to post was not noted" }]);
  door = await openTestDoor({ platform });
});
