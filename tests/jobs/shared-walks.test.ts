import { expect, test } from "vitest";
import { projectJob } from "../../src/jobs/project-job.ts";
import { keptAs, knownFromJob, toldToJob } from "../../src/jobs/shared-facts.ts";
import { library } from "../support/ask-library.ts";
import { fixtureBooks } from "../support/fixture-books.ts";
import { eventsOf } from "../support/job-samples.ts";

const WALKS = ["survey", "size", "room", "circuit", "expansion", "mix", "caution", "kit", "startup", "fault"];

function topicOf(id: string) {
  const topic = library.topics.get(id);
  if (topic === undefined) throw new Error(`no topic ${id}`);
  return topic;
}

/** A value that both topics take: in the range of both, or an option of both. */
function valueFor(from: string, to: string, fact: string, other: string) {
  const [one, two] = [topicOf(from).facts[fact], topicOf(to).facts[other]];
  if (one?.type === "flag" && two?.type === "flag") return true;
  if (one?.type === "choice" && two?.type === "choice")
    return one.options.find((option) => two.options.includes(option));
  if (one?.type !== "quantity" || two?.type !== "quantity") return undefined;
  const [low, high] = [Math.max(one.min, two.min), Math.min(one.max, two.max)];
  return low > high ? undefined : (low + high) / 2;
}

const pairs = WALKS.flatMap((from) => WALKS.filter((to) => to !== from).map((to): [string, string] => [from, to]));

test.each(pairs)("what %s is told is not asked again by %s", (from, to) => {
  const shared = Object.keys(topicOf(from).facts).flatMap((fact) => {
    const other = Object.keys(topicOf(to).facts).find((one) => keptAs(to, one) === keptAs(from, fact));
    const value = other === undefined ? undefined : valueFor(from, to, fact, other);
    return other === undefined || value === undefined ? [] : [{ fact, other, value }];
  });
  const empty = projectJob(eventsOf());
  if (empty === undefined) throw new Error("no job");
  for (const { fact, other, value } of shared) {
    const told = toldToJob(topicOf(from), { [fact]: { value, from: "asked" } }, empty, fixtureBooks);
    // What is about the question and not the house, or that only a guide keeps, does not travel.
    if (told === undefined) continue;
    const job = projectJob(eventsOf(told));
    if (job === undefined) throw new Error("no job");
    const known = knownFromJob(topicOf(to), job, fixtureBooks);
    if (topicOf(to).facts[other]?.unlisted === true) continue;
    expect(known[other]?.value, `${fact} as ${other}`).toBe(value);
  }
});

test("the walks of a visit share enough that a second one is short", () => {
  const facts = {
    ...{ room: "basement", room_volume: 40, door: "plain", line_pressure: 450, closed: true, supply: 240 },
    ...{ people: 3, bathrooms: 2, circuit_length: 12, setpoint: 52, model: "hollin-50", mixing_valve: false },
  };
  const job = projectJob(eventsOf({ kind: "facts", topic: "survey", facts }));
  if (job === undefined) throw new Error("no job");
  const knownTo = (topic: string) => Object.keys(knownFromJob(topicOf(topic), job, fixtureBooks)).sort();
  expect(knownTo("size")).toEqual(expect.arrayContaining(["model", "people", "setpoint"]));
  expect(knownTo("room")).toEqual(expect.arrayContaining(["door", "model", "volume", "where"]));
  expect(knownTo("circuit")).toEqual(expect.arrayContaining(["run", "supply"]));
  expect(knownTo("expansion")).toEqual(expect.arrayContaining(["closed", "line_pressure", "setpoint", "tank"]));
  expect(knownTo("caution")).toEqual(expect.arrayContaining(["closed", "mixing_valve", "room", "setpoint"]));
  expect(knownTo("kit")).toEqual(expect.arrayContaining(["circuit_length", "closed", "line_pressure", "model"]));
  expect(knownTo("startup")).toEqual(
    expect.arrayContaining(["closed", "line_pressure", "model", "setpoint", "supply"]),
  );
  expect(knownTo("fault")).toEqual(expect.arrayContaining(["model", "people", "setpoint", "supply"]));
});
