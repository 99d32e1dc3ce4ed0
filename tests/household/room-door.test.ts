import { describe, expect, test } from "vitest";
import { exchangeThrough, freeAreaOf, LOUVRES_m2, openingsOf, type RoomDoor } from "../../src/household/room-door.ts";
import { flowThroughOpenings } from "../../src/physics/air/opening-network.ts";
import { orificeFlow_m3_s } from "../../src/physics/air/openings.ts";
import { ATMOSPHERE_kPa } from "../../src/physics/water.ts";
import { fromBase, toBase } from "../../src/units/convert.ts";

const inches = (value: number) => toBase(value, "in");
const PLAIN: RoomDoor = { door: "plain", undercut_m: inches(0.5), lowGrille_m2: 0, highGrille_m2: 0 };
const GRILLE = toBase(120, "in2");

test("a plain door with its cracks passes about three times what the gap under it alone does, as field readings say", () => {
  // Measured bedrooms: about 80 cfm at 3 Pa where the gap of 15 in2 alone would pass 27.5 cfm.
  const whole = orificeFlow_m3_s(freeAreaOf(PLAIN), 3, 1.2);
  expect(fromBase(whole, "cfm")).toBeGreaterThan(60);
  expect(fromBase(whole, "cfm")).toBeLessThan(90);
});

test("a full louvred wooden door is a quarter free: 600 in²", () => {
  expect(fromBase(LOUVRES_m2, "in2")).toBeCloseTo(600, 6);
  expect(freeAreaOf({ ...PLAIN, door: "louvred" }) - freeAreaOf(PLAIN)).toBeCloseTo(LOUVRES_m2, 12);
});

describe("exchange", () => {
  const at10K = (door: RoomDoor) => exchangeThrough(door, 20)(10, 20);
  const DOORS: readonly RoomDoor[] = [
    { ...PLAIN, door: "sealed" },
    PLAIN,
    { ...PLAIN, undercut_m: inches(1) },
    { ...PLAIN, lowGrille_m2: GRILLE, highGrille_m2: GRILLE },
    { ...PLAIN, door: "louvred" },
    { ...PLAIN, door: "open" },
  ];
  test("grows from sealed over plain, a wider gap, grilles and louvres to no door at all", () => {
    const flows = DOORS.map(at10K);
    expect(flows).toEqual(flows.toSorted((a, b) => a - b));
  });
  test("is none between equal temperatures and the same both ways round", () => {
    const flow = exchangeThrough(PLAIN, 20);
    expect(flow(20, 20)).toBe(0);
    expect(flow(12, 20)).toBeCloseTo(flow(20, 12), 12);
  });
  test.each([1, 3, 10, 20])("at %i K is within 5 % of the network that it stands for", (difference_K) => {
    for (const door of DOORS) {
      const spaces = { room_C: 20 - difference_K, other_C: 20, pressure_kPa: ATMOSPHERE_kPa };
      const network = flowThroughOpenings(openingsOf(door), spaces).in_kg_s / 1.2;
      const flow = exchangeThrough(door, 20)(20 - difference_K, 20);
      expect(Math.abs(flow / network - 1)).toBeLessThan(0.05);
    }
  });
  test("two grilles of 120 in² six feet apart at 10 °F pass what the published shortcut says: 9.4 A √(h ΔT)", () => {
    const grilles: RoomDoor = { door: "sealed", undercut_m: 0, lowGrille_m2: GRILLE, highGrille_m2: GRILLE };
    const shortcut_cfm = 9.4 * (120 / 144) * Math.sqrt((68 / 12) * 10);
    const flow = exchangeThrough(grilles, 20)(20 - toBase(10, "F_diff"), 20);
    expect(fromBase(flow, "cfm") / shortcut_cfm).toBeGreaterThan(0.93);
    expect(fromBase(flow, "cfm") / shortcut_cfm).toBeLessThan(1.1);
  });
});
