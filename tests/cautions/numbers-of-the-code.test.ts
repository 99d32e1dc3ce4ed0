import { describe, expect, test } from "vitest";
import { raiseCautions } from "../../src/cautions/caution.ts";
import type { Code } from "../../src/cautions/code.ts";
import { asPrinted_C } from "../../src/cautions/compare.ts";
import type { SiteFacts } from "../../src/cautions/site-facts.ts";
import { toBase } from "../../src/units/convert.ts";
import { library } from "../support/ask-library.ts";
import { fixtureBooks } from "../support/fixture-books.ts";

const { code: IPC } = fixtureBooks;
const UPC = codeAt("saltmere");
const inch = (value: number) => toBase(value, "in");
const gal = (value: number) => toBase(value, "gal");

function codeAt(place: string): Code {
  const code = fixtureBooks.codes[place];
  if (code === undefined) throw new Error(`no code at ${place}`);
  return code;
}

function raised(site: SiteFacts, code: Code): readonly string[] {
  return raiseCautions(library.cautions, site, code).map(({ id }) => id);
}

// Each number as its document prints it, so that a slip of a digit in the books shows.
describe("the numbers that codes set", () => {
  test.each([
    ["IPC 2018, 504.6: discharge pipe ends at most 6 in up", IPC.limits.relief_discharge_end.value, inch(6)],
    ["UPC 2015, 608.5: outdoors at most 2 ft up", UPC.limits.relief_discharge_end.value, toBase(2, "ft")],
    ["IPC 2021, 504.7.1: pan 1.5 in deep", IPC.limits.pan_depth.value, inch(1.5)],
    ["IPC 2021, 504.7.1: pan drain 3/4 in", IPC.limits.pan_drain.value, inch(0.75)],
    ["IMC 2015, 307.2: fall of 1 %", IPC.limits.condensate_slope.value, 0.01],
    ["UPC 814: fall of 1/8 in per foot", UPC.limits.condensate_slope.value, inch(0.125) / toBase(1, "ft")],
    ["UPC 507.2: lower strap 4 in over the controls", UPC.limits.strap_above_controls.value, inch(4)],
    ["California DSA, 2005: two straps to 52 gal", UPC.limits.two_strap_tank.value, gal(52)],
    ["California DSA, 2005: three straps to 75 gal", UPC.limits.three_strap_tank.value, gal(75)],
    ["IRC M1305.1: 30 in of level space", IPC.limits.service_space.value, inch(30)],
    ["IRC 2009, M1307.3: 18 in over a garage floor", IPC.limits.ignition_height.value, inch(18)],
    ["NEC 110.26(A)(1): 3 ft deep", IPC.limits.working_depth.value, toBase(3, "ft")],
    ["NEC 110.26(A)(2): 30 in wide", IPC.limits.working_width.value, inch(30)],
  ])("%s", (_document, value, printed) => expect(value).toBeCloseTo(printed, 9));
});

describe("where documents disagree, the adopted one is followed and the other is kept", () => {
  test("a relief pipe may end in the pan under the IPC and not under the UPC", () => {
    const site: SiteFacts = { reliefDischargeEndsIn: "pan" };
    expect(raised(site, IPC)).toEqual([]);
    expect(raised(site, UPC)).toEqual(["relief_discharge_into_pan"]);
  });

  test("a relief pipe that ends 12 in up is too high under the IPC and not under the UPC", () => {
    const site: SiteFacts = { reliefDischargeEnd_m: inch(12) };
    expect(raised(site, IPC)).toEqual(["relief_discharge_ends_high"]);
    expect(raised(site, UPC)).toEqual([]);
    expect(IPC.limits.relief_discharge_end.others?.map(({ cites }) => cites.document)).toContain("UPC");
  });

  test("two straps hold 52 gal by the state guideline, though a local page lets them hold 75", () => {
    const strapped: SiteFacts = { isSeismicArea: true, straps: 2 };
    expect(raised({ ...strapped, tank_L: gal(52) }, UPC)).toEqual([]);
    expect(raised({ ...strapped, tank_L: gal(53) }, UPC)).toEqual(["straps_too_few"]);
    expect(UPC.limits.two_strap_tank.others?.map(({ value }) => value)).toEqual([gal(75)]);
  });
});

test("three straps hold 75 gal, and 80 gal wants a design", () => {
  const strapped: SiteFacts = { isSeismicArea: true, straps: 3 };
  expect(raised({ ...strapped, tank_L: gal(75) }, UPC)).toEqual([]);
  expect(raised({ ...strapped, tank_L: gal(80) }, UPC)).toEqual(["straps_need_design"]);
});

test("a stricter place is heard: 105 °F at a tub where a place sets 100 °F", () => {
  const { tub } = IPC.limits;
  const strict: Code = { ...IPC, limits: { ...IPC.limits, tub: { ...tub, value: toBase(100, "F") } } };
  expect(raised({ tap_C: toBase(105, "F") }, IPC)).toEqual([]);
  expect(raised({ tap_C: toBase(105, "F") }, strict)).toEqual(["tap_above_limit"]);
});

test("a limit holds as it is printed in °F and in °C: 120 °F (49 °C), 110 °F (43 °C)", () => {
  expect(asPrinted_C(toBase(120, "F"))).toBe(49);
  expect(asPrinted_C(toBase(110, "F"))).toBe(toBase(110, "F"));
});
