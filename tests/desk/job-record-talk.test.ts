import { describe, expect, test } from "vitest";
import type { Card } from "../../src/messages/card.ts";
import type { Caller } from "../../src/ports/store.ts";
import { ANA, BEN, jobOf, openJobDeskOn, sayAll, TEAM_BOOKS } from "../support/job-desk.ts";
import { createMemoryStore } from "../support/memory-store.ts";
import { buttonOf, buttonsOf, headlineOf, promptOf, textsOf } from "../support/talk.ts";

const LEE: Caller = { ...ANA, user: "U3", name: "Lee" };
const BEGIN = ["job new", "T. M.", "Ostrowick", "2026-12-01"] as const;

/** Ana and Ben are technicians, Lee is a manager. */
function openDesk() {
  return openJobDeskOn(createMemoryStore({ U3: "manager" }), TEAM_BOOKS);
}
const rowsOf = (card: Card) => card.blocks.flatMap((block) => (block.kind === "rows" ? block.rows : []));
const tablesOf = (card: Card) => card.blocks.flatMap((block) => (block.kind === "table" ? [block] : []));

describe("the history of a job", () => {
  test("tells who, when where the company is, at which door and what, newest last", async () => {
    const desk = openDesk();
    await sayAll(desk, ...BEGIN, "job note the side gate sticks");
    const card = await desk.say("job history");
    expect(headlineOf(card)).toBe("Job 1001: 2 entries.");
    expect(rowsOf(card).map(({ label, value }) => `${label} ${value}`)).toEqual([
      "1 25 Nov 14:06, Ana, Slack: begun for T. M., Ostrowick, 2026-12-01",
      "2 25 Nov 14:07, Ana, Slack: note: “the side gate sticks”",
    ]);
  });

  test("folds the older entries of a long one, and loses none", async () => {
    const desk = openDesk();
    await sayAll(desk, ...BEGIN);
    for (let at = 1; at <= 12; at++) await desk.say(`job note stair ${at}`);
    const card = await desk.say("history 1001");
    const blocks = card.blocks.flatMap((block) => (block.kind === "rows" ? [block] : []));
    expect(blocks.map(({ isDetail }) => isDetail === true)).toEqual([false, true]);
    expect(blocks[0]?.rows.at(-1)?.label).toBe("13");
    expect(
      rowsOf(card)
        .map(({ label }) => Number(label))
        .sort((a, b) => a - b),
    ).toEqual(Array.from({ length: 13 }, (_, at) => at + 1));
  });

  test("strikes what was put right and what was taken back, in words", async () => {
    const desk = openDesk();
    await sayAll(desk, ...BEGIN, "job note 22 in wide", 'job amend 2 "29 in wide"', "job note another house");
    await desk.say("job withdraw 4 because it was another house");
    const notes = Object.fromEntries(rowsOf(await desk.say("job history")).map(({ label, note }) => [label, note]));
    expect(notes).toMatchObject({
      2: "no longer counts: put right by entry 3",
      3: "puts entry 2 right",
      4: "no longer counts: taken back by entry 5",
      5: "puts entry 4 right",
    });
    expect((await jobOf(desk.store, "1001"))?.notes.map(({ text }) => text)).toEqual(["29 in wide"]);
  });

  test("in Spanish too", async () => {
    const desk = openDesk();
    await sayAll(desk, ...BEGIN, "language es", "trabajo nota el portón se atora");
    const card = await desk.say("historial 1001");
    expect(headlineOf(card)).toBe("Trabajo 1001: 2 anotaciones.");
    expect(rowsOf(card).at(-1)?.value).toContain("nota: «el portón se atora»");
  });
});

describe("a job begun in one line", () => {
  test.each([
    ["job new T. M. Ostrowick 2026-11-27", { customer: "T. M.", place: "Ostrowick", day: "2026-11-27" }],
    ["trabajo nuevo para Tia Zoraida, Ostrowick 2026-11-27", { customer: "Tia Zoraida", place: "Ostrowick" }],
  ])("%s", async (text, kept) => {
    const desk = openDesk();
    await desk.say(text);
    expect(await jobOf(desk.store, "1001")).toMatchObject(kept);
  });

  test("asks for whom when more is said than initials or a nickname, and keeps nothing of it", async () => {
    const desk = openDesk();
    await desk.say("job new Theodora Maplethorpe of Elm Street 12, Ostrowick");
    expect(await jobOf(desk.store, "1001")).toBeUndefined();
  });
});

describe("putting an entry right", () => {
  const told = (card: Card) => textsOf(card).slice(-2);

  test.each([
    ["a note", "job note 22 in wide", "29 in wide", "note: “22 in wide”", "note: “29 in wide”"],
    ["a permit", "job permit P-1", "P-2", "permit: P-1", "permit: P-2"],
    ["a unit", "job unit=hollin-50", "hollin-80", "unit: Hollin 50", "unit: Hollin 80"],
    [
      "one of several facts",
      "expansion closed, 65 psi, tank 50 gal, set to 125F",
      "line pressure 70 psi",
      "Tank: 50 gal; Tank temperature: 125 °F; Line pressure: 65 psi; Closed system: Yes",
      "Tank: 50 gal; Tank temperature: 125 °F; Line pressure: 70 psi; Closed system: Yes",
    ],
    [
      "an item's owner and day",
      "job item strap the tank, marisol, 2026-12-02",
      "wren, 2026-12-03",
      "open item: strap the tank, marisol, by 2026-12-02",
      "open item: strap the tank, wren, by 2026-12-03",
    ],
  ])("says of %s what stood and what stands now", async (_, first, right, was, is) => {
    const desk = openDesk();
    await sayAll(desk, ...BEGIN, first);
    const card = await desk.say(`job amend 2 ${right}`);
    expect(headlineOf(card)).toBe("Entry 2 of job 1001 is put right.");
    expect(told(card)).toEqual([`Entry 2, before: ${was}`, `Entry 2, now: ${is}`]);
  });

  test("judges a reading anew, and the summary of a closed job follows", async () => {
    const desk = openDesk();
    const survey = "survey model hollin-50, closed, 65 psi, set to 125F, 240 V";
    await sayAll(desk, ...BEGIN, survey, "startup", "done", "done", "done", "95 psi", "valve on order", "stop");
    await sayAll(desk, "done", "no", "marisol", "2026-12-01");
    const reading = (await (await desk.store.openWorkspace(ANA)).jobHistory("1001")).findLast(
      ({ change }) => change.kind === "reading",
    );
    const posts = () => desk.store.commits.flatMap((commit) => commit.posts ?? []);
    const before = posts().length;
    const card = await desk.say(`job amend ${reading?.number} 70 psi`);
    expect(told(card).join(" ")).toContain("70 psi (accepted)");
    expect((await jobOf(desk.store, "1001"))?.readings["line_pressure"]).toMatchObject({ isAccepted: true });
    expect(
      posts()
        .slice(before)
        .map(({ updates }) => updates),
    ).toEqual([posts()[0]?.id, posts()[1]?.id]);
  });

  test("asks for what is right when only the number is said", async () => {
    const desk = openDesk();
    await sayAll(desk, ...BEGIN, "job note 22 in wide");
    expect(promptOf(await desk.say("job amend 2"))).toBe("What is right instead?");
    await desk.say("29 in wide");
    expect((await jobOf(desk.store, "1001"))?.notes.map(({ text }) => text)).toEqual(["29 in wide"]);
  });

  test("refuses another's words, a value of another kind, an entry that is not there and a status", async () => {
    const desk = openDesk();
    await sayAll(desk, ...BEGIN, "expansion closed, 65 psi, tank 50 gal, set to 125F", "survey room garage, 2 people");
    await desk.say("job 1001", BEN, "c2");
    expect(textsOf(await desk.say("job amend 2 line pressure 70 psi", BEN, "c2"))[0]).toBe(
      "Ana wrote this. Ask them, or a manager, to put it right.",
    );
    expect(headlineOf(await desk.say("job amend 2 blue"))).toMatch(/^“blue” cannot stand in entry 2/);
    expect(headlineOf(await desk.say("job amend 77 blue"))).toMatch(/^There is no entry 77/);
    const status = (await (await desk.store.openWorkspace(ANA)).jobHistory("1001")).find(
      ({ change }) => change.kind === "status",
    );
    expect(headlineOf(await desk.say(`job amend ${status?.number} planned`))).toMatch(/can only be taken back/);
    expect((await jobOf(desk.store, "1001"))?.facts["line_pressure"]?.value).toBeCloseTo(448, 0);
  });

  test("a later note never changes the one before it, nor another job's", async () => {
    const desk = openDesk();
    await sayAll(desk, ...BEGIN, "job note first", "note second", "job leave", "job new", "B. K.", "Saltmere", "skip");
    await desk.say("1001");
    expect((await jobOf(desk.store, "1001"))?.notes.map(({ text }) => text)).toEqual(["first", "second"]);
    expect((await jobOf(desk.store, "1002"))?.notes).toEqual([]);
  });

  test("undo takes a note back, and says that what was put right stays", async () => {
    const desk = openDesk();
    await sayAll(desk, ...BEGIN, "job note first", "undo");
    expect((await jobOf(desk.store, "1001"))?.notes).toEqual([]);
    await sayAll(desk, "job note 22", "job amend 4 29");
    expect(textsOf(await desk.say("undo")).at(-1)).toMatch(/^Job 1001 stays as it was written down/);
    expect((await jobOf(desk.store, "1001"))?.notes.map(({ text }) => text)).toEqual(["29"]);
  });
});

describe("what the office does with a job", () => {
  const lee = (desk: ReturnType<typeof openDesk>) => ({ say: (text: string) => desk.say(text, LEE, "c9") });

  test("plans day and people, and only the office may", async () => {
    const desk = openDesk();
    await sayAll(desk, ...BEGIN);
    expect(textsOf(await desk.say("job 1001 day=2026-12-04 people=wren, ebbe"))[0]).toMatch(/^This is for: dispatcher/);
    const card = await lee(desk).say("job 1001 day=2026-12-04 people=wren, ebbe");
    expect(headlineOf(card)).toBe("Job 1001 is planned for 2026-12-04: wren, ebbe.");
    expect(await jobOf(desk.store, "1001")).toMatchObject({ day: "2026-12-04", people: ["wren", "ebbe"] });
    await lee(desk).say("job 1001 people=marisol");
    expect(await jobOf(desk.store, "1001")).toMatchObject({ day: "2026-12-04", people: ["marisol"] });
    expect(textsOf(await lee(desk).say("job 1001 day=2020-01-01")).join(" ")).toContain("2020-01-01 has passed");
    expect(textsOf(await lee(desk).say("job 1001 people=nobody")).join(" ")).toContain("There is nobody “nobody”");
  });

  test("calls off with why, which is asked, and puts back", async () => {
    const desk = openDesk();
    await sayAll(desk, ...BEGIN);
    expect(promptOf(await lee(desk).say("job 1001 cancel"))).toBe("Why is it called off?");
    await lee(desk).say("the house was sold");
    expect((await jobOf(desk.store, "1001"))?.status).toBe("cancelled");
    await lee(desk).say("job 1001 reopen");
    expect((await jobOf(desk.store, "1001"))?.status).toBe("planned");
    await lee(desk).say("job 1001 cancel");
    expect(textsOf(await lee(desk).say("skip"))[0]).toMatch(/^Say why the job is cancelled/);
  });

  test("writes into another job without turning the talk away from the one that is open", async () => {
    const desk = openDesk();
    await sayAll(desk, ...BEGIN, "job new", "B. K.", "Saltmere", "skip");
    const card = await desk.say("job 1001 note the part is here");
    expect(textsOf(card)[0]).toBe("Written into job 1001. Job 1002 stays the open one.");
    await desk.say("expansion closed, 65 psi, tank 50 gal, set to 125F");
    expect((await jobOf(desk.store, "1001"))?.facts).toEqual({});
    expect((await jobOf(desk.store, "1002"))?.facts).toHaveProperty("line_pressure");
  });

  test("a call-back asks what the customer says, and the fault walk begins with it", async () => {
    const desk = openDesk();
    await sayAll(desk, ...BEGIN);
    const workspace = await desk.store.openWorkspace(LEE);
    const { id } = await workspace.findPerson(LEE);
    await workspace.commit({
      person: { id, name: "Lee", role: "manager", language: "en", units: "us" },
      conversation: "elsewhere",
      delivery: "closing",
      at_ms: desk.now_ms,
      text: "",
      card: { title: "", blocks: [], summary: "" },
      state: { walksStarted: 0, past: [] },
      jobs: [
        { job: "1001", change: { kind: "status", status: "under_way" } },
        { job: "1001", change: { kind: "status", status: "complete" } },
      ],
    });
    const shown = await desk.say("job 1001");
    expect(promptOf(await desk.press(buttonOf(shown, "Customer called again")))).toBe("What does the customer say?");
    const card = await desk.say("runs cold in the morning");
    expect(headlineOf(card)).toBe("Job 1001 is a call-back: “runs cold in the morning”.");
    const fault = await desk.press(buttonOf(card, "Find the fault"));
    expect(fault.title).toBe("Find a fault");
    expect(textsOf(fault).join(" ")).toContain("Heard: ");
    expect(textsOf(await desk.say("job 1001"))).toContain("The customer says: “runs cold in the morning”.");
  });
});

describe("open items", () => {
  test("are added with owner and day, asked where missing, and closed by number, words or button", async () => {
    const desk = openDesk();
    await sayAll(desk, ...BEGIN, "job item insulate the hot pipe, marisol by 2026-12-02", "job item strap the tank");
    expect(promptOf(await desk.say("ebbe"))).toBe("By which day?");
    await sayAll(desk, "2026-11-30", "job item label the valve owner=wren due=2026-12-03");
    const list = await desk.say("job item done");
    expect(tablesOf(list)[0]?.rows).toEqual([
      ["1", "strap the tank", "ebbe", "2026-11-30"],
      ["2", "insulate the hot pipe", "marisol", "2026-12-02"],
      ["3", "label the valve", "wren", "2026-12-03"],
    ]);
    await desk.say("job item done insulate the hot pipe");
    await desk.press(buttonOf(await desk.say("job item done"), "Done: 1"));
    const last = await desk.say("job item done 1");
    expect(textsOf(last)).toContain("Nothing is left open. Close the job out to make it complete.");
    expect(textsOf(last).at(-1)).toBe("Item closed: label the valve.");
    expect((await jobOf(desk.store, "1001"))?.items.every(({ closed }) => closed !== undefined)).toBe(true);
  });

  test("of all jobs stand with the longest overdue first", async () => {
    const desk = openDesk();
    await sayAll(desk, ...BEGIN, "job item strap the tank, ebbe, 2026-12-05");
    await sayAll(desk, "job new", "B. K.", "Saltmere", "skip", "job item label the valve, wren, 2026-11-26");
    desk.now_ms += 3 * 86_400_000;
    const card = await desk.say("jobs open items");
    expect(headlineOf(card)).toBe("Open items: 2. Overdue: 1.");
    expect(tablesOf(card)[0]?.rows).toEqual([
      ["1002", "label the valve", "wren", "2026-11-26, overdue"],
      ["1001", "strap the tank", "ebbe", "2026-12-05"],
    ]);
    expect(rowsOf(await desk.say("job 1002")).find(({ label }) => label === "label the valve")).toMatchObject({
      note: "overdue",
    });
  });
});

describe("lists of jobs", () => {
  test("by day, by person and by how they stand; a phone shows eight", async () => {
    const desk = openDesk();
    for (let at = 0; at < 10; at++) await sayAll(desk, "job new", "T. M.", "Ostrowick", `2026-12-${10 + at}`);
    await desk.say("job 1003 day=2026-11-25 people=wren", LEE, "c9");
    const numbers = (card: Card) => tablesOf(card).map(({ rows }) => rows.map(([number]) => number));
    expect(numbers(await desk.say("jobs today"))).toEqual([["1003"]]);
    expect(numbers(await desk.say("jobs wren"))).toEqual([["1003"]]);
    expect(numbers(await desk.say("jobs 2026-12-10"))).toEqual([["1001"]]);
    expect(textsOf(await desk.say("jobs called back"))).toContain("There are none.");
    const all = await desk.say("jobs");
    expect(numbers(all).map((rows) => rows.length)).toEqual([8, 2]);
    expect(tablesOf(all).map(({ isDetail }) => isDetail === true)).toEqual([false, true]);
    expect(numbers(await desk.say("trabajos de hoy"))).toEqual([["1003"]]);
  });
});

describe("a number", () => {
  test.each(["1001", "#1001", "job #1001", "job 1001", "trabajo 1001", "Job 1001?"])(
    "%s opens the job",
    async (text) => {
      const desk = openDesk();
      await sayAll(desk, ...BEGIN, "job leave", "expansion closed, 65 psi, tank 50 gal, set to 125F");
      expect(headlineOf(await desk.say(text))).toBe("Job 1001: T. M., Ostrowick.");
    },
  );

  test("that nobody has says so; one that may be a quantity stays one", async () => {
    const desk = openDesk();
    await sayAll(desk, ...BEGIN);
    for (const text of ["4711", "#4711", "job 4711"])
      expect(headlineOf(await desk.say(text)), text).toMatch(/^There is no job “4711”/);
    await sayAll(desk, "job leave", "expansion closed, 65 psi, set to 125F");
    const card = await desk.say("80");
    expect(buttonsOf(card).length).toBeGreaterThan(0);
    expect(card.title).not.toBe("Job");
  });
});
