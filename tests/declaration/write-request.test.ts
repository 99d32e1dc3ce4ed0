import { expect, test } from "vitest";
import { q } from "../../src/declaration/answer.ts";
import { writeRequest } from "../../src/declaration/write-request.ts";
import { toBase } from "../../src/units/convert.ts";

const CASES = [
  ["temperature", { setpoint: q("temperature", toBase(140, "F")) }, "mix setpoint=140F"],
  ["volume", { tank: q("volume", toBase(50, "gal")) }, "mix tank=50gal"],
  ["pressure", { line: q("pressure", toBase(60, "psi")) }, "mix line=60psi"],
  ["length", { run: q("length", toBase(62.5, "ft")) }, "mix run=62.5ft"],
  ["share", { part: q("share", 0.7) }, "mix part=70%"],
  ["count", { people: q("count", 4) }, "mix people=4"],
  ["time", { wait: q("time", 90) }, "mix wait=90s"],
  ["flag", { valve: true, closed: false }, "mix valve=yes closed=no"],
  ["choice", { size: "3/4" }, "mix size=3/4"],
  ["nothing known", { tank: undefined }, "mix"],
] as const;
test.each(CASES)("writes a %s so that it can be typed", (_, facts, request) => {
  expect(writeRequest("mix", facts)).toBe(request);
});
