import { afterEach, beforeEach, expect, test } from "vitest";
import type { Card } from "../../src/messages/card.ts";
import { at, type CompanyDesk, openCompanyDesk } from "../support/company-desk.ts";
import { headlineOf, promptOf, textsOf } from "../support/talk.ts";

let desk: CompanyDesk;
beforeEach(async () => {
  desk = await openCompanyDesk();
});
afterEach(() => desk.store.close());

function rowsOf(card: Card): readonly (readonly string[])[] {
  return card.blocks.flatMap((block) => (block.kind === "table" ? block.rows : []));
}
const history = async () => await (await desk.store.openWorkspace(at("lupe"))).crewHistory(0);

test("a day off that is told is seen by the readiness of that day", async () => {
  expect(headlineOf(await desk.as("lupe", "ready person=wren day=2026-12-03"))).toMatch(/^Wren Oduyami can work/);
  const card = await desk.as("lupe", "crew wren off 2026-12-02 to 2026-12-04");
  expect(headlineOf(card)).toBe("Wren Oduyami is off from 2026-12-02 through 2026-12-04.");
  expect(headlineOf(await desk.as("lupe", "ready person=wren day=2026-12-03"))).toMatch(/is not ready/);
  await desk.as("lupe", "crew wren works 2026-12-03 to 2026-12-03");
  expect(headlineOf(await desk.as("lupe", "ready person=wren day=2026-12-03"))).toMatch(/can work/);
  expect(headlineOf(await desk.as("lupe", "ready person=wren day=2026-12-04"))).toMatch(/is not ready/);
});

test("asked one after the other, a new card has everything that a card needs", async () => {
  await desk.as("tobias", "crew person=wren task=credential");
  await desk.as("tobias", "first aid");
  expect(promptOf(await desk.as("tobias", "FA-911"))).toBe("Who issued it?");
  await desk.as("tobias", "Inland Trades School");
  await desk.as("tobias", "2028-05-31");
  const card = await desk.as("tobias", "skip");
  expect(rowsOf(card)).toEqual([["First aid card", "FA-911", "Inland Trades School", "2028-05-31", "Good"]]);
});

test("a renewal keeps number and issuer", async () => {
  const card = await desk.as("tobias", "crew ebbe credential=first_aid expires=2028-11-30");
  expect(rowsOf(card)).toEqual([["First aid card", "FA-810", "Inland Trades School", "2028-11-30", "Good"]]);
});

test.each([
  ["crew person=nobody", "Nobody in the books is called “nobody”."],
  ["crew marisol off 2026-12-24 to 2026-12-20", "That is before it begins, on 2026-12-24. Type a later day."],
  ["crew wren truck=truck-9", "There is no truck “truck-9”."],
  ["crew wren hours=morning weekday=monday", "“morning” are no hours. Type them like 07:00-15:30"],
  ["crew stock truck=truck-2 part=ball-valve amount=2.5", "“2.5” cannot be counted."],
  ["crew stock truck=truck-2 part=condensate-pipe amount=+20", "“+20” cannot be counted."],
  ["crew lupe off 2026-12-24", "Lupe Harrastegui does not go to site."],
  ["crew withdraw entry=99", "There is no entry 99 to take back."],
])("%s says what to type instead, and writes nothing", async (text, told) => {
  expect(textsOf(await desk.as("lupe", text)).join("\n")).toContain(told);
  expect(await history()).toEqual([]);
});

test("parts used on a job come off the truck of its crew, and the kit of the next job sees it", async () => {
  await desk.as("lupe", "crew stock truck=truck-1 part=mixing-valve amount=+2");
  await desk.as("ebbe", "job 1003");
  await desk.as("ebbe", "survey closed, set to 140F, no mixing valve");
  for (const text of ["stop", "done", "yes", "lupe", "2026-12-05"]) await desk.as("ebbe", text);
  const used = (await history()).filter(({ change }) => change.kind === "used");
  expect(used).toMatchObject([
    { change: { job: "1003", truck: "truck-2", parts: { "ball-valve": 1 } }, by: "Ebbe Tarnowell" },
  ]);
  expect(rowsOf(await desk.as("lupe", "crew stock truck-2"))).toContainEqual(["Ball valve, full port", "1"]);
});

test("undo takes back what was said, in the record too", async () => {
  await desk.as("lupe", "crew wren off 2026-12-03");
  expect(textsOf(await desk.as("lupe", "undo")).at(-1)).toBe("Taken back in the crew's record too.");
  expect((await history()).map(({ change, amends }) => [change.kind, amends])).toEqual([
    ["off", undefined],
    ["withdrawn", 1],
  ]);
  expect(headlineOf(await desk.as("lupe", "ready person=wren day=2026-12-03"))).toMatch(/can work/);
});

test("the history says what, who, when and at which door", async () => {
  await desk.as("lupe", "crew wren off 2026-12-03");
  expect(rowsOf(await desk.as("tobias", "crew history"))).toEqual([
    ["1", "2026-11-25", "Lupe Harrastegui (web)", "Wren Oduyami is off from 2026-12-03 through 2026-12-03."],
  ]);
});

test("speaks Spanish", async () => {
  const card = await desk.as("marisol", "cuadrilla herramienta=TH-2 hasta=2027-11-10");
  expect(headlineOf(card)).toBe("La calibración de TH-2, que lleva Marisol Vantreaux, vale hasta el 2027-11-10.");
});

test("somebody who wrote once is added by name, and is planned with from then on", async () => {
  await desk.say("hello", { ...at("nia"), name: "Nia Okonedo" }, "c-nia");
  expect(headlineOf(await desk.as("tobias", 'crew add person="Nia Okonedo"'))).toMatch(
    /^Nia Okonedo is in the crew now/,
  );
  await desk.as("lupe", 'crew person="Nia Okonedo" hours=07:00-15:30 weekday=workdays');
  expect(rowsOf(await desk.as("lupe", "crew")).map(([name]) => name)).toContain("Nia Okonedo");
});

test("a new line about the crew begins anew, whatever question was open", async () => {
  expect(promptOf(await desk.as("lupe", "crew wren off"))).toBe("Which day?");
  const card = await desk.as("lupe", "crew stock truck-2 mixing-valve +2");
  expect(headlineOf(card)).toBe("Stock of Truck 2 changed: Mixing valve, 3/4 in, ASSE 1017.");
  expect(rowsOf(card)).toEqual([["Mixing valve, 3/4 in, ASSE 1017", "2"]]);
  expect((await history()).map(({ change }) => change.kind)).toEqual(["stock"]);
});

test("both ends of some days are told at once as the answer", async () => {
  await desk.as("lupe", "crew wren off");
  const card = await desk.as("lupe", "2026-12-24 to 2027-01-02");
  expect(headlineOf(card)).toBe("Wren Oduyami is off from 2026-12-24 through 2027-01-02.");
});

test("what follows a saved change never changes it by the way: it is asked who is meant", async () => {
  const saved = await desk.as("lupe", "crew wren off 2026-12-03");
  expect(textsOf(saved)).toContain("Saved. “undo” takes it back; another line is another entry.");
  expect(promptOf(await desk.as("lupe", "2026-12-04"))).toBe("Who?");
  expect(await history()).toHaveLength(1);
});

test.each([
  "crew stock truck=truck-2 mixing-valve=+2",
  "crew stock truck 2 mixing valve +2",
  "crew +2 mixing-valve truck-2",
  "crew truck-2 mixing-valve: +2",
  "crew amount=+2 part=mixing-valve truck-2",
])("%s is two more on the truck", async (text) => {
  expect(rowsOf(await desk.as("lupe", text))).toEqual([["Mixing valve, 3/4 in, ASSE 1017", "2"]]);
});

test("pipe is told with its unit, also without a sign", async () => {
  expect(rowsOf(await desk.as("lupe", "crew stock truck-2 +20 ft condensate-pipe"))).toEqual([
    ["Condensate pipe, 3/4 in", "40 ft"],
  ]);
});

test.each(["crew tool=TH-3 wren gone", "crew gone=yes tool=TH-3 wren", "crew wren gone tool=TH-3"])(
  "%s takes the tool away",
  async (text) => {
    expect(headlineOf(await desk.as("lupe", text))).toBe("Wren Oduyami no longer carries TH-3.");
  },
);

test("gone alone says what to name, and takes nothing away", async () => {
  expect(headlineOf(await desk.as("tobias", "crew wren gone"))).toMatch(/^Nothing was taken away\. Say what/);
  expect(await history()).toEqual([]);
});

test("who never wrote cannot be added yet; it is said what to do", async () => {
  const card = await desk.as("tobias", "crew add person=Nia");
  expect(textsOf(card).join("\n")).toContain(
    "I know nobody called “Nia”. Let them write “hello” to me once, then type their name; or write them into people.yaml.",
  );
  expect(await history()).toEqual([]);
});

test("after an answer about readiness a job's own words open its record, and “and job” follows on", async () => {
  await desk.as("lupe", "ready 2026-12-02");
  expect(headlineOf(await desk.as("lupe", "job 1004 note the dog bites"))).toBe("Noted in job 1004.");
  await desk.as("lupe", "ready marisol 2026-11-30");
  expect(headlineOf(await desk.as("lupe", "and job 1003"))).toMatch(/^Job 1003 is not ready for 2026-11-30/);
  expect(headlineOf(await desk.as("lupe", "and wren"))).toMatch(/^Wren Oduyami is ready for 2026-11-30/);
  expect((await desk.as("lupe", "today")).title).toBe("Today");
});

test("a new line about readiness begins anew while a question of it is open", async () => {
  expect(promptOf(await desk.as("lupe", "ready 2026-11-30 job=1099"))).toBe("For which job?");
  expect(headlineOf(await desk.as("lupe", "ready 2026-12-01"))).toMatch(/^2026-12-01 can go ahead/);
});
