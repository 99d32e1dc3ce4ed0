import { describe, expect, test } from "vitest";
import type { Card } from "../../src/messages/card.ts";
import { ANA, BEN, type JobDesk, jobOf, openJobDesk, sayAll } from "../support/job-desk.ts";
import { headlineOf, promptOf, textsOf } from "../support/talk.ts";

const BEGIN = ["job new", "T. M.", "Ostrowick", "2026-11-25", "fault no hot water, model hollin-50"] as const;

const pressed = (card: Card, label: RegExp) => {
  const buttons = card.blocks.flatMap((block) => (block.kind === "buttons" ? block.buttons : []));
  const found = buttons.find((button) => label.test(button.label));
  if (found === undefined) throw new Error(`no button ${label}: ${buttons.map((button) => button.label).join(", ")}`);
  return found;
};
const labelsOf = (card: Card) =>
  card.blocks.flatMap((block) => (block.kind === "buttons" ? block.buttons : [])).map(({ label }) => label);

/** Answers whatever is asked with its first answer until the walk comes to an end. */
async function walkToTheEnd(desk: JobDesk, ...texts: readonly [string, ...string[]]): Promise<Card> {
  let card = await sayAll(desk, ...texts);
  for (let at = 0; promptOf(card) !== undefined && at < 80; at += 1) card = await desk.press(pressed(card, /./));
  expect(promptOf(card)).toBeUndefined();
  return card;
}

async function changesOf(desk: JobDesk) {
  const workspace = await desk.store.openWorkspace(ANA);
  return (await workspace.jobHistory("1001")).map(({ change, by, at_ms, amends }) => ({
    ...change,
    by,
    at_ms,
    amends,
  }));
}
const postsOf = (desk: JobDesk) => desk.store.commits.flatMap(({ posts = [] }) => posts);

describe("the trail of a fault in the open job", () => {
  test("every check is kept by itself, with who told it and when", async () => {
    const desk = openJobDesk();
    const first = await sayAll(desk, ...BEGIN);
    expect(promptOf(first)).toBeDefined();
    await desk.press(pressed(first, /./));
    const told = (await changesOf(desk)).filter(({ kind }) => kind === "facts");
    expect(told.map((change) => (change.kind === "facts" ? change.facts : {}))).toContainEqual({
      complaint: "no hot water",
    });
    expect(new Set(told.map(({ by }) => by))).toEqual(new Set(["Ana"]));
    expect(new Set(told.map(({ at_ms }) => at_ms)).size).toBe(2);
    const shown = await sayAll(desk, "stop", "job");
    const rows = shown.blocks.flatMap((block) => (block.kind === "rows" ? [block] : []));
    expect(rows.find(({ heading }) => heading === "Fault walk")?.rows).toContainEqual(
      expect.objectContaining({ value: "no hot water", note: expect.stringContaining("Ana") }),
    );
  });

  test("undo takes the last check back in the job too, and leaves the others", async () => {
    const desk = openJobDesk();
    const first = await sayAll(desk, ...BEGIN);
    await desk.press(pressed(first, /./));
    const before = (await jobOf(desk.store, "1001"))?.facts ?? {};
    await desk.say("undo");
    const after = (await jobOf(desk.store, "1001"))?.facts ?? {};
    expect(Object.keys(after).length).toBe(Object.keys(before).length - 1);
    expect(after["complaint"]?.value).toBe("no hot water");
  });

  test("where it has come to is one line of the record, in the company's language, and is not written twice", async () => {
    const desk = openJobDesk();
    await desk.say("language español");
    const end = await walkToTheEnd(desk, ...BEGIN);
    const [line, ...others] = (await jobOf(desk.store, "1001"))?.trail ?? [];
    expect(others).toEqual([]);
    expect(line).toMatchObject({ by: "Ana" });
    expect(line?.text).not.toContain(headlineOf(end));
    expect(textsOf(end).join(" ")).toContain("cómo se halló");
    await desk.say("language english");
    await desk.say("undo");
    expect((await jobOf(desk.store, "1001"))?.trail).toHaveLength(1);
  });

  test("a fault that is cured is counted by the next one of the company, and no longer once it is taken back", async () => {
    const desk = openJobDesk();
    const end = await walkToTheEnd(desk, ...BEGIN);
    const cured = await desk.press(pressed(end, /^It was: /));
    expect(headlineOf(cured)).toMatch(/^Closed\. It was: /);
    const facts = (await jobOf(desk.store, "1001"))?.facts ?? {};
    const [closing] = Object.keys(facts).filter((fact) => fact.startsWith("cured_by_"));
    expect(closing).toBeDefined();
    const counted = async (conversation: string) => {
      let card = await desk.say("fault no hot water, model hollin-50", BEN, conversation);
      for (let at = 0; promptOf(card) !== undefined && at < 80; at += 1)
        card = await desk.press(pressed(card, /./), BEN, conversation);
      return textsOf(card).join(" ");
    };
    expect(await counted("c2")).toContain("This company found it before");
    await desk.say("undo");
    expect((await jobOf(desk.store, "1001"))?.facts[closing ?? ""]).toBeUndefined();
    expect(await counted("c3")).not.toContain("This company found it before");
  });

  test("the team reads it when it is asked for, once for each time", async () => {
    const desk = openJobDesk();
    const end = await walkToTheEnd(desk, ...BEGIN);
    expect(postsOf(desk)).toEqual([]);
    const offer = pressed(end, /Tell the team/);
    const told = await desk.press(offer);
    expect(textsOf(told).join(" ")).toContain("The team's channel reads how it was found.");
    expect(labelsOf(told)).not.toContain(offer.label);
    const [post] = postsOf(desk);
    expect(post?.card.title).toBe("Job 1001: how the fault was found");
    expect(post && headlineOf(post.card)).toBe(headlineOf(end));
    expect(post?.card.blocks.some((block) => block.kind === "table" && block.rows.length > 3)).toBe(true);
    await desk.press(pressed(told, /^It was: /));
    expect(postsOf(desk)).toHaveLength(1);
    await desk.press(offer);
    expect(postsOf(desk)).toHaveLength(2);
    expect(new Set(postsOf(desk).map(({ id }) => id)).size).toBe(postsOf(desk).length);
    expect(desk.faults).toEqual([]);
  });

  test("without an open job nothing is kept and nothing is offered to the team", async () => {
    const desk = openJobDesk();
    const end = await walkToTheEnd(desk, "fault no hot water, model hollin-50");
    expect(labelsOf(end)).not.toContain("Tell the team how it was found");
    expect(desk.store.commits.flatMap(({ jobs = [] }) => jobs)).toEqual([]);
  });
});
