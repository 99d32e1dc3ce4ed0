import { expect, test } from "vitest";
import { moveToQuietHours } from "../../src/household/quiet-hours.ts";
import { type HotWaterUse, sampleDay } from "../../src/household/sample-day.ts";

const day = (seed: number) => sampleDay({ people: 5, bathrooms: 2 }, seed, 0);
const litres = (uses: readonly HotWaterUse[]) =>
  uses.reduce((sum, { flow_L_s, duration_s }) => sum + flow_L_s * duration_s, 0);
const isMoved = ({ use }: HotWaterUse) => use === "clothes_washer" || use === "dishwasher";

test("moves washers and dishwashers, nobody's shower, and no water is lost", () => {
  for (let seed = 1; seed <= 50; seed++) {
    const before = day(seed);
    const after = moveToQuietHours(before);
    expect(after.uses.filter((use) => !isMoved(use))).toEqual(before.uses.filter((use) => !isMoved(use)));
    expect(litres(after.uses)).toBeCloseTo(litres(before.uses), 9);
    expect(after.uses.length).toBe(before.uses.length);
  }
});

test("laundry begins from 14:00, dishes from 22:00, all inside the day and in order", () => {
  const uses = Array.from({ length: 50 }, (_, seed) => moveToQuietHours(day(seed))).flatMap((one) => one.uses);
  const starts = (use: string) => uses.filter((one) => one.use === use).map(({ start_s }) => start_s / 3600);
  expect(Math.min(...starts("clothes_washer"))).toBe(14);
  expect(Math.min(...starts("dishwasher"))).toBe(22);
  expect(uses.every(({ start_s, duration_s }) => start_s >= 0 && start_s + duration_s <= 86_400 + 2_400)).toBe(true);
  const [first] = [moveToQuietHours(day(3)).uses.map(({ start_s }) => start_s)];
  expect(first).toEqual([...(first ?? [])].sort((a, b) => a - b));
});
