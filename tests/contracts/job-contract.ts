import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { JobChange, JobEntry } from "../../src/jobs/job.ts";
import { projectJob } from "../../src/jobs/project-job.ts";
import type { Caller, Person, WorkspaceStore } from "../../src/ports/store.ts";
import { anyChange } from "../support/job-samples.ts";
import { ANN, BEN, exchangeOf, STRANGER } from "../support/store-samples.ts";

type Meet = (caller: Caller) => Promise<{ readonly workspace: WorkspaceStore; readonly person: Person }>;

const open = (job: string, day?: string): JobEntry => ({
  job,
  change: { kind: "opened", customer: "T. M.", place: "Testbench", ...(day !== undefined && { day }) },
});
const add = (job: string, change: JobChange, more: Partial<JobEntry> = {}): JobEntry => ({ job, change, ...more });
const note = (text: string): JobChange => ({ kind: "note", text });
const status = (to: "under_way" | "complete"): JobChange => ({ kind: "status", status: to });

/** What every store must do with jobs. */
export function describeJobContract(meet: Meet): void {
  describe("jobs", () => {
    checkRecord(meet);
    checkVersions(meet);
    checkLists(meet);
    checkNumbers(meet);
  });
}

async function write(meet: Meet, ...jobs: readonly JobEntry[]) {
  const met = await meet(ANN);
  await met.workspace.commit(exchangeOf(met.person, { jobs }));
  return met;
}

function checkRecord(meet: Meet): void {
  test("what was written into a job comes back as the job and as its history", async () => {
    const { workspace, person } = await meet(ANN);
    const jobs = [open("1"), add("1", { kind: "facts", topic: "room", facts: { where: "closet", volume: 2.5 } })];
    await workspace.commit(exchangeOf(person, { jobs, at_ms: 7 }));
    const fact = { topic: "room", by: "Ann", at_ms: 7 };
    expect(await workspace.findJob("1")).toMatchObject({
      number: "1",
      version: 2,
      facts: { where: { value: "closet", ...fact }, volume: { value: 2.5, ...fact } },
    });
    const who = { job: "1", by: "Ann", person: person.id, at_ms: 7, door: "slack" };
    expect(await workspace.jobHistory("1")).toEqual([
      { number: 1, change: jobs[0]?.change, ...who },
      { number: 2, change: jobs[1]?.change, ...who },
    ]);
  });

  test("a job that nobody opened is unknown", async () => {
    const { workspace } = await meet(ANN);
    expect(await workspace.findJob("1")).toBeUndefined();
    expect(await workspace.jobHistory("1")).toEqual([]);
  });

  test("everybody of a workspace sees its jobs, and nobody else", async () => {
    await write(meet, open("1"));
    const [ben, stranger] = [await meet(BEN), await meet(STRANGER)];
    expect(await ben.workspace.findJob("1")).toMatchObject({ number: "1" });
    expect(await stranger.workspace.findJob("1")).toBeUndefined();
    expect(await stranger.workspace.jobHistory("1")).toEqual([]);
    expect(await stranger.workspace.listJobs({})).toEqual([]);
    await expect(
      stranger.workspace.commit(exchangeOf(stranger.person, { jobs: [add("1", note("hello"))] })),
    ).rejects.toMatchObject({ code: "job_refused" });
  });

  test("an amendment changes the job and leaves what was said before in the history", async () => {
    const { workspace } = await write(meet, open("1"), add("1", note("wrong")));
    await write(meet, add("1", note("right"), { amends: 2 }));
    expect((await workspace.findJob("1"))?.notes.map(({ text }) => text)).toEqual(["right"]);
    expect((await workspace.jobHistory("1")).map(({ change, amends }) => [change.kind, amends])).toEqual([
      ["opened", undefined],
      ["note", undefined],
      ["note", 2],
    ]);
  });

  test("after any changes the job is what its history comes to", async () => {
    let run = 0;
    await fc.assert(
      fc.asyncProperty(fc.array(anyChange, { maxLength: 6 }), async (changes) => {
        run += 1;
        const { workspace } = await write(meet, open(`r${run}`), ...changes.map((change) => add(`r${run}`, change)));
        expect(await workspace.findJob(`r${run}`)).toEqual(projectJob(await workspace.jobHistory(`r${run}`)));
      }),
      { numRuns: 15 },
    );
  });
}

function checkVersions(meet: Meet): void {
  test.each([
    { name: "a version that is no longer the newest", entry: add("1", note("x"), { version: 1 }), code: "job_changed" },
    { name: "a number that is taken", entry: open("1"), code: "job_changed" },
    { name: "a job that is not there", entry: add("2", note("x")), code: "job_refused" },
    { name: "an event that is not there", entry: add("1", note("x"), { amends: 9 }), code: "job_refused" },
    { name: "an amendment of another kind", entry: add("1", note("x"), { amends: 2 }), code: "job_refused" },
  ])("$name refuses the whole exchange", async ({ entry, code }) => {
    const { workspace, person } = await write(meet, open("1"), add("1", status("under_way")));
    const before = await workspace.findJob("1");
    const exchange = exchangeOf(person, { delivery: "bad", jobs: [add("1", note("lost too")), entry] });
    await expect(workspace.commit(exchange)).rejects.toMatchObject({ code });
    expect(await workspace.findJob("1")).toEqual(before);
    expect(await workspace.jobHistory("1")).toHaveLength(2);
    expect(await workspace.findDelivery("bad")).toBeUndefined();
  });

  test("several entries of one exchange go by the version that the person saw", async () => {
    const { workspace, person } = await write(meet, open("1"));
    const jobs = [add("1", note("a"), { version: 1 }), add("1", note("b"), { version: 1 })];
    await workspace.commit(exchangeOf(person, { jobs }));
    expect((await workspace.findJob("1"))?.version).toBe(3);
  });

  test("of two people who saw the same version, one is told that it changed", async () => {
    const { workspace, person } = await write(meet, open("1"));
    const both = ["a", "b"].map((text) =>
      workspace.commit(exchangeOf(person, { jobs: [add("1", note(text), { version: 1 })] })),
    );
    const settled = await Promise.allSettled(both);
    expect(settled.filter(({ status: end }) => end === "fulfilled")).toHaveLength(1);
    expect((await workspace.findJob("1"))?.notes).toHaveLength(1);
  });
}

function checkLists(meet: Meet): void {
  test("jobs are listed by day and number, and by status, days and person", async () => {
    const { workspace } = await write(
      meet,
      open("10"),
      open("9", "2026-12-02"),
      open("11", "2026-12-01"),
      open("2", "2026-12-02"),
      add("11", { kind: "planned", day: "2026-12-01", people: ["ebbe", "wren"] }),
      add("9", { kind: "planned", day: "2026-12-03", people: ["ebbe-2"] }),
      add("2", status("under_way")),
      add("10", { kind: "facts", topic: "fault", facts: { cured_by_fan_failed: true } }),
    );
    const list = async (filter: Parameters<WorkspaceStore["listJobs"]>[0]) =>
      (await workspace.listJobs(filter)).map(({ number }) => number);
    expect(await list({})).toEqual(["11", "2", "9", "10"]);
    expect(await list({ statuses: ["under_way"] })).toEqual(["2"]);
    expect(await list({ statuses: [] })).toEqual([]);
    expect(await list({ from: "2026-12-02", to: "2026-12-03" })).toEqual(["2", "9"]);
    expect(await list({ to: "2026-12-01" })).toEqual(["11"]);
    expect(await list({ person: "ebbe" })).toEqual(["11"]);
    expect(await list({ person: "%" })).toEqual([]);
    expect(await list({ person: "wren", statuses: ["planned"], from: "2026-12-01" })).toEqual(["11"]);
    expect(await list({ told: "cured_by_" })).toEqual(["10"]);
    expect(await list({ told: "cured_by" })).toEqual(["10"]);
    expect(await list({ told: "cured-by-" })).toEqual([]);
  });
}

function checkNumbers(meet: Meet): void {
  test("no two people get the same number, and none that a job has", async () => {
    const { workspace } = await write(meet, open("1002"));
    const ben = await meet(BEN);
    const numbers = await Promise.all([workspace, ben.workspace, workspace].map((one) => one.nextJobNumber()));
    expect(numbers.toSorted()).toEqual(["1001", "1003", "1004"]);
    expect(await (await meet(STRANGER)).workspace.nextJobNumber()).toBe("1001");
  });
}
