import { describe, expect, test } from "vitest";
import type { Books } from "../../src/books/books.ts";
import type { FactValue } from "../../src/declaration/facts.ts";
import { runTopic } from "../../src/declaration/run-topic.ts";
import type { JobChange } from "../../src/jobs/job.ts";
import { projectJob } from "../../src/jobs/project-job.ts";
import { done } from "../../src/topics/done.ts";
import { job } from "../../src/topics/job.ts";
import type { QuantityKind } from "../../src/units/quantity-kinds.ts";
import { fixtureBooks } from "../support/fixture-books.ts";
import { eventsOf } from "../support/job-samples.ts";

function openJobWith(...changes: readonly JobChange[]) {
  const found = projectJob(eventsOf(...changes));
  if (found === undefined) throw new Error("no job");
  return found;
}

function ask(topic: typeof job | typeof done, facts: Readonly<Record<string, FactValue>>, lent: Partial<Books>) {
  const known = Object.fromEntries(Object.entries(facts).map(([id, value]) => [id, { value, from: "asked" as const }]));
  const books = { ...fixtureBooks, today: "2026-11-25", ...lent };
  return runTopic(topic, known, books, [], () => undefined).result;
}

describe("job", () => {
  test("opens the job that is named, and offers what lies ahead only while it is not closed", () => {
    const openJob = openJobWith();
    const opened = ask(job, { number: "1001" }, { openJob });
    expect(opened).toMatchObject({ kind: "answer", acts: [{ kind: "open", job: "1001" }] });
    const requests = (result: ReturnType<typeof ask>) =>
      result.kind === "answer" ? (result.next ?? []).map(({ request }) => request) : [];
    expect(requests(opened)).toEqual(["survey", "job number=1001 history", "job leave"]);
    const closed = openJobWith({ kind: "status", status: "complete" });
    expect(requests(ask(job, { number: "1001" }, { openJob: closed }))).toEqual([
      "job number=1001 task=call_back",
      "job number=1001 history",
      "job leave",
    ]);
  });

  test("begins a job only under a number that it was lent", () => {
    const facts = { task: "new", customer: "T. M.", town: "Ostrowick", day: "2026-12-01" };
    expect(ask(job, facts, { nextJob: "1006" })).toMatchObject({
      acts: [{ kind: "begin", job: "1006", customer: "T. M.", place: "Ostrowick", day: "2026-12-01" }],
    });
    const without = ask(job, facts, {});
    expect(without).toMatchObject({ headline: { code: "no_record" } });
    expect(without).not.toHaveProperty("acts");
  });

  test("refuses a place that the books do not have, because the code depends on it", () => {
    expect(ask(job, { task: "new", customer: "T. M.", town: "Atlantis", day: "2026-12-01" }, {})).toMatchObject({
      kind: "out-of-range",
      fact: "town",
    });
  });
});

describe("done", () => {
  const CHECKS: JobChange = {
    kind: "facts",
    topic: "startup",
    facts: { start_filled: "done", start_tight: "done", start_relief_free: "done", start_handed_over: "done" },
  };
  const KINDS: Readonly<Record<string, QuantityKind>> = {
    bond: "resistance",
    supply: "voltage",
    outlet_temperature: "temperature",
  };
  const reading = (id: string, value: number, isAccepted = true, because?: string): JobChange => ({
    kind: "reading",
    reading: {
      id,
      quantity: { kind: KINDS[id] ?? "pressure", value },
      isAccepted,
      ...(because !== undefined && { because }),
    },
  });
  const MEASURED = [
    CHECKS,
    reading("line_pressure", 450),
    reading("bond", 0.2),
    reading("supply", 239),
    reading("outlet_temperature", 47),
    { kind: "status", status: "under_way" },
    { kind: "parts", parts: { heater: 1 } },
  ] as const satisfies readonly JobChange[];

  test("is complete once nothing that may hurt is left without a reading or a reason", () => {
    const result = ask(done, {}, { openJob: openJobWith(...MEASURED) });
    expect(result).toMatchObject({ kind: "answer", verdict: "good", headline: { code: "complete" } });
    expect(result.kind === "answer" && result.acts).toEqual([
      { kind: "change", change: { kind: "status", status: "complete" } },
      { kind: "summary" },
    ]);
  });

  test.each(["line_pressure", "bond", "supply", "outlet_temperature"])("without %s it asks who owns it", (id) => {
    const without = MEASURED.filter((change) => change.kind !== "reading" || change.reading.id !== id);
    expect(ask(done, {}, { openJob: openJobWith(...without) })).toEqual({ kind: "needs-facts", missing: ["owner"] });
    const owned = ask(done, { owner: "marisol", due: "2026-12-01" }, { openJob: openJobWith(...without) });
    expect(owned).toMatchObject({ verdict: "caution", headline: { code: "with_items" } });
  });

  test("a reading that is not accepted needs a reason, and with one the job is complete", () => {
    const hot = toOutside(undefined);
    expect(ask(done, {}, { openJob: openJobWith(...hot) })).toEqual({ kind: "needs-facts", missing: ["owner"] });
    const reasoned = toOutside("the valve is on order, taps have limit stops");
    expect(ask(done, {}, { openJob: openJobWith(...reasoned) })).toMatchObject({ headline: { code: "complete" } });
  });

  function toOutside(because: string | undefined): readonly JobChange[] {
    return [...MEASURED, reading("outlet_temperature", 55, false, because)];
  }

  test("an item whose step has been taken since is closed with the job", () => {
    const item = { id: "bond", what: "bond", owner: "marisol", due: "2026-12-01" };
    const openJob = openJobWith(...MEASURED, { kind: "item_opened", item }, { kind: "status", status: "open_items" });
    const result = ask(done, {}, { openJob });
    expect(result.kind === "answer" && result.acts?.[0]).toEqual({
      kind: "change",
      change: { kind: "item_closed", item: "bond" },
    });
  });

  test("a job that is closed is closed once", () => {
    const openJob = openJobWith(...MEASURED, { kind: "status", status: "complete" });
    const result = ask(done, {}, { openJob });
    expect(result).toMatchObject({ headline: { code: "closed_before" } });
    expect(result).not.toHaveProperty("acts");
  });
});
