import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { openStore } from "../../adapters/database/open-store.ts";
import { createOutboxRelay } from "../../adapters/workers/outbox-relay.ts";
import type { Card } from "../../src/messages/card.ts";
import type { Store } from "../../src/ports/store.ts";
import { createFakeChat } from "../support/fake-chat.ts";
import { ANA, type JobDesk, jobOf, openJobDeskOn, sayAll, TEAM_BOOKS } from "../support/job-desk.ts";
import { headlineOf, promptOf, textsOf } from "../support/talk.ts";

let folder = "";
let store: Store;
let desk: JobDesk<Store>;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "oldhand-clean-job-"));
  store = await openStore({ path: join(folder, "store.sqlite"), books: TEAM_BOOKS, ownOrganisations: [] });
  desk = openJobDeskOn(store);
});
afterAll(async () => {
  await store.close();
  await rm(folder, { recursive: true });
});

/** The channel of the team, once the relay has sent what is due. */
async function teamChannel(): Promise<readonly Card[]> {
  const chat = createFakeChat(true);
  const relay = createOutboxRelay({
    outbox: store.outbox,
    ports: { slack: chat, teams: chat, web: store.houseChat, terminal: store.houseChat },
    clock: { now_ms: () => desk.now_ms },
    language: "en",
    jitter: () => 0,
    report: () => undefined,
  });
  for (let turn = 0; turn < 3; turn += 1) {
    await relay.runOnce();
    // A channel takes a message a second.
    desk.now_ms += 1_000;
  }
  const cards = await (await store.openWorkspace(ANA)).channelCards("team", 10);
  return cards.map(({ card }) => card);
}

function rowsOf(card: Card): Readonly<Record<string, string>> {
  const rows = card.blocks.flatMap((block) => (block.kind === "rows" ? block.rows : []));
  return Object.fromEntries(rows.map(({ label, value }) => [label, value]));
}

const NUMBER = "1001";

test("a site visit is kept with the job, and what it measured is asked nowhere again", async () => {
  const begun = await sayAll(desk, "job new", "T. M.", "Ostrowick", "2026-11-25");
  expect(headlineOf(begun)).toBe(`Job ${NUMBER} is begun: T. M., Ostrowick.`);

  // The site visit: what is told at once is not asked, and what is skipped is named at the end.
  const visit = await sayAll(
    desk,
    "survey basement, 1400 cu ft, plain door, closed, 66 psi, model hollin-50, set to 125F",
    "survey replaces electric, 240 V, circuit length 40 ft, 3 people, 2 bathrooms, condensate ends in drain with air gap",
  );
  expect(visit.verdict?.kind).toBe("good");
  expect(await jobOf(store, NUMBER)).toMatchObject({ status: "surveyed", model: "hollin-50" });

  // What the visit measured is asked nowhere again.
  for (const topic of ["expansion", "circuit", "caution", "kit"]) {
    const asked: string[] = [];
    let card = await desk.say(topic);
    for (; promptOf(card) !== undefined; card = await desk.say("skip")) asked.push(promptOf(card) ?? "");
    expect(card.verdict, topic).toBeDefined();
    for (const known of [
      "How much water does the tank hold",
      "with everything shut",
      "heater stand",
      "Which model",
      "tank set to",
    ])
      expect(asked.join(" "), topic).not.toContain(known);
  }

  await desk.say("seen heavy_to_lift");
  const size = await desk.say("size days=20");
  expect(size.verdict).toBeDefined();
  expect(size.blocks.flatMap((block) => (block.kind === "rows" ? block.rows : []))).toContainEqual(
    expect.objectContaining({ label: "People", value: "3", note: "from the job" }),
  );
});

test("starting up is judged and kept, and closing tells the team once what went in and what was measured", async () => {
  // One reading is wrong at first.
  await sayAll(desk, "startup", "done", "done", "done");
  expect(textsOf(await desk.say("92 psi"))[0]).toContain("92 psi is not accepted");
  const done = await sayAll(
    desk,
    ...(["66 psi", "65 psi", "done", "0.2 ohm", "239 V", "done", "done"] as const),
    ...(["125F", "done", "68F", "15 F", "118F", "done"] as const),
  );
  expect(done.title).toBe("Start-up");
  const started = await jobOf(store, NUMBER);
  expect(started?.readings["line_pressure"]).toMatchObject({ isAccepted: true });
  expect(Object.keys(started?.readings ?? {})).toContain("first_rise");

  if (promptOf(done) !== undefined) await desk.say("the tank was drawn from meanwhile");
  desk.now_ms += 3_600_000;
  const closed = await sayAll(desk, "done", "yes");
  expect(headlineOf(closed)).toBe(`Job ${NUMBER} is complete.`);
  expect((await jobOf(store, NUMBER))?.status).toBe("complete");

  const [summary, thread, ...others] = await teamChannel();
  expect(others).toEqual([]);
  expect(summary?.title).toBe(`Job ${NUMBER}: complete`);
  expect(summary && headlineOf(summary)).toBe("Hollin 50 in Ostrowick");
  const rows = summary ? rowsOf(summary) : {};
  expect(rows).toMatchObject({ Customer: "T. M.", Readings: expect.stringMatching(/^\d of \d accepted$/) });
  expect(rows["Time on site"]).toMatch(/^1 h/);
  const rest = thread ? rowsOf(thread) : {};
  expect(rest).toMatchObject({ "Tank temperature": "125 °F" });
  expect(Object.entries(rest)).toContainEqual([
    expect.stringContaining("176 lb"),
    expect.stringContaining("Seen, done: Ana"),
  ]);
  const table = thread?.blocks.find((block) => block.kind === "table");
  expect(table?.rows).toContainEqual(["Supply voltage", "239 V", "240 V", "Accepted"]);
  expect(JSON.stringify([summary, thread])).not.toContain("start_");
  expect(desk.faults).toEqual([]);
});
