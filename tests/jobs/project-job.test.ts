import fc from "fast-check";
import { expect, test } from "vitest";
import { describeHistory } from "../../src/jobs/describe-history.ts";
import type { JobEvent } from "../../src/jobs/job.ts";
import { addToJob, effectsOf, projectJob } from "../../src/jobs/project-job.ts";
import { amendedEvents, eventsOf, plainEvents } from "../support/job-samples.ts";

const reading = (value: number, isAccepted = true) =>
  ({
    kind: "reading",
    reading: { id: "outlet_temperature", quantity: { kind: "temperature", value }, isAccepted },
  }) as const;
const status = (to: "under_way" | "complete" | "called_back") => ({ kind: "status", status: to }) as const;

test("a job is what its events come to", () => {
  const events = eventsOf(
    { kind: "planned", day: "2026-11-26", people: ["ebbe", "wren"] },
    { kind: "facts", topic: "room", facts: { where: "closet", volume: 2.7 } },
    { kind: "facts", topic: "size", facts: { volume: 2.9 } },
    { kind: "parts", parts: { pan: 1 } },
    { kind: "parts", parts: { pan: 1, valve: 2 } },
  );
  expect(projectJob(events)).toMatchObject({
    number: "1001",
    customer: "T. M.",
    status: "planned",
    day: "2026-11-26",
    people: ["ebbe", "wren"],
    facts: {
      where: { value: "closet", topic: "room", by: "Person 3", at_ms: 3000 },
      volume: { value: 2.9, topic: "size", by: "Person 4", at_ms: 4000 },
    },
    parts: { pan: 2, valve: 2 },
    openedAt_ms: 1000,
    version: 6,
  });
});

test("without an event that opens it there is no job", () => {
  expect(projectJob([])).toBeUndefined();
  expect(projectJob(eventsOf({ kind: "note", text: "early" }).slice(1))).toBeUndefined();
});

test("an amended reading is the new one, at the time of the old, by the one who put it right", () => {
  const job = projectJob(eventsOf(reading(60, false), [reading(49), 2]));
  expect(job?.readings["outlet_temperature"]).toEqual({
    ...reading(49).reading,
    by: "Person 3",
    at_ms: 2000,
  });
});

test("an amendment does not overtake what was said after the event that it amends", () => {
  const events = eventsOf({ kind: "unit", model: "one" }, { kind: "unit", model: "two" }, [
    { kind: "unit", model: "one, spelt right" },
    2,
  ]);
  expect(projectJob(events)?.model).toBe("two");
});

test("an amendment of an amendment counts for the event that it all began with", () => {
  const events = eventsOf(reading(60), [reading(50), 2], [reading(49), 3]);
  expect(projectJob(events)?.readings["outlet_temperature"]?.quantity.value).toBe(49);
  expect(effectsOf(events)).toHaveLength(2);
});

test("what was taken back does nothing, until it is said again in its place", () => {
  const taken = eventsOf({ kind: "note", text: "wrong job" }, [{ kind: "withdrawn" }, 2]);
  expect(projectJob(taken)?.notes).toEqual([]);
  const again = eventsOf(
    { kind: "note", text: "wrong job" },
    [{ kind: "withdrawn" }, 2],
    [{ kind: "note", text: "right after all" }, 3],
  );
  expect(projectJob(again)?.notes.map(({ text }) => text)).toEqual(["right after all"]);
});

test("an opening cannot be taken back, and can be put right", () => {
  expect(projectJob(eventsOf([{ kind: "withdrawn" }, 1]))?.customer).toBe("T. M.");
  const again = eventsOf([{ kind: "opened", customer: "T. N.", place: "Elsewhere" }, 1]);
  expect(projectJob(again)).toMatchObject({ customer: "T. N.", place: "Elsewhere", openedAt_ms: 1000, version: 2 });
});

test("a job that is called back is open again and keeps the time it first began", () => {
  const done = eventsOf(status("under_way"), status("complete"));
  expect(projectJob(done)).toMatchObject({ startedAt_ms: 2000, closedAt_ms: 3000 });
  const back = projectJob(
    eventsOf(status("under_way"), status("complete"), status("called_back"), status("under_way")),
  );
  expect(back?.closedAt_ms).toBeUndefined();
  expect(back?.startedAt_ms).toBe(2000);
});

test("to go on from any point comes to the same as to begin again", () => {
  fc.assert(
    fc.property(plainEvents, fc.nat(), (events, cut) => {
      const at = cut % (events.length + 1);
      const soFar = projectJob(events.slice(0, at));
      expect(events.slice(at).reduce(addToJob, soFar)).toEqual(projectJob(events));
    }),
  );
});

test("amendments come to the same as if everything had been said right at once", () => {
  fc.assert(
    fc.property(amendedEvents, (events) => {
      // The rule told another way: write each amendment over what it amends, and strike it out.
      const saidRight: JobEvent[] = [];
      const placeOf = new Map<number, number>();
      for (const { amends, ...event } of events) {
        const place = amends === undefined ? undefined : placeOf.get(amends);
        placeOf.set(event.number, place ?? saidRight.length);
        const before = place === undefined ? undefined : saidRight[place];
        if (place === undefined || before === undefined) saidRight.push(event);
        else saidRight[place] = { ...before, change: event.change, by: event.by };
      }
      expect({ ...projectJob(events), version: 0 }).toEqual({ ...projectJob(saidRight), version: 0 });
    }),
  );
});

test("no event is lost: the history holds each of them once, newest first, and counts those that stand", () => {
  fc.assert(
    fc.property(amendedEvents, (events) => {
      const history = describeHistory(events);
      expect(history.map(({ number }) => number)).toEqual(events.map(({ number }) => number).toReversed());
      expect(history.map(({ change }) => change)).toEqual(events.map(({ change }) => change).toReversed());
      expect(history.filter(({ amendedBy }) => amendedBy === undefined)).toHaveLength(effectsOf(events).length);
    }),
  );
});

test("the history shows what was said before beside what puts it right", () => {
  const history = describeHistory(eventsOf(reading(60), [reading(50), 2], [reading(49), 3]));
  expect(history.map(({ number, amendedBy, amends }) => [number, amendedBy, amends?.number])).toEqual([
    [4, undefined, 3],
    [3, 4, 2],
    [2, 4, undefined],
    [1, undefined, undefined],
  ]);
  expect(history[0]?.amends?.change).toEqual(reading(50));
});
