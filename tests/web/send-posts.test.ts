import { expect, test } from "vitest";
import { RunningDeliveries } from "../../adapters/web/running-deliveries.ts";
import type { SentPosts } from "../../adapters/web/send-posts.ts";
import { buildWebApp, type WebAppOptions } from "../../adapters/web/web-app.ts";
import { openHousePosts } from "./house-posts.ts";
import { noteCard, PEOPLE, ScriptedDesk } from "./scripted-desk.ts";

const HOST = "127.0.0.1:4100";

async function openApp(options: Partial<WebAppOptions> = {}) {
  const house = await openHousePosts();
  const app = buildWebApp({
    desk: new ScriptedDesk(),
    people: PEOPLE,
    company: { name: "Invented & Sons", isInvented: true, timeZone: "America/Chicago", language: "en" },
    examples: { en: [], es: [] },
    languageOf: async () => "en",
    log: { error: () => {} },
    running: new RunningDeliveries(60_000),
    hosts: () => [HOST],
    heartbeat_ms: 60_000,
    channels: house.channels,
    ...options,
  });
  const ask = async (query: Record<string, string>) =>
    await app.request(`http://${HOST}/posts?${new URLSearchParams(query)}`);
  const read = async (query: Record<string, string>): Promise<SentPosts> => JSON.parse(await (await ask(query)).text());
  return { ...house, ask, read };
}
const summaries = ({ channels }: SentPosts) =>
  Object.fromEntries(channels.map(({ id, posts }) => [id, posts.map(({ summary }) => summary)]));

test("each role is given its channels and no other", async () => {
  const { post, read, roles } = await openApp();
  for (const channel of ["team", "managers", "owner"]) await post(`p-${channel}`, `for ${channel}`, { channel });
  expect(summaries(await read({ user: "wilma" }))).toEqual({ team: ["for team"] });
  expect(summaries(await read({ user: "oskar" }))).toEqual({ team: ["for team"] });
  expect(summaries(await read({ user: "nadia" }))).toEqual({ team: ["for team"], managers: ["for managers"] });
  roles.set("nadia", "owner");
  expect(Object.keys(summaries(await read({ user: "nadia" })))).toEqual(["team", "managers", "owner"]);
});

test("somebody who is not in the list is given nothing", async () => {
  const { post, ask } = await openApp();
  await post("p1", "secret");
  for (const query of [{ user: "nobody" }, {}]) {
    const response = await ask(query);
    expect(response.status).toBe(400);
    expect(await response.text()).not.toContain("secret");
  }
});

test("a moment is told as it is where the company is, in the reader's language", async () => {
  let language: "en" | "es" = "en";
  const { post, read } = await openApp({ languageOf: async () => language });
  await post("p1", "one");
  expect((await read({ user: "wilma" })).channels[0]?.posts[0]?.time).toBe("25 Nov 14:02");
  language = "es";
  expect((await read({ user: "wilma" })).channels[0]?.posts[0]?.time).toBe("25 nov 14:02");
});

test("a card is marked with the language of the company, whoever reads it", async () => {
  const { post, read } = await openApp({ languageOf: async () => "es" });
  await post("p1", "one");
  expect((await read({ user: "wilma" })).channels[0]?.posts[0]?.html).toContain(`lang="en"`);
});

test("nothing is sent again that the page has, and a renewed card keeps its place", async () => {
  const { post, read, ask } = await openApp();
  await post("p1", "first");
  await post("p2", "second", { thread: "p1" });
  const before = await read({ user: "wilma" });
  expect((await ask({ user: "wilma", tag: before.tag })).status).toBe(204);
  await post("p3", "first, renewed", { updates: "p1" });
  const have = before.channels.flatMap(({ posts }) => posts.map(({ stamp }) => stamp)).join(",");
  const after = await read({ user: "wilma", tag: before.tag, have });
  const posts = after.channels[0]?.posts ?? [];
  expect(posts.map(({ id, follows, summary }) => [id, follows, summary])).toEqual([
    ["p1", undefined, "first, renewed"],
    ["p2", "p1", "second"],
  ]);
  expect(posts.map(({ html }) => html !== undefined)).toEqual([true, false]);
  expect(posts[0]?.at_ms).toBe(before.channels[0]?.posts[0]?.at_ms);
});

test("the tag of one person says nothing about what another has", async () => {
  const { post, read, ask } = await openApp();
  await post("p1", "first");
  const { tag } = await read({ user: "wilma" });
  expect((await ask({ user: "oskar", tag })).status).toBe(200);
});

test("what stands in a card cannot become a part of the page", async () => {
  const { post, read } = await openApp();
  await post(`"><img src=x onerror=alert(1)>`, noteCard("<script>alert(1)</script>"));
  const [sent] = (await read({ user: "wilma" })).channels[0]?.posts ?? [];
  expect(sent?.html).not.toMatch(/<script|<img|onerror/);
  expect(sent?.html).toContain("&lt;script&gt;");
});
