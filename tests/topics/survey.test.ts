import { describe, expect, test } from "vitest";
import { runTopic } from "../../src/declaration/run-topic.ts";
import type { JobChange } from "../../src/jobs/job.ts";
import { projectJob } from "../../src/jobs/project-job.ts";
import { survey } from "../../src/topics/survey.ts";
import { toBase } from "../../src/units/convert.ts";
import { library } from "../support/ask-library.ts";
import { answerOf, codesOf, refusalOf, resultOf } from "../support/ask-topic.ts";
import { fixtureBooks } from "../support/fixture-books.ts";
import { eventsOf } from "../support/job-samples.ts";

const HOUSE = {
  room: "basement",
  room_volume: toBase(1400, "ft3"),
  door: "plain",
  replaces: "electric",
  condensate: "drain_with_air_gap",
  line_pressure: toBase(65, "psi"),
  closed: true,
  supply: 240,
  circuit_length: toBase(40, "ft"),
  people: 3,
  bathrooms: 2,
  model: "hollin-50",
  setpoint: toBase(125, "F"),
};

describe("survey", () => {
  test("is whole when everything that the answers turn on is told", () => {
    const answer = answerOf(survey, HOUSE);
    expect(answer.headline).toMatchObject({ code: "told_all" });
    expect(answer.verdict).toBe("good");
    expect((answer.next ?? []).map(({ request }) => request.split(" ")[0])).toEqual([
      "size",
      "room",
      "circuit",
      "expansion",
      "caution",
      "kit",
    ]);
  });

  test("names what is missing, and offers only what can be answered with what is there", () => {
    const { people: _, room_volume: __, ...rest } = HOUSE;
    const answer = answerOf(survey, rest);
    expect(answer.findings).toContainEqual({ code: "missing", data: { facts: "room_volume,people" } });
    expect((answer.next ?? []).map(({ request }) => request.split(" ")[0])).toEqual([
      "circuit",
      "expansion",
      "caution",
      "kit",
    ]);
  });

  test("sizes the expansion tank as its own topic does for the pressure that the codes allow in a house", () => {
    const answer = answerOf(survey, HOUSE);
    const expansion = library.topics.get("expansion");
    if (expansion === undefined) throw new Error("no topic");
    const tank = fixtureBooks.catalogue.find(({ id }) => id === "hollin-50")?.heater.tank.volume_L ?? 0;
    const alone = answerOf(expansion, {
      tank,
      setpoint: HOUSE.setpoint,
      line_pressure: HOUSE.line_pressure,
      closed: true,
    });
    expect(resultOf(answer, "expansion_tank").quantity.value).toBeCloseTo(
      resultOf(alone, "tank_volume_code_limit").quantity.value,
      6,
    );
  });

  test("looks at the busiest hour as the size does, and says when the tank is small", () => {
    const size = library.topics.get("size");
    if (size === undefined) throw new Error("no topic");
    const told = { model: "hollin-50", people: HOUSE.people, setpoint: HOUSE.setpoint, supply: HOUSE.supply, days: 20 };
    const [seen, sized] = [answerOf(survey, HOUSE), answerOf(size, told)];
    for (const id of ["peak_hour_demand", "first_hour_delivery"])
      expect(resultOf(seen, id).quantity.value, id).toBeCloseTo(resultOf(sized, id).quantity.value, 6);
    expect(codesOf(seen)).toContain("size_enough");
    expect(codesOf(answerOf(survey, { ...HOUSE, people: 12 }))).toContain("size_short");
  });

  test("an open system asks for no expansion tank; a small room and a wrong supply are said", () => {
    const answer = answerOf(survey, { ...HOUSE, closed: false, room_volume: toBase(100, "ft3"), supply: 277 - 20 });
    expect(codesOf(answer)).toEqual(
      expect.arrayContaining(["expansion_needless", "room_small", "supply_not_on_plate"]),
    );
    expect(answer.results.map(({ id }) => id)).not.toContain("expansion_tank");
  });

  test("a smell of gas is what the visit found, before anything else", () => {
    const facts = Object.fromEntries(
      Object.entries({ ...HOUSE, gas_smell: true }).map(([id, value]) => [id, { value, from: "asked" as const }]),
    );
    const { result, cautions } = runTopic(survey, facts, fixtureBooks, library.cautions, () => undefined);
    expect(cautions[0]?.severity).toBe("stop");
    expect(result).toMatchObject({ verdict: "no" });
  });

  test("proposes to write unit and status into a planned job, and neither twice", () => {
    const ask = (...changes: readonly JobChange[]) => {
      const openJob = projectJob(eventsOf(...changes));
      if (openJob === undefined) throw new Error("no job");
      const facts = { model: { value: "hollin-50", from: "asked" } } as const;
      const { result } = runTopic(survey, facts, { ...fixtureBooks, openJob }, [], () => undefined);
      return result.kind === "answer" ? result.acts : undefined;
    };
    expect(ask()).toEqual([
      { kind: "change", change: { kind: "unit", model: "hollin-50" } },
      { kind: "change", change: { kind: "status", status: "surveyed" } },
    ]);
    expect(ask({ kind: "unit", model: "hollin-80" }, { kind: "status", status: "surveyed" })).toEqual([]);
    expect(answerOf(survey, HOUSE).acts).toEqual([]);
  });

  test("a model that the catalogue does not have is refused with the nearest", () => {
    expect(refusalOf(survey, { model: "hollin-5O" }).reason).toMatchObject({ code: "unknown_model" });
  });
});
