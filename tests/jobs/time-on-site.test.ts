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
