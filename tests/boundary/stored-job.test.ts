import fc from "fast-check";
import { expect, expectTypeOf, test } from "vitest";
import type { z } from "zod";
import { parseJob, parseJobChange, type storedChange, type storedJob } from "../../src/boundary/stored-job.ts";
import type { Job, JobChange } from "../../src/jobs/job.ts";
import { projectJob } from "../../src/jobs/project-job.ts";
import { amendedEvents } from "../support/job-samples.ts";

type DeepReadonly<T> = T extends readonly (infer E)[]
  ? readonly DeepReadonly<E>[]
  : T extends object
    ? { readonly [K in keyof T]: DeepReadonly<T[K]> }
    : T;

test("what is read back has exactly the parts of a job and of its changes (held by the compiler)", () => {
  expectTypeOf<DeepReadonly<z.infer<typeof storedJob>>>().toEqualTypeOf<DeepReadonly<Job>>();
  expectTypeOf<DeepReadonly<z.infer<typeof storedChange>>>().toEqualTypeOf<DeepReadonly<JobChange>>();
  const change: JobChange = { kind: "withdrawn" };
  expect(parseJobChange(JSON.stringify(change))).toEqual({ ok: true, value: change });
});

test("any job and any change is read back as it was", () => {
  fc.assert(
    fc.property(amendedEvents, (events) => {
      const job = projectJob(events);
      expect(parseJob(JSON.stringify(job))).toEqual({ ok: true, value: job });
      for (const { change } of events)
        expect(parseJobChange(JSON.stringify(change))).toEqual({ ok: true, value: change });
    }),
    { numRuns: 40 },
  );
});

test.each([
  { json: "{}", reason: /^kind: / },
  { json: `{"kind":"eaten"}`, reason: /^kind: / },
  { json: `{"kind":"note"}`, reason: /^text: / },
  { json: `{"kind":"note","text":"x","phone":"555"}`, reason: /Unrecognized key: "phone"/ },
  { json: `{"kind":"status","status":"done"}`, reason: /^status: / },
])("$json is no change of a job", ({ json, reason }) => {
  expect(parseJobChange(json)).toEqual({ ok: false, reason: expect.stringMatching(reason) });
});
