import { describe, expect, test } from "vitest";
import { createChannelReader, HOUSE_CHANNELS } from "../../src/desk/house-channels.ts";
import type { Channel } from "../../src/ports/outbox.ts";
import { type Caller, ROLES, type Role, type Store } from "../../src/ports/store.ts";
import { createMemoryStore } from "../support/memory-store.ts";

const CALLER: Caller = { door: "web", organisation: "local", user: "nadia", name: "Nadia" };

/** A store in which whoever asks has this role now. */
function storeOf(role: () => Role): Store {
  const store = createMemoryStore();
  return {
    ...store,
    openWorkspace: async (caller) => {
      const workspace = await store.openWorkspace(caller);
      return { ...workspace, findPerson: async (one) => ({ ...(await workspace.findPerson(one)), role: role() }) };
    },
  };
}
async function postTo(store: Store, id: string, workspace = "local"): Promise<void> {
  const card = { title: id, summary: `posted to ${id}`, blocks: [] };
  await store.houseChat.send({ workspace, id: `p-${id}`, channel: { door: "web", id }, card, written_ms: 1 });
}
async function readAll(store: Store, teamChannel?: Channel): Promise<Record<string, readonly string[] | undefined>> {
  const reader = createChannelReader(store, { ...(teamChannel && { teamChannel }) });
  const read = HOUSE_CHANNELS.map(async (channel) => {
    const cards = await reader.read(CALLER, channel, 9);
    return [channel, cards?.map(({ card }) => card.title)] as const;
  });
  return Object.fromEntries(await Promise.all(read));
}

const OPEN: Readonly<Record<Role, readonly string[]>> = {
  technician: ["team"],
  dispatcher: ["team"],
  manager: ["team", "managers"],
  owner: ["team", "managers", "owner"],
};
describe.each(ROLES)("%s", (role) => {
  test(`may read ${OPEN[role].join(", ")} and nothing else`, async () => {
    const store = storeOf(() => role);
    await store.openWorkspace(CALLER);
    for (const channel of HOUSE_CHANNELS) await postTo(store, channel);
    expect(await createChannelReader(store, {}).openTo(CALLER)).toEqual(OPEN[role]);
    const expected = HOUSE_CHANNELS.map((id) => [id, OPEN[role].includes(id) ? [id] : undefined]);
    expect(await readAll(store)).toEqual(Object.fromEntries(expected));
  });
});

test("a role that was taken away counts at once", async () => {
  let role: Role = "owner";
  const store = storeOf(() => role);
  const reader = createChannelReader(store, {});
  expect(await reader.read(CALLER, "owner", 9)).toEqual([]);
  role = "technician";
  expect(await reader.read(CALLER, "owner", 9)).toBe(undefined);
});

test("posts of another workspace are not there", async () => {
  const store = storeOf(() => "owner");
  await store.openWorkspace({ ...CALLER, organisation: "other" });
  for (const channel of HOUSE_CHANNELS) await postTo(store, channel, "other");
  expect(await readAll(store)).toEqual({ team: [], managers: [], owner: [] });
});

const TEAMS: readonly {
  readonly name: string;
  readonly channel: Channel;
  readonly team: readonly string[] | undefined;
}[] = [
  { name: "a page of the web of another name is the team's", channel: { door: "web", id: "crew" }, team: ["crew"] },
  { name: "a Slack channel leaves the page without one", channel: { door: "slack", id: "C1" }, team: undefined },
  { name: "the owner's page is never the team's", channel: { door: "web", id: "owner" }, team: undefined },
  { name: "the managers' page is never the team's", channel: { door: "web", id: "managers" }, team: undefined },
];
test.each(TEAMS)("$name", async ({ channel, team }) => {
  const store = storeOf(() => "technician");
  await store.openWorkspace(CALLER);
  for (const id of ["crew", "team", "owner", "managers"]) await postTo(store, id);
  expect((await readAll(store, channel))["team"]).toEqual(team);
});
