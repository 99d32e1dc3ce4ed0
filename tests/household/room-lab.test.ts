import { describe, expect, test } from "vitest";
import { LAB_DROP, LAB_WALLS_W_m2_K, type LabRoom, labCop, labDrop } from "../../src/household/room-lab.ts";
import { toBase } from "../../src/units/convert.ts";
import { INTEGRATED_50 } from "../fixtures/water-heaters.ts";
import { ROOM_REFERENCE } from "../reference/room.ts";

/*
 * Against a laboratory that put one unit into closed rooms of falling volume and measured its COP on the federal draw
 * patterns (summary in print; the walls of the room, its tightness and the unit are not told). This model, on the same
 * patterns, at 67.5 °F around the room, with a reference unit:
 *
 *   700 to 450 ft³          laboratory   wallboard walls   insulated walls
 *   medium, 55 gal a day      7.8 %          3.0 %             24 %
 *   high, 84 gal a day       14.1 %          2.9 %             18 %
 *
 * The laboratory lies between the two walls, but they are far apart, so this is a weak check: it shows that the effect
 * has the right sign and size, not that the model is right. Walls decide it, and the summary does not tell them; both
 * values were set beforehand and none was chosen to fit. One wall does not meet both patterns: at 0.7 W/(m2 K) the model
 * loses 8.7 % at the medium and 22 % at the high pattern.
 *
 * With insulated walls the model loses 16 and 4 points too much because the room falls under the compressor's lock-out
 * and elements take over (counted: 0.9 to 4.3 kWh of elements in two days, medium). With wallboard nothing is locked out
 * and it loses 5 and 11 points too little. Why is not known: another unit and other walls may be all of it; cold air
 * pooling at the intake and frost, which the model leaves out, would work in that direction too.
 *
 * The two days start from a hot tank in a room at 67.5 °F; they are not run until the room repeats itself.
 */
const ft3 = (value: number) => toBase(value, "ft3");
const room = (bin: LabRoom["bin"], walls_W_m2_K: number, volume_ft3 = 700): LabRoom => ({
  bin,
  walls_W_m2_K,
  volume_m3: ft3(volume_ft3),
});
const { light, insulated } = LAB_WALLS_W_m2_K;

test("the laboratory's drops are those of its printed COP: 7.8 % and 14.1 %", () => {
  const { medium, high } = ROOM_REFERENCE.lab;
  expect(LAB_DROP.medium).toBeCloseTo(medium.drop, 3);
  expect(LAB_DROP.high).toBeCloseTo(high.drop, 3);
  expect(1 - medium.cop[1] / medium.cop[0]).toBeCloseTo(LAB_DROP.medium, 12);
});

describe.each(["medium", "high"] as const)("%s draw pattern, 700 to 450 ft³", (bin) => {
  const byLight = labDrop(INTEGRATED_50, room(bin, light), ft3(450));
  const byInsulated = labDrop(INTEGRATED_50, room(bin, insulated), ft3(450));
  test("wallboard walls lose less than the laboratory did, insulated ones more", () => {
    expect(byLight).toBeLessThan(LAB_DROP[bin]);
    expect(byInsulated).toBeGreaterThan(LAB_DROP[bin]);
  });
  test("the differences are the ones stated above", () => {
    const short = { medium: 0.05, high: 0.11 }[bin];
    expect(LAB_DROP[bin] - byLight).toBeGreaterThan(short - 0.015);
    expect(LAB_DROP[bin] - byLight).toBeLessThan(short + 0.015);
    expect(byInsulated - LAB_DROP[bin]).toBeLessThan(0.2);
  });
});

describe("side by side: far under the rule of thumb, at it, and far over", () => {
  const cops = [100, 450, 700, 1500].map((volume_ft3) => labCop(INTEGRATED_50, room("medium", light, volume_ft3)));
  const [tiny = 0, small = 0, rule = 0, large = 0] = cops;
  test("the COP rises with every step of volume", () => expect(cops).toEqual(cops.toSorted((a, b) => a - b)));
  test("1500 ft³ gain less over 700 than 700 gain over 100: the rule of thumb sits past the knee", () => {
    expect(large / rule - 1).toBeLessThan(0.06);
    expect(rule / tiny - 1).toBeGreaterThan(0.25);
  });
  test("450 ft³, where published advice begins, keeps within 8 % of 1500 ft³", () =>
    expect(1 - small / large).toBeLessThan(0.08));
});
