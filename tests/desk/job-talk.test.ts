import { describe, expect, test } from "vitest";
import { SIGNS } from "../../src/jobs/startup-fault.ts";
import type { Caller } from "../../src/ports/store.ts";
import { library } from "../support/ask-library.ts";
import { fixtureBooks } from "../support/fixture-books.ts";
import { ANA, BEN, jobOf, openJobDesk, sayAll, TEAM_BOOKS } from "../support/job-desk.ts";
import { buttonOf, headlineOf, promptOf, textsOf } from "../support/talk.ts";

const BEGIN = ["job new", "T. M.", "Ostrowick", "skip"] as const;
const kinds = (events: readonly { readonly change: { readonly kind: string } }[]) =>
  events.map(({ change }) => change.kind);

async function historyOf(desk: ReturnType<typeof openJobDesk>, number = "1001") {
  return (await desk.store.openWorkspace(ANA)).jobHistory(number);
}

describe("a job in the conversation", () => {
  test("is begun with initials, place and day, and is talked about from then on", async () => {
    const desk = openJobDesk();
    const card = await sayAll(desk, "job new", "T. M.", "Ostrowick", "2026-12-01");
    expect(headlineOf(card)).toBe("Job 1001 is begun: T. M., Ostrowick.");
    expect(await jobOf(desk.store, "1001")).toMatchObject({ customer: "T. M.", place: "Ostrowick", day: "2026-12-01" });
    expect(headlineOf(await desk.say("job"))).toBe("Job 1001: T. M., Ostrowick.");
  });

  test("takes no more of the customer than initials or a nickname", async () => {
    const desk = openJobDesk();
    const card = await sayAll(desk, "job new", "Theodora Maria Mansfield", "Ostrowick", "skip");
    expect(textsOf(card).join(" ")).toContain("Initials or a nickname only");
    expect(promptOf(card)).toBe("For whom? Initials or a nickname only?");
    expect(await jobOf(desk.store, "1001")).toBeUndefined();
  });

  test("is opened by its number alone; a number that is no job says so", async () => {
    const desk = openJobDesk();
    await sayAll(desk, ...BEGIN);
    await desk.say("job leave");
    expect(headlineOf(await desk.say("job"))).toBe("No job is open here. Jobs ahead: 1.");
    expect(headlineOf(await desk.say("job 4711"))).toBe(
      "There is no job “4711”. Check the number, or begin a new one.",
    );
    expect(headlineOf(await desk.say("job 1001"))).toBe("Job 1001: T. M., Ostrowick.");
  });

  test("speaks Spanish", async () => {
    const desk = openJobDesk();
    await desk.say("language es");
    await sayAll(desk, "trabajo nuevo", "T. M.", "Ostrowick", "omitir");
    const card = await desk.say("expansion cerrado, 65 psi, tanque 50 gal, puesto a 125F");
    expect(textsOf(card).at(-1)).toMatch(/^Queda en el trabajo 1001: .*Presión/);
    expect(headlineOf(await desk.say("trabajo 1001"))).toBe("Trabajo 1001: T. M., Ostrowick.");
  });
});

describe("facts that travel", () => {
  test("are kept with what the card says, and are known in the next walk", async () => {
    const desk = openJobDesk();
    await sayAll(desk, ...BEGIN);
    const told = await desk.say("expansion closed, 65 psi, tank 50 gal, set to 125F");
    expect(textsOf(told).at(-1)).toBe("Kept in job 1001: Tank, Tank temperature, Line pressure, Closed system.");
    const kit = await desk.say("caution");
    // Asked are only the facts that nobody has told yet: not the setting, not the closed system.
    expect(promptOf(kit)).toBe("Where does the heater stand?");
    const answer = await sayAll(desk, "basement", "no", "skip", "skip");
    const counted = answer.blocks.flatMap((block) => (block.kind === "rows" ? block.rows : []));
    expect(counted).toContainEqual({ label: "Line pressure", value: "65 psi", note: "from the job" });
    expect((await jobOf(desk.store, "1001"))?.facts["room"]).toMatchObject({ value: "basement", topic: "caution" });
  });

  test("are told again to nobody who has no job open, nor kept then", async () => {
    const desk = openJobDesk();
    await sayAll(desk, ...BEGIN, "expansion closed, 65 psi, tank 50 gal, set to 125F", "job leave");
    const commits = desk.store.commits.length;
    await desk.say("mix 140F hot, 50F cold, 120F out");
    expect(desk.store.commits[commits]?.jobs).toBeUndefined();
    expect(promptOf(await desk.say("expansion"))).toBe("How much water does the tank hold?");
  });

  test("are known to a colleague in another conversation, and to nobody of another company", async () => {
    const desk = openJobDesk();
    await sayAll(desk, ...BEGIN, "expansion closed, 65 psi, tank 50 gal, set to 125F");
    const stranger: Caller = { ...ANA, organisation: "zenith" };
    expect(headlineOf(await desk.say("job 1001", stranger))).toMatch(/^There is no job/);
    await desk.say("job 1001", BEN, "c2");
    expect(promptOf(await desk.say("expansion", BEN, "c2"))).toBe("How cold is the incoming water?");
  });

  test("a colleague's newer word is not written over by an older walk", async () => {
    const desk = openJobDesk();
    await sayAll(desk, ...BEGIN, "survey", "basement", "700 cu ft");
    await sayAll({ say: (text) => desk.say(text, BEN, "c2") }, "job 1001", "caution room_volume=800cuft, attic");
    await sayAll(desk, "plain");
    const facts = (await jobOf(desk.store, "1001"))?.facts;
    expect(facts?.["room"]).toMatchObject({ value: "attic", by: "Ben" });
    expect(facts?.["door"]).toMatchObject({ value: "plain", by: "Ana" });
  });

  test("undo takes back what the step told, in the job too", async () => {
    const desk = openJobDesk();
    await sayAll(desk, ...BEGIN, "survey", "basement");
    const card = await desk.say("undo");
    expect(textsOf(card).at(-1)).toBe("Taken back in job 1001 too.");
    expect((await jobOf(desk.store, "1001"))?.facts).toEqual({});
    expect(kinds(await historyOf(desk))).toEqual(["opened", "facts", "withdrawn"]);
  });

  test("what cannot be kept in a closed job is answered, and said not to be kept", async () => {
    const desk = openJobDesk();
    await sayAll(desk, ...BEGIN);
    const workspace = await desk.store.openWorkspace(ANA);
    const person = { ...(await workspace.findPerson(ANA)), role: "owner" as const };
    const cancel = { kind: "status", status: "cancelled", because: "moved away" } as const;
    const state = (await workspace.loadConversation(person.id, JSON.stringify(["slack", "c1"]))) ?? undefined;
    if (state === undefined) throw new Error("no conversation");
    const card = { title: "t", blocks: [], summary: "t" };
    await workspace.commit({
      person,
      conversation: JSON.stringify(["slack", "c1"]),
      state,
      delivery: "cancel",
      card,
      at_ms: 1,
      jobs: [{ job: "1001", change: cancel }],
    });
    const answer = await desk.say("expansion closed, 65 psi, tank 50 gal, set to 125F");
    expect(answer.verdict).toBeDefined();
    expect(textsOf(answer).at(-1)).toMatch(/^Not kept in job 1001\. The job is cancelled/);
    expect((await jobOf(desk.store, "1001"))?.facts).toEqual({});
  });

  test("a delivery that comes again writes nothing twice", async () => {
    const desk = openJobDesk();
    await sayAll(desk, ...BEGIN);
    const again = { delivery: "same" };
    const first = await desk.say("expansion closed, 65 psi, tank 50 gal, set to 125F", ANA, "c1", again);
    const second = await desk.say("expansion closed, 65 psi, tank 50 gal, set to 125F", ANA, "c1", again);
    expect(second).toEqual(first);
    expect(kinds(await historyOf(desk))).toEqual(["opened", "facts"]);
  });

  test("a job that a colleague changed in the same moment is read anew, and both are kept", async () => {
    const desk = openJobDesk();
    await sayAll(desk, ...BEGIN);
    desk.store.faults.failCommit = Object.assign(new Error("meanwhile"), { code: "job_changed" });
    const card = await desk.say("expansion closed, 65 psi, tank 50 gal, set to 125F");
    expect(card.verdict).toBeDefined();
    expect(desk.faults).toEqual([]);
    expect(kinds(await historyOf(desk))).toEqual(["opened", "facts"]);
  });
});

describe("starting up", () => {
  const SURVEYED = [...BEGIN, "survey model hollin-50, closed, 65 psi, set to 125F, 240 V"] as const;

  test("judges each reading when it is typed, and keeps it with what was expected", async () => {
    const desk = openJobDesk();
    await sayAll(desk, ...SURVEYED, "startup", "done", "done", "done");
    const outside = await desk.say("95 psi");
    expect(textsOf(outside)[0]).toBe("Static pressure, measured: 95 psi is not accepted. Accepted: 20 psi to 80 psi.");
    expect(textsOf(outside).join(" ")).toContain("fault");
    expect(promptOf(outside)).toBe("Static pressure, measured: why is it left like this?");
    const again = await desk.say("66 psi");
    expect(textsOf(again)[0]).toBe("Static pressure, measured: 66 psi is accepted.");
    const job = await jobOf(desk.store, "1001");
    expect(job?.status).toBe("under_way");
    expect(job?.readings["line_pressure"]).toMatchObject({ isAccepted: true, expected: { kind: "pressure" } });
  });

  test("a reading that too little is known to judge is kept, and said not to be judged", async () => {
    const desk = openJobDesk();
    await sayAll(desk, ...BEGIN, "startup", "hollin-50", "done", "done", "done", "66 psi", "65 psi", "done");
    const card = await sayAll(desk, "0.2 ohm", "240 V", "done", "done", "125F");
    expect(textsOf(card)[0]).toBe("Tank setting: 125 °F. Too little is known to judge it.");
    expect((await jobOf(desk.store, "1001"))?.readings["set_temperature"]).toMatchObject({ because: "not_judged" });
    const shown = await sayAll(desk, "stop", "job");
    const table = shown.blocks.find((block) => block.kind === "table");
    expect(table?.rows).toContainEqual(["Tank setting", "125 °F", "–", "Not judged"]);
  });

  test("says the danger before the step that has it", async () => {
    const desk = openJobDesk();
    const card = await sayAll(desk, ...SURVEYED, "startup", "done", "done");
    const kindsOfBlocks = card.blocks.map(({ kind }) => kind);
    expect(kindsOfBlocks.indexOf("caution")).toBeLessThan(kindsOfBlocks.indexOf("question"));
  });

  test("a reading outside what is accepted offers the fault walk, which knows the sign", async () => {
    const desk = openJobDesk();
    await sayAll(desk, ...SURVEYED, "startup", "done", "done", "done", "66 psi", "65 psi", "done", "0.2 ohm", "240 V");
    const asked = await sayAll(desk, "done", "done", "125 F", "done", "skip", "skip", "150 F");
    expect(buttonOf(asked, "Look for the fault").say).toBe("fault symptom=too_hot");
    const fault = await desk.press(buttonOf(asked, "Look for the fault"));
    expect(fault.title).toBe("Find a fault");
    expect(promptOf(fault)).not.toMatch(/wrong/);
    expect((await jobOf(desk.store, "1001"))?.readings["outlet_temperature"]).toMatchObject({ isAccepted: false });
  });

  test("every sign is a symptom of the fault walk", () => {
    const known = library.faults.symptoms.map(({ id }) => id);
    for (const { low, high } of Object.values(SIGNS))
      for (const sign of [low, high]) if (sign !== undefined) expect(known).toContain(sign);
  });

  test("a critical step that is skipped asks why, and goes on with the reason", async () => {
    const desk = openJobDesk();
    const card = await sayAll(desk, ...SURVEYED, "startup", "done", "done", "skip");
    expect(promptOf(card)).toBe("No leaks: why is it left like this?");
    await desk.say("the ceiling is shut until Friday");
    expect((await jobOf(desk.store, "1001"))?.facts["start_tight_why"]).toMatchObject({
      value: "the ceiling is shut until Friday",
    });
  });

  test("goes on about its own job, carried to another conversation or returned to from another job", async () => {
    const desk = openJobDesk();
    await sayAll(desk, ...SURVEYED, "startup", "done");
    expect(promptOf(await desk.say("resume", ANA, "c2"))).toBe("Does every hot tap run without spitting?");
    await desk.say("done", ANA, "c2");
    expect((await jobOf(desk.store, "1001"))?.facts["start_purged"]).toMatchObject({ value: "done" });
    await sayAll({ say: (text) => desk.say(text, ANA, "c2") }, "job new", "B. K.", "Saltmere", "skip");
    expect(promptOf(await desk.say("resume startup", ANA, "c2"))).toBe("Is every joint dry under full pressure?");
    await desk.say("done", ANA, "c2");
    expect((await jobOf(desk.store, "1001"))?.facts["start_tight"]).toMatchObject({ value: "done" });
    expect((await jobOf(desk.store, "1002"))?.facts).toEqual({});
  });

  test("in Spanish, asks, judges and closes", async () => {
    const desk = openJobDesk();
    await sayAll(desk, ...SURVEYED, "language es");
    const asked = await sayAll(desk, "puesta en marcha", "hecho", "hecho", "hecho");
    expect(promptOf(asked)).toBe("¿Qué marca el manómetro con todo cerrado?");
    expect(textsOf(await desk.say("95 psi"))[0]).toBe(
      "Presión estática, medida: 95 psi no se acepta. Se acepta de 20 psi a 80 psi.",
    );
    await sayAll(desk, "el regulador llega mañana", "parar");
    const closed = await sayAll(desk, "cierre", "no", "marisol", "2026-12-01");
    expect(headlineOf(closed)).toBe("El trabajo 1001 se cierra con pendientes: 5.");
    const [post] = await desk.store.outbox.due(desk.now_ms);
    // The team reads in the company's language.
    expect(post?.post.card.title).toBe("Job 1001: closed with open items");
  });

  test("goes on where it was left, in another conversation and by somebody else", async () => {
    const desk = openJobDesk();
    await sayAll(desk, ...SURVEYED, "startup", "done", "done");
    await desk.say("job 1001", BEN, "c2");
    expect(promptOf(await desk.say("startup", BEN, "c2"))).toBe("Is every joint dry under full pressure?");
  });
});

describe("closing", () => {
  const SURVEYED = [...BEGIN, "survey model hollin-50, closed, 65 psi, set to 125F, 240 V"] as const;

  test("is not complete while somebody can be hurt by what is left; it has an owner and a day instead", async () => {
    const desk = openJobDesk();
    const card = await sayAll(desk, ...SURVEYED, "startup", "done", "stop", "done", "no");
    expect(promptOf(card)).toBe("Who sees to what is left?");
    const closed = await sayAll(desk, "marisol", "2026-12-01");
    expect(headlineOf(closed)).toBe("Job 1001 is closed with open items: 7.");
    const job = await jobOf(desk.store, "1001");
    expect(job?.status).toBe("open_items");
    expect(job?.items.map(({ id, owner, due }) => [id, owner, due])).toContainEqual([
      "outlet_temperature",
      "marisol",
      "2026-12-01",
    ]);
  });

  test("a day that has passed and an owner whom nobody knows are asked again", async () => {
    const desk = openJobDesk();
    const card = await sayAll(desk, ...SURVEYED, "startup", "done", "stop", "done", "no", "marisol", "2026-11-01");
    expect(textsOf(card)[0]).toContain("2026-11-01 has passed");
    expect((await jobOf(desk.store, "1001"))?.status).toBe("under_way");
  });

  test("without owner and day it is not closed, and says so", async () => {
    const desk = openJobDesk();
    const card = await sayAll(desk, ...SURVEYED, "startup", "done", "stop", "done", "no", "skip", "skip");
    expect(headlineOf(card)).toMatch(/^Not closed\./);
    expect((await jobOf(desk.store, "1001"))?.status).toBe("under_way");
    expect(await desk.store.outbox.due(desk.now_ms)).toEqual([]);
  });

  test("posts the summary once, in the same commit, and a later reading takes its place", async () => {
    const desk = openJobDesk();
    await sayAll(desk, ...SURVEYED, "startup", "done", "stop", "done", "yes", "marisol", "2026-12-01");
    const [post, ...more] = await desk.store.outbox.due(desk.now_ms);
    expect(more).toEqual([]);
    expect(post?.post).toMatchObject({ channel: { door: "web", id: "team" }, language: "en" });
    const [first, rest, ...others] = desk.store.commits.at(-1)?.posts ?? [];
    expect(others).toEqual([]);
    expect([first?.id, rest?.follows]).toEqual([post?.post.id, post?.post.id]);
    await sayAll(desk, "startup", "done", "done");
    const posts = desk.store.commits.flatMap((commit) => commit.posts ?? []);
    expect(new Set(posts.map(({ id }) => id)).size).toBe(posts.length);
    expect(posts.slice(2).map(({ updates }) => updates)).toEqual([first?.id, rest?.id, first?.id, rest?.id]);
  });

  test("where the company names no channel, the card says that nothing was posted", async () => {
    const { teamChannel: _, ...company } = TEAM_BOOKS.company;
    const desk = openJobDesk({ ...fixtureBooks, company });
    const card = await sayAll(desk, ...SURVEYED, "startup", "done", "stop", "done", "no", "marisol", "2026-12-01");
    expect(textsOf(card).at(-1)).toMatch(/^The summary was not posted/);
    expect(await desk.store.outbox.due(desk.now_ms)).toEqual([]);
  });

  test("undo does not pretend to open it again", async () => {
    const desk = openJobDesk();
    await sayAll(desk, ...SURVEYED, "startup", "done", "stop", "done", "no", "marisol", "2026-12-01");
    expect(textsOf(await desk.say("undo")).at(-1)).toMatch(/^Job 1001 stays as it was written down/);
    expect((await jobOf(desk.store, "1001"))?.status).toBe("open_items");
  });

  test("without an open job it says what to type", async () => {
    const desk = openJobDesk();
    const card = await desk.say("close out");
    expect(headlineOf(card)).toBe("No job is open here. Type “job” and its number first.");
    expect(buttonOf(card, "Jobs").say).toBe("job");
  });
});
