import { expect, test } from "vitest";
import type { JobChange, JobStatus } from "../../src/jobs/job.ts";
import { timeOnSite } from "../../src/jobs/time-on-site.ts";
import { eventsOf } from "../support/job-samples.ts";

const to = (status: JobStatus): JobChange => ({ kind: "status", status });
const note: JobChange = { kind: "note", text: "lunch" };

// The sample's events are a second apart; the opening is the first.
test.each<[string, readonly (JobChange | readonly [JobChange, number])[], number | undefined, number | undefined]>([
  ["nothing before the work began", [note], undefined, undefined],
  ["nothing while the first visit goes on", [to("under_way"), note], undefined, undefined],
  ["one visit", [to("under_way"), note, note, to("complete")], 3000, 1],
  [
    "two visits, without the days between",
    [to("under_way"), to("open_items"), note, to("under_way"), note, to("complete")],
    3000,
    2,
  ],
  ["a visit that was put off", [to("under_way"), note, to("planned"), note, to("under_way"), to("complete")], 3000, 2],
  [
    "an end that was taken back is none",
    [to("under_way"), to("complete"), [{ kind: "withdrawn" }, 3], to("open_items")],
    3000,
    1,
  ],
])("sums %s", (_, changes, total_ms, visits) => {
  const found = timeOnSite(eventsOf(...changes));
  expect([found?.total_ms, found?.visits]).toEqual([total_ms, visits]);
});

const HOUR_ms = 3_600_000;
const reading: JobChange = {
  kind: "reading",
  reading: { id: "supply", quantity: { kind: "voltage", value: 240 }, isAccepted: true },
};

test.each<[string, readonly (readonly [hour: number, change: JobChange])[], number, number]>([
  [
    "no night",
    [
      [8, to("under_way")],
      [15, note],
      [31, note],
      [33, to("complete")],
    ],
    9,
    1,
  ],
  [
    "the visit of a call-back from the first thing looked at",
    [
      [8, to("under_way")],
      [10, to("open_items")],
      [100, to("called_back")],
      [124, reading],
      [125, to("under_way")],
      [126, to("complete")],
    ],
    4,
    2,
  ],
])("counts %s", (_, told, hours, visits) => {
  const [opened, ...events] = eventsOf(...told.map(([, change]) => change));
  const timed = events.map((event, index) => ({ ...event, at_ms: (told[index]?.[0] ?? 0) * HOUR_ms }));
  const found = timeOnSite(opened === undefined ? [] : [{ ...opened, at_ms: 0 }, ...timed]);
  expect([(found?.total_ms ?? 0) / HOUR_ms, found?.visits]).toEqual([hours, visits]);
});
