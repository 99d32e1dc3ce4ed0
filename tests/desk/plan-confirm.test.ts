import { afterEach, beforeEach, expect, test } from "vitest";
import type { Card } from "../../src/messages/card.ts";
import { seedBooks } from "../support/ask-with-seeds.ts";
import { at, type CompanyDesk, openCompanyDesk } from "../support/company-desk.ts";
import { buttonOf, headlineOf, textsOf } from "../support/talk.ts";

const WITH_CHANNEL = {
  ...seedBooks,
  company: { ...seedBooks.company, teamChannel: { door: "web", id: "team" } as const },
};
let desk: CompanyDesk;
beforeEach(async () => {
  desk = await openCompanyDesk(WITH_CHANNEL);
});
afterEach(() => desk.store.close());

const WEEK = "plan day=2026-11-30 days=5";
async function job(number: string) {
  return await (await desk.store.openWorkspace(at("lupe"))).findJob(number);
}
async function events(number: string) {
  return await (await desk.store.openWorkspace(at("lupe"))).jobHistory(number);
}
function rowsOf(card: Card): readonly (readonly string[])[] {
  return card.blocks.flatMap((block) => (block.kind === "table" ? block.rows : []));
}
async function confirmButton(): Promise<string> {
  return buttonOf(await desk.as("lupe", WEEK), "Confirm this plan").say;
}

test("the plan is made of the jobs as they stand, not as the books had them", async () => {
  await desk.as("lupe", "job new");
  await desk.as("lupe", "B. K.");
  await desk.as("lupe", "Ostrowick");
  await desk.as("lupe", "2026-12-03");
  const jobs = rowsOf(await desk.as("lupe", WEEK)).map((row) => row[1]);
  expect(jobs).toContain("1015");
  // Under way, complete or cancelled: nothing left to plan.
  expect(jobs).not.toContain("1006");
  expect(jobs).not.toContain("1001");
});

test("confirming writes day and people into every job at once, says each, and the team reads it", async () => {
  const say = await confirmButton();
  const before = (await events("1005")).length;
  const card = await desk.as("lupe", say);
  expect(headlineOf(card)).toMatch(/^The plan is confirmed\. Jobs: \d\.$/);
  const planned = await job("1005");
  expect(planned?.day).toMatch(/^2026-1[12]-\d\d$/);
  expect(planned?.people.length).toBe(2);
  expect(textsOf(card)).toContain(
    `Job 1005 is planned for ${planned?.day}: ${planned?.people.map((id) => seedBooks.people.find((one) => one.id === id)?.name).join(", ")}.`,
  );
  expect((await events("1005")).slice(before)).toMatchObject([
    { change: { kind: "planned" }, by: "Lupe Harrastegui", door: "web" },
  ]);
  const [post] = await desk.store.outbox.due(desk.now_ms);
  expect(post?.post).toMatchObject({ channel: { door: "web", id: "team" }, card: { title: "The plan" } });
});

test("what stands in the jobs already is offered for confirming no more", async () => {
  await desk.as("lupe", await confirmButton());
  const again = await desk.as("lupe", WEEK);
  expect(textsOf(again)).toContain("All of this stands in the jobs already.");
  expect(() => buttonOf(again, "Confirm this plan")).toThrow();
});

test("a job that changed since it was shown is named, and nothing is written into any", async () => {
  const say = await confirmButton();
  await desk.say("job 1005", at("ebbe"), "c-ebbe");
  await desk.say("expansion closed, 65 psi, tank 50 gal, set to 125F", at("ebbe"), "c-ebbe");
  const [before5, before4] = [(await events("1005")).length, (await events("1004")).length];
  const card = await desk.as("lupe", say);
  expect(headlineOf(card)).toBe("Nothing was saved: the plan no longer holds. Ask for the plan again.");
  expect(rowsOf(card)).toEqual([["1005", "Changed since it was shown"]]);
  expect([(await events("1005")).length, (await events("1004")).length]).toEqual([before5, before4]);
});

test.each([
  ["somebody is off", "lupe", "crew ebbe off 2026-11-30", "Ebbe Tarnowell is off that day"],
  [
    "a license has lapsed",
    "tobias",
    "crew ebbe credential=master_plumber expires=2026-11-29",
    "Missing: A licensed plumber",
  ],
  [
    "a tool is out of calibration",
    "lupe",
    "crew ebbe tool=CM-1 until=2026-11-29",
    "Missing or out of calibration: Clamp meter",
  ],
  ["hours were cut", "lupe", "crew ebbe hours=07:00-09:00 weekday=monday", "Hours of Ebbe Tarnowell do not reach"],
])("when %s meanwhile it is said, and nothing is written", async (_, who, change, why) => {
  const say = "plan confirm=1003@2026-11-30:ebbe+wren";
  const before = (await events("1003")).length;
  await desk.as(who, change);
  const card = await desk.as("lupe", say);
  const whys = rowsOf(card).map((row) => row[1] ?? "");
  expect(whys.some((one) => one.startsWith(why))).toBe(true);
  expect((await events("1003")).length).toBe(before);
});

test("one person on two jobs for several at once is refused, also against a job that was planned before", async () => {
  const both = await desk.as("lupe", "plan confirm=1003@2026-11-30:ebbe+wren,1005@2026-11-30:ebbe+marisol");
  expect(rowsOf(both)).toContainEqual(["1005", "Ebbe Tarnowell is on another job for two"]);
  const alone = await desk.as("lupe", "plan confirm=1005@2026-11-30:ebbe+marisol");
  expect(rowsOf(alone)).toContainEqual(["1005", "Ebbe Tarnowell is on another job for two"]);
  expect((await job("1005"))?.day).toBeUndefined();
});

test.each([
  ["plan confirm=1003", "“1003” is no assignment. Type it like 1003@2026-11-30:ebbe+wren."],
  ["plan confirm=4711@2026-11-30:ebbe", "There is no such job"],
  ["plan confirm=1001@2026-11-30:ebbe+wren", "Does not wait to be planned any more"],
  ["plan confirm=1003@2026-11-01:ebbe+wren", "The day has passed"],
  ["plan confirm=1003@2026-11-30:nobody+wren", "nobody is not in the crew"],
])("%s says what is wrong", async (text, why) => {
  const card = await desk.as("lupe", text);
  expect([...textsOf(card), ...rowsOf(card).flat()].join("\n")).toContain(why);
  expect((await events("1003")).at(-1)?.change.kind).toBe("status");
});

test("a technician is told who may, is offered no button, and nothing is written", async () => {
  const shown = await desk.as("ebbe", WEEK);
  expect(() => buttonOf(shown, "Confirm this plan")).toThrow();
  const card = await desk.as("ebbe", "plan confirm=1005@2026-12-01:ebbe+wren");
  expect(headlineOf(card)).toBe("A dispatcher, a manager or an owner confirms a plan. Ask one of them.");
  expect((await job("1005"))?.day).toBeUndefined();
});

test("a confirmed plan is taken back by who confirmed it or who leads, and the job is as before", async () => {
  const confirmed = await desk.as("lupe", await confirmButton());
  const say = buttonOf(confirmed, "Take it back").say;
  const taken = await desk.as("tobias", say);
  expect(headlineOf(taken)).toMatch(/^The plan is taken back/);
  expect((await job("1005"))?.day).toBeUndefined();
  expect((await job("1005"))?.people).toEqual([]);
  const again = await desk.as("lupe", say);
  expect(rowsOf(again).map((row) => row[1])).toContain("Is not planned like this any more");
});

test("what somebody else said of the crew since the last message counts for the plan", async () => {
  const say = "plan confirm=1005@2026-12-03:ebbe+wren";
  const [faulty] = [await desk.store.openWorkspace(at("lupe"))];
  const person = await faulty.findPerson(at("tobias"));
  const state = { walksStarted: 0, past: [] };
  const card = { title: "t", blocks: [], summary: "t" };
  await faulty.commit({
    person,
    conversation: "elsewhere",
    state,
    delivery: "meanwhile",
    card,
    at_ms: 1,
    crew: { version: 0, entries: [{ change: { kind: "off", person: "wren", from: "2026-12-03", to: "2026-12-03" } }] },
  });
  expect(rowsOf(await desk.as("lupe", say))).toContainEqual(["1005", "Wren Oduyami is off that day"]);
});
