import { expect, test } from "vitest";
import { foundBefore } from "../../src/faults/topic/found-before.ts";

const fact = (value: boolean) => ({ value, topic: "fault", by: "Ebbe Tarnowell", at_ms: 0 });

test("closed faults of all jobs are counted by cause; what was not cured does not count", () => {
  const jobs = [
    { facts: { cured_by_dirty_filter: fact(true) } },
    { facts: { cured_by_dirty_filter: fact(true), cured_by_fan_failed: fact(true) } },
    { facts: { cured_by_fan_failed: fact(false), not_cured_by_dirty_filter: fact(true) } },
  ];
  expect(foundBefore(jobs)).toEqual({ found_before: { value: "dirty_filter:2,fan_failed:1", from: "job" } });
});

test("without a closed fault the shipped weights stand alone", () => {
  expect(foundBefore([{ facts: {} }])).toEqual({});
});
