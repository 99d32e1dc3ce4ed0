import { describe, expect, test } from "vitest";
import { loadBooks } from "../../adapters/books/load-books.ts";
import type { Books } from "../../src/books/books.ts";
import type { Answer, NumberResult } from "../../src/declaration/answer.ts";
import type { FactValue } from "../../src/declaration/facts.ts";
import { runTopic } from "../../src/declaration/run-topic.ts";
import type { JobChange, JobEvent } from "../../src/jobs/job.ts";
import { projectJob } from "../../src/jobs/project-job.ts";
import { ROLES, type Role } from "../../src/ports/store.ts";
import { digest } from "../../src/topics/digest.ts";
import { library } from "../support/ask-library.ts";
import { openJobDesk, sayAll } from "../support/job-desk.ts";
import { headlineOf } from "../support/talk.ts";

const demo = await loadBooks(new URL("../../seeds", import.meta.url).pathname, library.cautions, library.faults);

function ask(facts: Readonly<Record<string, FactValue>>, role: Role = "manager", books: Books = demo): Answer {
  const known = Object.fromEntries(Object.entries(facts).map(([id, value]) => [id, { value, from: "asked" as const }]));
  const asker = { id: "x", name: "X", role };
  const { result } = runTopic(digest, known, { today: "2026-11-25", asker, ...books }, [], () => undefined);
  if (result.kind !== "answer") throw new Error(JSON.stringify(result));
  return result;
}
const numbers = ({ results }: Answer) =>
  Object.fromEntries(results.flatMap((one) => ("quantity" in one ? [[one.id, one.quantity.value]] : [])));
const rows = ({ tables = [] }: Answer, id: string) => tables.find((table) => table.id === id)?.rows ?? [];
const WEEK = { from: "2026-11-16", to: "2026-11-22" };

describe("a week of the demo company", () => {
  /*
   * Counted by hand in seeds/jobs.yaml. Closed: 1010 on the 17th, 1011 on the 18th, 1014 anew on the 19th. Opened: 1004, 1005.
   * Cancelled: 1008. Called back: 1014. Open at its end: an item of 1002 (due in October) and one of 1011. On site:
   * 1010 7:40-12:55, 1011 7:30-12:40, 1014 8:05-9:45. Marisol's licence and two things of Ebbe's end within 30
   * days, two courses within 60, six calibrations and a driver's licence within 90.
   */
  test("comes to the figures that were counted by hand", () => {
    expect(numbers(ask(WEEK))).toEqual({
      finished: 3,
      open_items: 2,
      overdue: 1,
      callbacks: 1,
      opened: 2,
      cancelled: 1,
      first_visit: 1,
      not_accepted: 0,
      on_site: (5 * 60 + 15 + 5 * 60 + 10 + 60 + 40) * 60,
      lapses_30: 3,
      lapses_60: 5,
      lapses_90: 12,
    });
  });

  test("sets counts beside each other and no percentage where they are small", () => {
    const { findings } = ask(WEEK);
    expect(findings).toContainEqual({
      code: "first_visits",
      data: { some: { kind: "count", value: 1 }, all: { kind: "count", value: 2 } },
    });
    expect(findings.map(({ code }) => code)).toContain("few_for_share");
    expect(findings.map(({ code }) => code)).not.toContain("share_is");
  });

  test("names the cause of a call-back that was found since, and its model", () => {
    const [row = []] = rows(ask(WEEK), "callbacks");
    expect(row[0]).toBe("1014");
    expect(row[2]).toBe("Hollin 50");
    expect(row[4]).toMatchObject({ code: "cause", data: { en: "Condensate drain clogged" } });
  });

  test("every number opens to as many jobs as it counts", () => {
    const counted = numbers(ask(WEEK));
    for (const figure of ["finished", "opened", "cancelled", "open_items", "overdue", "callbacks"] as const)
      expect(rows(ask({ ...WEEK, show: figure }), "jobs").length, figure).toBe(counted[figure]);
    const { next = [] } = ask({ ...WEEK, show: "finished" });
    expect(next.map(({ request }) => request)).toEqual([
      "job number=1010",
      "job number=1011",
      "job number=1014",
      `digest from=${WEEK.from} to=${WEEK.to}`,
    ]);
  });

  test("the week of a day, the last week and the days themselves are one period", () => {
    const said = [WEEK, { span: "week", day: "2026-11-18" }, { span: "last_week" }].map((facts) => numbers(ask(facts)));
    expect(said[1]).toEqual(said[0]);
    expect(said[2]).toEqual(said[0]);
  });

  test("the days of a week add up to what happened in it", () => {
    const days = ["16", "17", "18", "19", "20", "21", "22"].map((day) => numbers(ask({ day: `2026-11-${day}` })));
    for (const id of ["finished", "callbacks", "opened", "cancelled", "on_site"] as const)
      expect(
        days.reduce((sum, day) => sum + (day[id] ?? 0), 0),
        id,
      ).toBe(numbers(ask(WEEK))[id]);
  });
});

describe("who sees what", () => {
  const OUTCOMES = ["first_visit", "not_accepted", "on_site"];
  test.each(ROLES)("%s", (role) => {
    const answer = ask(WEEK, role);
    const seen = Object.keys(numbers(answer));
    if (role === "technician") {
      expect(answer.headline.code).toBe("for_the_office");
      expect([seen, answer.tables ?? []]).toEqual([[], []]);
      expect(answer.next?.map(({ request }) => request)).toEqual(["today"]);
      return;
    }
    expect(seen).toContain("finished");
    expect(OUTCOMES.every((id) => seen.includes(id))).toBe(role !== "dispatcher");
    expect(rows(answer, "measured").length > 0).toBe(role !== "dispatcher");
  });

  test("a dispatcher who asks for the time on site is told who may see it, in the sheet too", () => {
    expect(ask({ ...WEEK, show: "on_site" }, "dispatcher").headline.code).toBe("not_this_figure");
    expect(sheetOf(ask({ ...WEEK, csv: true }, "dispatcher")).columns).not.toContain("hours_on_site");
    expect(ask({ ...WEEK, csv: true }, "technician").acts).toBeUndefined();
  });
});

function sheetOf({ acts = [] }: Answer) {
  const [act] = acts;
  if (act?.kind !== "paper" || act.paper.kind !== "sheet") throw new Error("no sheet");
  return act.paper;
}

test("the sheet has a row a job, its columns named once, and adds up to the figures", () => {
  const { name, columns, rows: lines } = sheetOf(ask({ ...WEEK, csv: true }));
  expect(name).toBe("digest-2026-11-16-to-2026-11-22");
  expect(new Set(columns).size).toBe(columns.length);
  expect(lines.every((line) => line.length === columns.length)).toBe(true);
  const column = (id: string) => lines.map((line) => line[columns.indexOf(id)] ?? "");
  expect(column("job")).toEqual(["1002", "1004", "1005", "1008", "1010", "1011", "1014"]);
  const sum = (id: string) => column(id).reduce((all, cell) => all + Number(cell), 0);
  expect(sum("call_backs")).toBe(1);
  expect(sum("open_items")).toBe(2);
  expect(sum("hours_on_site")).toBeCloseTo(12 + 5 / 60, 1);
  expect(column("finished_day").filter((day) => day !== "")).toEqual(["2026-11-17", "2026-11-18", "2026-11-19"]);
});

describe("periods that cannot be counted", () => {
  const refuse = (facts: Readonly<Record<string, string>>) => {
    const known = Object.fromEntries(
      Object.entries(facts).map(([id, value]) => [id, { value, from: "asked" as const }]),
    );
    const { result } = runTopic(digest, known, { ...demo, today: "2026-11-25" }, [], () => undefined);
    return result.kind === "out-of-range" ? result.reason?.code : result.kind;
  };
  test("say what to write instead", () => {
    expect(refuse({ from: "2026-11-20", to: "2026-11-19" })).toBe("from_after_to");
    expect(refuse({ to: "2026-11-19" })).toBe("from_missing");
    expect(refuse({ from: "2020-01-01" })).toBe("too_long");
    expect(ask({ day: "2026-12-24" }).findings.map(({ code }) => code)).toContain("lies_ahead");
    expect(ask({ span: "week" }).findings.map(({ code }) => code)).toContain("running");
  });
});

describe("a record written for the purpose", () => {
  const at = (written: string) => Date.parse(`${written}:00-06:00`);
  let number = 0;
  const told = (job: string, entries: readonly (readonly [string, JobChange, number?])[]): readonly JobEvent[] =>
    entries.map(([when, change, amends], index) => ({
      number: index + 1,
      job,
      change,
      ...(amends !== undefined && { amends }),
      by: "B",
      person: "b",
      at_ms: at(when),
      door: "web",
    }));
  const status = (to: "under_way" | "complete" | "open_items" | "called_back"): JobChange => ({
    kind: "status",
    status: to,
  });
  const reading = (measured: number, expected: number, isAccepted = true): JobChange => ({
    kind: "reading",
    reading: {
      id: "line_pressure",
      quantity: { kind: "pressure", value: measured },
      expected: { kind: "pressure", value: expected },
      isAccepted,
    },
  });
  const opened = (): JobChange => ({ kind: "opened", customer: "A. B.", place: "Ostrowick" });
  const booksOf = (...jobs: readonly (readonly JobEvent[])[]): Books => ({
    ...demo,
    jobs: jobs.flatMap((events) => projectJob(events) ?? []),
    jobEvents: jobs.flat(),
  });
  const month = { from: "2026-11-01", to: "2026-11-30" };

  test("a close at one minute to midnight belongs to its day, whatever UTC says", () => {
    const books = booksOf(
      told("1", [
        ["2026-11-10T08:00", opened()],
        ["2026-11-10T20:00", status("under_way")],
        ["2026-11-10T23:59", status("complete")],
      ]),
    );
    expect(numbers(ask({ day: "2026-11-10" }, "manager", books))["finished"]).toBe(1);
    expect(numbers(ask({ day: "2026-11-11" }, "manager", books))["finished"]).toBe(0);
  });

  test("a reading that was amended or taken again counts once, with its last value", () => {
    const five = [101, 102, 103, 104, 90].map((value) =>
      told(String(++number), [
        ["2026-11-10T08:00", opened()],
        ["2026-11-10T09:00", status("under_way")],
        ["2026-11-10T09:10", reading(500, 100, false)],
        ["2026-11-10T09:20", reading(400, 100, false), 3],
        ["2026-11-10T09:30", reading(value, 100, value > 95)],
      ]),
    );
    const [row = []] = rows(ask(month, "manager", booksOf(...five)), "measured");
    // Of 1, 2, 3, 4 and -10 % the middle one is 2 %, the farthest -10 %; one is not accepted.
    expect(row.slice(1)).toEqual([
      { kind: "count", value: 5 },
      { kind: "count", value: 5 },
      { kind: "share", value: expect.closeTo(0.02, 12) },
      { kind: "share", value: expect.closeTo(-0.1, 12) },
      { kind: "count", value: 1 },
    ]);
  });

  test("a visit that nobody ended does not run on overnight", () => {
    const books = booksOf(
      told("1", [
        ["2026-11-10T08:00", opened()],
        ["2026-11-10T09:00", status("under_way")],
        ["2026-11-10T11:00", { kind: "note", text: "tank in" }],
        ["2026-11-12T08:00", { kind: "note", text: "wired" }],
        ["2026-11-12T09:30", status("complete")],
        ["2026-11-13T09:30", { kind: "note", text: "not on site any more" }],
      ]),
    );
    expect(numbers(ask(month, "manager", books))["on_site"]).toBe((2 + 1.5) * 3600);
  });

  test("from twenty jobs on a share is given, with what chance alone would allow", () => {
    const jobs = Array.from({ length: 20 }, (_, index) =>
      told(String(100 + index), [
        ["2026-11-10T08:00", opened()],
        ["2026-11-10T09:00", status("under_way")],
        ["2026-11-10T12:00", status("complete")],
        ...(index < 2 ? ([["2026-11-20T12:00", status("called_back")]] as const) : []),
      ]),
    );
    const said = ask(month, "manager", booksOf(...jobs)).findings;
    const shares = said.flatMap((one) => (one.code === "share_is" ? [one.data["share"]] : []));
    expect(shares).toEqual([
      { kind: "share", value: 1 },
      { kind: "share", value: 0.1 },
    ]);
    expect(said.map(({ code }) => code)).not.toContain("few_for_share");
  });
});

test("at the desk it is the role in the records that counts", async () => {
  const desk = openJobDesk();
  await sayAll(desk, "job new", "T. M.", "Ostrowick", "tomorrow");
  const refused = await desk.say("digest week");
  expect(headlineOf(refused)).toMatch(/^The digest is for the manager and the owner/);
  expect(JSON.stringify(refused)).not.toContain("T. M.");
  expect(headlineOf(await desk.say("hoy"))).toBe("Ana, the company's books do not know you yet.");
});

test("every number says how it is counted and from which records", () => {
  for (const { how } of ask(WEEK).results as readonly NumberResult[]) {
    expect(how.equation).toMatch(/^(n|sum)/);
    expect(how.sources[0].document).toBe("The company's own records");
  }
});
