import { expect, test } from "vitest";
import { type Play, play } from "./play.ts";

test("the technician's day, in Slack and in SI units", () => play("technician-day", "slack", technician));
test("the dispatcher's day, in Teams", () => play("dispatcher-day", "teams", dispatcher));
test("the manager's day, on the web page", () => play("manager-day", "web", manager));

async function technician({ says, house }: Play): Promise<void> {
  await says("wren", "today", "Your jobs: 1. First 1007, Saltmere.", "Call-back");
  await says("wren", "job 1007", "Job 1007: Old Harbor, Saltmere.");
  await says("wren", "note filter cleaned, shown to the owner", "Note kept in job 1007.");
  expect((await house.job("1007")).notes.at(-1)?.text).toBe("filter cleaned, shown to the owner");
  // What is the office's to do is refused with whose it is, and nothing is written.
  const before = (await house.history("1007")).length;
  await says("wren", "job 1007 plan tomorrow ebbe", "This is for: dispatcher");
  await says("wren", "digest week", /manager/);
  expect((await house.history("1007")).length).toBe(before);
  await says("wren", "ready tomorrow", "2026-11-27 can go ahead");
}

async function dispatcher({ says, presses, readsTeam, house }: Play): Promise<void> {
  await says("lupe", "today");
  await says("lupe", "ready tomorrow");
  await says("lupe", "crew wren off 2026-12-01", "Wren Oduyami is off");
  await says("lupe", "ready person=wren day=2026-12-01", /not ready/);
  await says("lupe", "plan day=2026-11-30 days=3");
  await presses("lupe", "Confirm this plan", "The plan is confirmed.");
  expect(await house.job("1004")).toMatchObject({ day: "2026-12-02", people: ["ebbe", "wren"] });
  const [post] = await readsTeam();
  expect(post?.card.title).toBe("The plan");
  await says("lupe", "crew tobias role=dispatcher", /manager/);
}

async function manager({ says, presses }: Play): Promise<void> {
  await says("tobias", "today", "call-backs");
  await says("tobias", "digest last week", "finished");
  await presses("tobias", "Sheet (CSV)", ".csv");
  await says("tobias", "record 1001", "job-1001-record.pdf");
  await says("tobias", "crew marisol", "Marisol Vantreaux");
}
