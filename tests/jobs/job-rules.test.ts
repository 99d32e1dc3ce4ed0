import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { isInitialsOrNickname } from "../../src/jobs/customer.ts";
import { JOB_STATUSES, type JobChange, type JobStatus } from "../../src/jobs/job.ts";
import { type JobRefusal, RULES, refuseEntry, STEPS } from "../../src/jobs/job-rules.ts";
import { projectJob } from "../../src/jobs/project-job.ts";
import { sayJobRefusal } from "../../src/messages/say-job.ts";
import { ROLES, type Role } from "../../src/ports/store.ts";
import { anyChange, eventsOf } from "../support/job-samples.ts";

const item = { id: "pan", what: "fit the pan", owner: "p2", due: "2026-11-30" };
const unexplained = { id: "supply", quantity: { kind: "voltage", value: 201 }, isAccepted: false } as const;

/** Whether somebody may make a change to a job in a status, after these changes. */
function refuse(from: JobStatus, change: JobChange, role: Role = "technician", before: readonly JobChange[] = []) {
  const events = eventsOf(...before, { kind: "status", status: from });
  return refuseEntry(projectJob(events), events, { job: "1001", change }, { id: "p9", role });
}
const step = (status: JobStatus, because?: string): JobChange => ({
  kind: "status",
  status,
  ...(because !== undefined && { because }),
});

describe("opening", () => {
  const open = (customer: string): JobChange => ({ kind: "opened", customer, place: "Testbench" });
  const actor = { id: "p1", role: "technician" } as const;

  test("anybody opens a job under a number that is free", () => {
    expect(refuseEntry(undefined, [], { job: "1", change: open("T. M.") }, actor)).toBeUndefined();
    const events = eventsOf();
    expect(refuseEntry(projectJob(events), events, { job: "1001", change: open("T. M.") }, actor)).toEqual({
      code: "number_taken",
      job: "1001",
    });
  });

  test.each(["T. M.", "Aunt Birdie", "Q", "Señora Ñ"])("%s is little enough to name a customer", (name) => {
    expect(isInitialsOrNickname(name)).toBe(true);
  });

  test.each(["", "  ", "Anna Maria Smith", "555 0100", "a@b", "12 Elm", "c/o Pim", "x".repeat(25)])(
    "“%s” is refused as the name of a customer",
    (name) => {
      expect(refuseEntry(undefined, [], { job: "1", change: open(name) }, actor)).toEqual({
        code: "customer_too_much",
      });
    },
  );

  test("nothing else may be said of a job that is not there", () => {
    const note = { kind: "note", text: "x" } as const;
    expect(refuseEntry(undefined, [], { job: "7", change: note }, actor)).toEqual({ code: "unknown_job", job: "7" });
  });
});

describe("what may be written when, and by whom", () => {
  test.each([
    ["planned", "facts", "technician", true],
    ["under_way", "reading", "technician", true],
    ["complete", "reading", "owner", false],
    ["complete", "file", "technician", true],
    ["cancelled", "file", "owner", false],
    ["cancelled", "note", "technician", true],
    ["planned", "planned", "technician", false],
    ["planned", "planned", "dispatcher", true],
    ["complete", "planned", "dispatcher", false],
  ] as const)("in a job that is %s, %s by a %s: %s", (from, kind, role, isAllowed) => {
    const [change] = fc.sample(
      anyChange.filter((one) => one.kind === kind),
      1,
    );
    if (change === undefined) throw new Error("no such change");
    expect(refuse(from, change, role) === undefined).toBe(isAllowed);
  });

  test("the tables hold every status, and no role that cannot do what a smaller one can", () => {
    expect(Object.keys(STEPS).sort()).toEqual([...JOB_STATUSES].sort());
    const lists = [...Object.values(RULES).map(({ roles }) => roles), ...Object.values(STEPS).flatMap(Object.values)];
    for (const roles of lists) {
      const places = roles.map((role: Role) => ROLES.indexOf(role));
      expect(places).toEqual(ROLES.map((_, place) => place).slice(Math.min(...places)));
    }
  });

  test("from every status somebody can go on, and every status can be reached", () => {
    for (const status of JOB_STATUSES) expect(Object.keys(STEPS[status]).length).toBeGreaterThan(0);
    const reached = new Set(Object.values(STEPS).flatMap((next) => Object.keys(next)));
    expect(reached).toEqual(new Set(JOB_STATUSES));
  });
});

describe("status", () => {
  test("a step that is none is refused with those that this person may take", () => {
    expect(refuse("planned", step("complete"))).toEqual({
      code: "no_such_step",
      from: "planned",
      to: "complete",
      next: ["surveyed", "under_way"],
    });
  });

  test("a technician does not cancel", () => {
    expect(refuse("planned", step("cancelled", "x"))).toMatchObject({ code: "not_your_role" });
    expect(refuse("planned", step("cancelled", "x"), "dispatcher")).toBeUndefined();
  });

  test("who cancels or is called back says why", () => {
    expect(refuse("planned", step("cancelled"), "owner")).toEqual({ code: "says_why", to: "cancelled" });
    expect(refuse("complete", step("called_back", " "))).toEqual({ code: "says_why", to: "called_back" });
  });

  test("a job with something open is not complete, and one with nothing open has no open items", () => {
    const open = { kind: "item_opened", item } as const;
    expect(refuse("under_way", step("complete"), "owner", [open])).toEqual({
      code: "items_left",
      items: ["fit the pan"],
    });
    expect(refuse("under_way", step("open_items"), "technician", [open])).toBeUndefined();
    const closed = [open, { kind: "item_closed", item: "pan" }] as const;
    expect(refuse("under_way", step("complete"), "technician", closed)).toBeUndefined();
    expect(refuse("under_way", step("open_items"), "technician", closed)).toEqual({ code: "no_item_left" });
  });

  test("a job is not complete while a reading stands unaccepted without a reason", () => {
    const read = (because?: string): JobChange => ({
      kind: "reading",
      reading: { ...unexplained, ...(because !== undefined && { because }) },
    });
    expect(refuse("under_way", step("complete"), "technician", [read()])).toEqual({
      code: "reading_unexplained",
      readings: ["supply"],
    });
    expect(refuse("under_way", step("complete"), "technician", [read("utility was called")])).toBeUndefined();
  });

  test("an item that is not open cannot be closed", () => {
    expect(refuse("under_way", { kind: "item_closed", item: "pan" })).toEqual({
      code: "unknown_item",
      item: "pan",
      open: [],
    });
  });
});

describe("putting right", () => {
  const note = (text: string): JobChange => ({ kind: "note", text });
  const events = eventsOf(note("wrong"), { kind: "status", status: "complete" });
  const amend = (amends: number, change: JobChange, id: string, role: Role) =>
    refuseEntry(projectJob(events), events, { job: "1001", change, amends }, { id, role });

  test("one's own slip is put right in any status; somebody else's by a manager or the owner", () => {
    expect(amend(2, note("right"), "p2", "technician")).toBeUndefined();
    expect(amend(2, { kind: "withdrawn" }, "p2", "technician")).toBeUndefined();
    expect(amend(2, note("right"), "p9", "technician")).toEqual({ code: "not_your_event", by: "Person 2" });
    expect(amend(2, note("right"), "p9", "dispatcher")).toEqual({ code: "not_your_event", by: "Person 2" });
    expect(amend(2, note("right"), "p9", "manager")).toBeUndefined();
  });

  test("a status is put right by those who lead", () => {
    expect(amend(3, { kind: "status", status: "under_way" }, "p3", "technician")).toMatchObject({
      code: "not_your_role",
    });
    expect(amend(3, { kind: "status", status: "under_way" }, "p9", "owner")).toBeUndefined();
  });

  test("an event that is none, of another kind, or the opening itself is refused", () => {
    expect(amend(9, note("x"), "p2", "owner")).toEqual({ code: "unknown_event", event: 9 });
    expect(amend(2, { kind: "permit", permit: "x" }, "p2", "owner")).toEqual({ code: "other_kind", event: 2 });
    expect(amend(1, { kind: "withdrawn" }, "p1", "owner")).toEqual({ code: "other_kind", event: 1 });
  });
});

const REFUSALS: { readonly [C in JobRefusal["code"]]: Extract<JobRefusal, { readonly code: C }> } = {
  unknown_job: { code: "unknown_job", job: "77" },
  number_taken: { code: "number_taken", job: "77" },
  customer_too_much: { code: "customer_too_much" },
  not_in_this_status: { code: "not_in_this_status", status: "cancelled", asked: "reading" },
  not_your_role: { code: "not_your_role", roles: ["manager", "owner"] },
  no_such_step: { code: "no_such_step", from: "planned", to: "complete", next: ["surveyed"] },
  says_why: { code: "says_why", to: "cancelled" },
  items_left: { code: "items_left", items: ["pan"] },
  no_item_left: { code: "no_item_left" },
  reading_unexplained: { code: "reading_unexplained", readings: ["supply"] },
  unknown_item: { code: "unknown_item", item: "pan", open: ["valve"] },
  unknown_event: { code: "unknown_event", event: 7 },
  other_kind: { code: "other_kind", event: 7 },
  not_your_event: { code: "not_your_event", by: "Ebbe" },
};

test.each(Object.values(REFUSALS))("the refusal $code is a whole sentence in each language", (refusal) => {
  const [en, es] = [sayJobRefusal("en", refusal), sayJobRefusal("es", refusal)];
  for (const text of [en, es]) {
    expect(text).toMatch(/^[A-Z“].*[.]$/);
    expect(text).not.toMatch(/undefined|_/);
  }
  expect(es).not.toBe(en);
});
