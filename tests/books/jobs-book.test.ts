import { cp, mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { loadBooks } from "../../adapters/books/load-books.ts";
import { openStore } from "../../adapters/database/open-store.ts";
import { JOB_STATUSES } from "../../src/jobs/job.ts";
import { exchangeOf } from "../support/store-samples.ts";

const SEEDS = new URL("../../seeds", import.meta.url).pathname;
const HEAD = `invented: true\njobs:\n  - number: "7"\n    entries:\n`;
const OPENED = `      - { at: "2026-11-02T08:10-06:00", by: lupe, door: slack, kind: opened, customer: T. M., place: Here }\n`;
const entry = (rest: string, by = "lupe", at = "2026-11-02T09:00-06:00") =>
  `      - { at: "${at}", by: ${by}, door: slack, ${rest} }\n`;

let folder = "";
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), "oldhand-jobs-"));
});
afterEach(() => rm(folder, { recursive: true }));

async function faultOf(jobs: string): Promise<string> {
  await cp(SEEDS, folder, { recursive: true });
  await writeFile(join(folder, "jobs.yaml"), jobs);
  const error: unknown = await loadBooks(folder).catch((fault: unknown) => fault);
  return error instanceof Error ? error.message.replaceAll(`${folder}/`, "") : "no fault";
}

describe("the demo jobs", () => {
  test("show every status, and jobs with facts, readings, an amendment and open items", async () => {
    const { jobs, jobEvents, people } = await loadBooks(SEEDS);
    expect(jobs.length).toBeGreaterThanOrEqual(8);
    expect(new Set(jobs.map(({ status }) => status))).toEqual(new Set(JOB_STATUSES));
    expect(jobs.filter(({ facts }) => Object.keys(facts).length > 0).length).toBeGreaterThan(2);
    expect(jobs.filter(({ readings }) => Object.keys(readings).length > 0).length).toBeGreaterThan(2);
    expect(jobEvents.some(({ amends }) => amends !== undefined)).toBe(true);
    const names = new Map(people.map(({ id, name }) => [id, name]));
    expect(jobEvents.filter(({ person, by }) => names.get(person) !== by)).toEqual([]);
  });

  test("numbers are read into base units: 66 psi is 455 kPa", async () => {
    const { jobs } = await loadBooks(SEEDS);
    const reading = jobs.find(({ number }) => number === "1001")?.readings["line_pressure"];
    // 1 psi = 6.894757 kPa: NIST SP 811 (2008), appendix B.8.
    expect(reading?.quantity.value).toBeCloseTo(66 * 6.894757, 3);
  });

  test("are where the record of an empty workspace begins, and never overwrite it", async () => {
    const books = await loadBooks(SEEDS);
    const settings = { path: join(folder, "a.sqlite"), books, ownOrganisations: [] };
    const caller = { door: "web", organisation: "local", user: "ebbe", name: "Ebbe" } as const;
    const first = await openStore(settings);
    const workspace = await first.openWorkspace(caller);
    expect(await workspace.listJobs({})).toHaveLength(books.jobs.length);
    for (const job of books.jobs) expect(await workspace.findJob(job.number)).toEqual(job);
    const history = await workspace.jobHistory("1002");
    expect(history).toEqual(books.jobEvents.filter(({ job }) => job === "1002"));
    const ebbe = await workspace.findPerson(caller);
    const said = { job: "1004", change: { kind: "note", text: "new since" } } as const;
    await workspace.commit(exchangeOf(ebbe, { jobs: [said] }));
    await first.close();
    const again = await openStore(settings);
    const reopened = await again.openWorkspace(caller);
    expect((await reopened.findJob("1004"))?.notes.map(({ text }) => text)).toEqual(["new since"]);
    expect(await reopened.nextJobNumber()).toBe("1015");
    await again.close();
  });
});

describe("a book of jobs", () => {
  test("may be missing", async () => {
    await cp(SEEDS, folder, { recursive: true });
    await rm(join(folder, "jobs.yaml"));
    expect(await loadBooks(folder)).toMatchObject({ jobs: [], jobEvents: [] });
  });

  test.each([
    {
      name: "a time before the last",
      text: entry("kind: note, text: x", "lupe", "2026-11-01T09:00-06:00"),
      fault: "is earlier than the entry before it",
    },
    {
      name: "a step that is none",
      text: entry("kind: status, status: complete"),
      fault: "The job is planned and cannot become complete. From here it can be: surveyed, under way, cancelled.",
    },
    { name: "an amendment of nothing", text: entry("kind: note, text: x, amends: 5"), fault: "There is no entry 5" },
    {
      name: "a number without its unit",
      text: entry("kind: reading, id: a, measured: { pressure: 60 }, accepted: true"),
      fault: `measured: "60": write a number with its unit`,
    },
    {
      name: "a kind of quantity that is none",
      text: entry("kind: facts, topic: room, facts: { a: { loudness: 3 } }"),
      fault: "write a word, true, false, or: write a kind and a number with its unit",
    },
    { name: "a kind of entry that is none", text: entry("kind: party"), fault: "write what kind of entry it is" },
    {
      name: "a moment without its offset",
      text: entry("kind: note, text: x", "lupe", "2026-11-03T09:00"),
      fault: "write a moment",
    },
  ])("is refused for $name, in the line where it stands", async ({ text, fault }) => {
    const said = await faultOf(HEAD + OPENED + text);
    expect(said).toMatch(/^jobs\.yaml line 6: jobs\.0\.entries\.1/);
    expect(said).toContain(fault);
  });

  test.each(["Anna Maria Smith", `"555 0100"`, "a@b.example"])("does not take %s for a customer", async (name) => {
    const fault = await faultOf(HEAD + OPENED.replace("T. M.", name));
    expect(fault).toContain("line 5: jobs.0.entries.0.customer: write initials or a nickname only");
  });

  test.each([
    { text: entry("kind: note, text: x", "zoe"), fault: "zoe is nobody in people.yaml" },
    { text: entry("kind: planned, day: 2026-12-01, people: [zoe]"), fault: "zoe is nobody in people.yaml" },
    { text: entry("kind: unit, model: x-1"), fault: "x-1 is no model of the catalogue" },
  ])("begins no record with a name that nobody has, and does no harm once there is one ($fault)", async (given) => {
    expect(await faultOf(HEAD + OPENED)).toBe("no fault");
    const settings = { path: join(folder, "a.sqlite"), ownOrganisations: [] };
    const good = await loadBooks(folder);
    expect(await faultOf(HEAD + OPENED + given.text)).toBe("no fault");
    const strange = await loadBooks(folder);
    await expect(openStore({ ...settings, books: strange })).rejects.toThrow(`job 7, entry 2: ${given.fault}`);
    await (await openStore({ ...settings, books: good })).close();
    await (await openStore({ ...settings, books: strange })).close();
  });

  test("has each number once", async () => {
    const twice = HEAD + OPENED + HEAD.slice(HEAD.indexOf("  - number")) + OPENED;
    expect(await faultOf(twice)).toBe("jobs.yaml line 6: jobs.1.number: 7 is taken above");
  });
});
