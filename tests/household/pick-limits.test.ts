import { describe, expect, test } from "vitest";
import {
  findBreaches,
  footprintLoad_kPa,
  fullMass_kg,
  heightNeeded_m,
  LIMITS,
  type SiteLimits,
  soundAt_dBA,
  supplyOf_V,
  toldOf,
} from "../../src/household/pick-limits.ts";
import { fromBase, toBase } from "../../src/units/convert.ts";
import { seedBooks } from "../support/ask-with-seeds.ts";

const OPEN: SiteLimits = {
  door_m: undefined,
  height_m: undefined,
  floor_kg: undefined,
  room_m3: undefined,
  supply_V: undefined,
  breaker_A: undefined,
  spaces: undefined,
  bedroom_m: undefined,
  sound_dBA: undefined,
};
const inch = (value: number) => toBase(value, "in");

function model(id: string) {
  const found = seedBooks.catalogue.find((one) => one.id === id);
  if (found === undefined) throw new Error(`the seeds have no ${id}`);
  return found;
}
const limitsOf = (id: string, site: Partial<SiteLimits>) =>
  findBreaches(model(id), { ...OPEN, ...site }).map(({ limit }) => limit);

describe("a site of which nothing is told", () => {
  test("refuses no model", () => {
    for (const one of seedBooks.catalogue) expect(findBreaches(one, OPEN)).toEqual([]);
    for (const limit of LIMITS) expect(toldOf(limit, OPEN)).toBeUndefined();
  });
});

describe("height, way in, room", () => {
  test("height counts the clearance for anode and filter: 73 in and 7 in are 80 in", () => {
    expect(fromBase(heightNeeded_m(model("hollin-80")), "in")).toBeCloseTo(80, 9);
    expect(limitsOf("hollin-80", { height_m: inch(80) })).toEqual([]);
    expect(limitsOf("hollin-80", { height_m: inch(79.9) })).toEqual(["height"]);
  });
  test("the narrowest door is measured against the widest side", () => {
    expect(limitsOf("hollin-80", { door_m: inch(24) })).toEqual([]);
    expect(limitsOf("hollin-80", { door_m: inch(23) })).toEqual(["door"]);
  });
  test("a closed room limits heat pumps by their sheet, and never a resistance tank or a split unit", () => {
    const room_m3 = toBase(400, "ft3");
    expect(limitsOf("hollin-40", { room_m3 })).toEqual(["room"]);
    expect(limitsOf("fenmoor-80", { room_m3 })).toEqual([]);
    expect(limitsOf("brackwell-50", { room_m3 })).toEqual([]);
  });
  test("each reason holds what is needed and what there is", () => {
    const [breach] = findBreaches(model("hollin-80"), { ...OPEN, height_m: inch(60) });
    expect(breach?.say.code).toBe("refused_height");
    expect(breach?.say.data).toEqual({
      needed: { kind: "dimension", value: heightNeeded_m(model("hollin-80")) },
      there: { kind: "dimension", value: inch(60) },
    });
  });
});

describe("weight when full", () => {
  // By hand in US units: 72 gal of water at 8.345 lb/gal (62.43 lb/cu ft, its greatest density) and 246 lb empty.
  const full_lb = 246 + 72 * 8.345;
  test("is the empty mass and the water: 847 lb for 72 gal", () => {
    expect(fromBase(fullMass_kg(model("hollin-80")), "lb")).toBeCloseTo(full_lb, 0);
    expect(limitsOf("hollin-80", { floor_kg: toBase(850, "lb") })).toEqual([]);
    expect(limitsOf("hollin-80", { floor_kg: toBase(840, "lb") })).toEqual(["floor"]);
  });
  test("over a circle two feet wide is 270 lb/sq ft", () => {
    const load = fromBase(footprintLoad_kPa(model("hollin-80")), "lb_ft2");
    expect(Math.abs(load / (full_lb / Math.PI) - 1)).toBeLessThan(1e-3);
  });
});

describe("supply, breaker, spaces", () => {
  test.each([
    ["hollin-80", 240, 240],
    ["hollin-80", 230, 230],
    ["hollin-80", 208, 208],
    ["hollin-80", 120, undefined],
    ["tarnley-50", 120, 120],
    ["tarnley-50", 115, 115],
    // A plug-in unit takes a circuit of its own from a panel with 208 or 240 V.
    ["tarnley-50", 240, 120],
    ["tarnley-50", 208, 120],
  ])("%s with %i V runs at %s V", (id, supply_V, runs_V) => {
    expect(supplyOf_V(model(id), { ...OPEN, supply_V })).toBe(runs_V);
    expect(limitsOf(id, { supply_V })).toEqual(runs_V === undefined ? ["supply"] : []);
  });
  test("the plate's breaker must find room", () => {
    expect(limitsOf("sedge-80", { breaker_A: 30 })).toEqual(["breaker"]);
    expect(limitsOf("sedge-66", { breaker_A: 30 })).toEqual([]);
  });
  test("240 V takes two spaces of the panel, 120 V one", () => {
    expect(limitsOf("hollin-80", { spaces: 1 })).toEqual(["spaces"]);
    expect(limitsOf("tarnley-50", { spaces: 1 })).toEqual([]);
    expect(limitsOf("tarnley-50", { spaces: 0 })).toEqual(["spaces"]);
  });
});

describe("sound near bedrooms", () => {
  // Inverse-square law: 6.02 dB less for each doubling of the distance.
  test("is the sheet's at one metre and 6 dB less at two", () => {
    const near = soundAt_dBA(model("hollin-80"), { ...OPEN, bedroom_m: 1 });
    expect(near).toBe(50);
    expect(soundAt_dBA(model("hollin-80"), { ...OPEN, bedroom_m: 2 })).toBeCloseTo(50 - 6.02, 2);
    expect(soundAt_dBA(model("hollin-80"), { ...OPEN, bedroom_m: 0 })).toBe(50);
  });
  test("refuses what is louder than asked, and never a unit without a compressor", () => {
    expect(limitsOf("hollin-80", { sound_dBA: 45 })).toEqual(["sound"]);
    expect(limitsOf("hollin-80", { sound_dBA: 45, bedroom_m: 2 })).toEqual([]);
    expect(limitsOf("brackwell-80", { sound_dBA: 10 })).toEqual([]);
  });
});

test("every limit that is not kept is named, not only the first", () => {
  const site = { door_m: inch(20), height_m: inch(60), floor_kg: 100, room_m3: 5, breaker_A: 15, sound_dBA: 30 };
  expect(limitsOf("hollin-80", { ...site, supply_V: 120, spaces: 1 })).toEqual([...LIMITS]);
});
