import { describe, expect, test } from "vitest";
import { parseRequest } from "../../../src/conversation/grammar/parse-request.ts";
import { toBase } from "../../../src/units/convert.ts";
import { fixtureLibrary } from "./fixture-topics.ts";

const NAMES = { model: ["hollin-50", "hollin-50-quiet", "tarn-80"], place: ["ostrowick", "salt-mere"] };

function read(typed: string) {
  const { facts, problems } = parseRequest(typed, fixtureLibrary, { language: "en", units: "us", names: NAMES });
  return { values: Object.fromEntries(Object.entries(facts).map(([fact, { value }]) => [fact, value])), problems };
}

describe("names of the company's books", () => {
  const setpoint = toBase(125, "F");
  test.each([
    ["size hollin-50 4 people 125F", { model: "hollin-50", people: 4, setpoint }],
    ["size 4 people Hollin 50 125F", { model: "Hollin 50", people: 4, setpoint }],
    ["size 4 people 125F hollin50", { model: "hollin50", people: 4, setpoint }],
    ["size model hollin-50 4 people", { model: "hollin-50", people: 4 }],
    ["size model=tarn-80 4 people in Salt Mere", { model: "tarn-80", people: 4, place: "Salt Mere" }],
    ["size hollin-50-quiet 4 people", { model: "hollin-50-quiet", people: 4 }],
    ["size 4 people ostrowick tarn 80", { model: "tarn 80", people: 4, place: "ostrowick" }],
  ])("'%s' is read without a word or a comma around the name", (typed, values) => {
    expect(read(typed)).toEqual({ values, problems: [] });
  });

  test("a name that only begins like one of the books is not cut", () => {
    expect(read("size model hollin-500 4 people").values["model"]).not.toBe("hollin-50");
    expect(read("size hollin-505 4 people").problems).not.toEqual([]);
  });

  test("two names of one list are asked about", () => {
    expect(read("size hollin-50 tarn-80 4 people").problems).toEqual([{ kind: "twice", fact: "model" }]);
  });

  test("a topic that takes no name does not look for one", () => {
    expect(read("mix 135 to 120 hollin-50").values).not.toHaveProperty("model");
  });
});
