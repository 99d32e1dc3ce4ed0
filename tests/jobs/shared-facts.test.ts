import { expect, test } from "vitest";
import type { FactSpec } from "../../src/declaration/facts.ts";
import type { Topic } from "../../src/declaration/topic.ts";
import type { Job } from "../../src/jobs/job.ts";
import { projectJob } from "../../src/jobs/project-job.ts";
import { keptAs, knownFromJob, toldToJob } from "../../src/jobs/shared-facts.ts";
import { KEPT_AS, NOT_KEPT } from "../../src/jobs/shared-facts-table.ts";
import { toBase } from "../../src/units/convert.ts";
import { library } from "../support/ask-library.ts";
import { fixtureBooks } from "../support/fixture-books.ts";
import { eventsOf } from "../support/job-samples.ts";

function topicOf(id: string): Topic {
  const topic = library.topics.get(id);
  if (topic === undefined) throw new Error(`no topic ${id}`);
  return topic;
}

function jobWith(topic: string, facts: Readonly<Record<string, number | string | boolean>>, model?: string): Job {
  const job = projectJob(
    eventsOf({ kind: "facts", topic, facts }, ...(model === undefined ? [] : [{ kind: "unit" as const, model }])),
  );
  if (job === undefined) throw new Error("no job");
  return job;
}

const valuesOf = (topic: string, job: Job) =>
  Object.fromEntries(
    Object.entries(knownFromJob(topicOf(topic), job, fixtureBooks)).map(([fact, { value }]) => [fact, value]),
  );

test("an id under which a job keeps something means one kind of thing in every topic", () => {
  const kinds = new Map<string, Set<string>>();
  const kindOf = (spec: FactSpec) => (spec.type === "quantity" ? spec.quantity : spec.type);
  for (const topic of library.topics.values())
    for (const [fact, spec] of Object.entries(topic.facts)) {
      if (spec.unlisted === true || NOT_KEPT.includes(fact) || spec.type === "text") continue;
      const id = keptAs(topic.id, fact);
      kinds.set(id, (kinds.get(id) ?? new Set()).add(kindOf(spec)));
    }
  const mixed = [...kinds].filter(([, all]) => all.size > 1).map(([id, all]) => [id, [...all].sort()]);
  expect(mixed).toEqual([]);
});

test("the table names only facts that its topics have", () => {
  for (const [topic, facts] of Object.entries(KEPT_AS))
    for (const fact of Object.keys(facts)) expect(Object.keys(topicOf(topic).facts), topic).toContain(fact);
});

test("a room that one walk measured is known to every other under its own name", () => {
  const job = jobWith("room", { where: "basement", volume: 40 });
  expect(valuesOf("survey", job)).toMatchObject({ room: "basement", room_volume: 40 });
  expect(valuesOf("caution", job)).toMatchObject({ room: "basement", room_volume: 40 });
  expect(valuesOf("pick", job)).toMatchObject({ room: 40 });
  expect(valuesOf("circuit", job)).toMatchObject({ room: "basement" });
  expect(valuesOf("room", job)).toMatchObject({ where: "basement", volume: 40 });
});

test("options that a topic names otherwise are the same option", () => {
  const kept = toldToJob(
    topicOf("cost"),
    { replaces: { value: "gas_tank", from: "asked" } },
    jobWith("survey", {}),
    fixtureBooks,
  );
  expect(kept).toEqual({ kind: "facts", topic: "cost", facts: { replaces: "gas" } });
  expect(valuesOf("cost", jobWith("survey", { replaces: "electric" }))).toMatchObject({ replaces: "electric_tank" });
});

test("a value outside what a topic can use is asked there again", () => {
  expect(valuesOf("room", jobWith("caution", { room: "attic" }))).not.toHaveProperty("where");
  expect(valuesOf("size", jobWith("wait", { tank: toBase(6, "gal") }))).not.toHaveProperty("tank");
});

test("the planned unit goes before a model that was only asked about, and tells its tank", () => {
  const job = jobWith("size", { model: "hollin-80" }, "hollin-50");
  expect(valuesOf("size", job)).toMatchObject({ model: "hollin-50" });
  const { tank } = knownFromJob(topicOf("expansion"), job, fixtureBooks);
  expect(tank).toMatchObject({ from: "catalogue" });
  expect(tank?.value).toBeCloseTo(toBase(45, "gal"), 0);
});

test("only what somebody told is kept, and not what the job holds already", () => {
  const job = jobWith("survey", { line_pressure: 450 });
  const known = {
    line_pressure: { value: 450.01, from: "asked" },
    cold: { value: 10, from: "assumed" },
    closed: { value: true, from: "job" },
    setpoint: { value: 55, from: "asked" },
  } as const;
  expect(toldToJob(topicOf("expansion"), known, job, fixtureBooks)).toEqual({
    kind: "facts",
    topic: "expansion",
    facts: { setpoint: 55 },
  });
});
