import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  combinedLoss_dB,
  levelAtDistance_dBA,
  levelBehind_dBA,
  levelInBedroom_dBA,
  levelInRoom_dBA,
  PARTITION_LOSS_dB,
  PARTITIONS,
  powerLevel_dBA,
  type SoundPath,
  sumLevels_dBA,
} from "../../../src/physics/air/sound.ts";
import { FARTHER, SOUND_CLASSES, SPHERE_dB, SUMS } from "../../reference/air.ts";

describe("levels", () => {
  test.each(SUMS)("$levels dBA together are $sum dBA within 0.05", ({ levels, sum }) => {
    expect(Math.abs(sumLevels_dBA(levels) - sum)).toBeLessThan(0.05);
  });

  test("90 dBA at 1 m are 78 dBA at 4 m", () => {
    const { level, from_m, to_m, farther } = FARTHER;
    expect(Math.abs(levelAtDistance_dBA(level, from_m, to_m) - farther)).toBeLessThan(0.05);
  });

  test("over a floor the power lies 11 - 3 dB above the level at 1 m; a wall and a corner bring 3 dB each", () => {
    expect(Math.abs(powerLevel_dBA(50, 1, 1) - (50 + SPHERE_dB - 3))).toBeLessThan(0.05);
    expect(powerLevel_dBA(50, 1, 1) - powerLevel_dBA(50, 1, 2)).toBeCloseTo(10 * Math.log10(2), 9);
    expect(powerLevel_dBA(50, 1, 2) - powerLevel_dBA(50, 1, 3)).toBeCloseTo(10 * Math.log10(2), 9);
  });
});

describe("in a room", () => {
  test("with endless absorption the level falls as in the open", () => {
    const power_dBA = powerLevel_dBA(50, 1, 1);
    expect(Math.abs(levelInRoom_dBA(power_dBA, 4, 1, 10_000) - levelAtDistance_dBA(50, 1, 4))).toBeLessThan(0.5);
  });

  test("that echoes, far from the source, the level no longer depends on distance", () => {
    const far_dBA = levelInRoom_dBA(58, 20, 1, 3);
    expect(Math.abs(far_dBA - levelInRoom_dBA(58, 40, 1, 3))).toBeLessThan(0.05);
    expect(far_dBA).toBeCloseTo(58 + 10 * Math.log10(4 / 3), 1);
  });
});

describe("walls and doors", () => {
  test("a hollow door and a stud wall take what building pages print", () => {
    const [least, most] = SOUND_CLASSES.hollow;
    expect(PARTITION_LOSS_dB.hollow_door).toBeGreaterThanOrEqual(least);
    expect(PARTITION_LOSS_dB.hollow_door).toBeLessThanOrEqual(most);
    expect(PARTITION_LOSS_dB.stud_wall).toBe(SOUND_CLASSES.stud);
    const losses = PARTITIONS.map((partition) => PARTITION_LOSS_dB[partition]);
    expect(losses).toEqual([...losses].sort((a, b) => a - b));
  });

  test("a whole of one kind takes what its kind does, and a door decides for the wall around it", () => {
    expect(
      combinedLoss_dB([
        { area_m2: 8, loss_dB: 33 },
        { area_m2: 2, loss_dB: 33 },
      ]),
    ).toBeCloseTo(33, 9);
    const withDoor_dB = combinedLoss_dB([
      { area_m2: 8, loss_dB: 33 },
      { area_m2: 2, loss_dB: 20 },
    ]);
    expect(withDoor_dB).toBeGreaterThan(20);
    expect(withDoor_dB).toBeLessThan(28);
    // An open fifth of a wall leaves 7 dB at the most, however good the rest.
    const open_dB = combinedLoss_dB([
      { area_m2: 8, loss_dB: 80 },
      { area_m2: 2, loss_dB: 0 },
    ]);
    expect(open_dB).toBeCloseTo(10 * Math.log10(5), 3);
  });

  test("behind a wall as large as the absorption the level falls by its loss", () => {
    expect(levelBehind_dBA(60, 33, 12, 12)).toBeCloseTo(27, 9);
    expect(levelBehind_dBA(60, 0, 12, 1)).toBe(60);
  });
});

describe("at a bedroom", () => {
  const PATH: SoundPath = {
    level_dBA: 50,
    measured_m: 1,
    heaterRoom_m2: 4,
    bedroom_m2: 12,
    between: [{ area_m2: 10, loss_dB: PARTITION_LOSS_dB.stud_wall }],
    further_dB: 0,
  };

  test("50 dBA at 1 m in a bare closet behind a stud wall are about 29 dBA", () => {
    // 58 dBA of power, 58 in the closet by 4 / A, less 33 - 5 in the field, less 10 log (12 / 10).
    expect(Math.abs(levelInBedroom_dBA(PATH) - (50 + SPHERE_dB - 3 - 28 - 0.8))).toBeLessThan(0.1);
  });

  test("a hollow door in the wall lets more through, another door on the way less, and it never falls below 0", () => {
    const door = { area_m2: 2, loss_dB: PARTITION_LOSS_dB.hollow_door };
    const base_dBA = levelInBedroom_dBA(PATH);
    expect(levelInBedroom_dBA({ ...PATH, between: [...PATH.between, door] })).toBeGreaterThan(base_dBA + 3);
    expect(levelInBedroom_dBA({ ...PATH, further_dB: 15 })).toBeCloseTo(base_dBA - 15, 9);
    expect(levelInBedroom_dBA({ ...PATH, further_dB: 90 })).toBe(0);
  });

  test("is louder from a louder heater, and no louder than in the heater's room", () => {
    fc.assert(
      fc.property(fc.double({ min: 35, max: 70, noNaN: true }), (level_dBA) => {
        const here_dBA = levelInBedroom_dBA({ ...PATH, level_dBA });
        expect(levelInBedroom_dBA({ ...PATH, level_dBA: level_dBA + 3 })).toBeCloseTo(here_dBA + 3, 9);
        expect(here_dBA).toBeLessThan(levelInRoom_dBA(powerLevel_dBA(level_dBA, 1, 1), 1, 1, PATH.heaterRoom_m2));
      }),
    );
  });
});

const REFUSED = [
  ["no sounds at all", () => sumLevels_dBA([])],
  ["a NaN level", () => levelAtDistance_dBA(Number.NaN, 1, 2)],
  ["no distance", () => levelAtDistance_dBA(50, 1, 0)],
  ["a wall of no parts", () => combinedLoss_dB([])],
  ["a NaN loss", () => levelBehind_dBA(50, Number.NaN, 10, 10)],
  ["a room without absorption", () => levelInRoom_dBA(50, 1, 1, 0)],
] as const;
test.each(REFUSED)("refuses %s", (_, run) => {
  expect(run).toThrow(RangeError);
});
