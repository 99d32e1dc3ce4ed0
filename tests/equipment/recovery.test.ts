import { describe, expect, test } from "vitest";
import { recoverByElements, recoverByHeatPump } from "../../src/equipment/recovery.ts";
import { fromBase, toBase } from "../../src/units/convert.ts";
import { INTEGRATED_80, PLUG_IN_50, RESISTANCE_50 } from "../fixtures/water-heaters.ts";

/** Recovery of electric elements, gallons an hour at 60 to 100 °F rise: a printed trade table, read. */
const TABLE_gph = {
  3500: [23.9, 20.5, 17.9, 15.9, 14.3],
  4500: [30.7, 26.3, 23.0, 20.5, 18.4],
  5500: [37.6, 32.2, 28.2, 25.0, 22.5],
} as const;
const COLD_C = toBase(50, "F");
const withElements = (rated_W: number) => ({
  ...RESISTANCE_50,
  elements: RESISTANCE_50.elements.map((element) => ({ ...element, rated_W })),
});
const gph = (rate_L_s: number) => fromBase(rate_L_s, "gph");

describe.each(Object.entries(TABLE_gph))("a %s W element that takes turns with another", (power, row) => {
  test.each(row.map((printed_gph, i) => [60 + 10 * i, printed_gph]))(
    "warms by %f °F what the trade table prints, %f gph, within 0.7 %",
    (rise_F, printed_gph) => {
      const recovery = recoverByElements(withElements(Number(power)), 240, COLD_C, toBase(50 + rise_F, "F"));
      expect(Math.abs(gph(recovery?.rate_L_s ?? 0) / printed_gph - 1)).toBeLessThan(0.007);
    },
  );
});

test("208 V on 240 V elements leaves 75.1 % of the rate", () => {
  const at = (supply_V: number) => recoverByElements(RESISTANCE_50, supply_V, 10, 50)?.rate_L_s ?? 0;
  expect(at(208) / at(240)).toBeCloseTo((208 / 240) ** 2, 12);
});

test("two elements without an interlock add up", () => {
  const both = { ...RESISTANCE_50, controls: { ...RESISTANCE_50.controls, interlocks: [] } };
  expect(recoverByElements(both, 240, 10, 50)?.heat_W).toBe(9000);
});

test("a plug-in unit has no elements to recover with", () => {
  expect(recoverByElements(PLUG_IN_50, 120, 10, 50)).toBeUndefined();
});

describe("heat pump of 1600 W at 13.56 °C wet bulb and 50 °C water", () => {
  const sheet = INTEGRATED_80.heatPump;
  if (sheet === undefined) throw new Error("the unit has no heat pump");
  const air = { dryBulb_C: 19.7, wetBulb_C: 13.56 };

  test("gives its rated heat where the rise is a hair around 50 °C", () => {
    expect(Math.abs(recoverByHeatPump(sheet, air, 49.99, 50.01).heat_W - 1600)).toBeLessThan(0.1);
  });

  test("gives more into cold water than into hot, and more from warm air than from cold", () => {
    const heat = (wetBulb_C: number, cold_C: number, setpoint_C: number) =>
      recoverByHeatPump(sheet, { ...air, wetBulb_C }, cold_C, setpoint_C).heat_W;
    expect(heat(13.56, 10, 30)).toBeGreaterThan(heat(13.56, 40, 60));
    expect(heat(18, 10, 50)).toBeGreaterThan(heat(5, 10, 50));
  });

  test.each([
    ["air at 2.9 °C, under its limit of 3 °C", { dryBulb_C: 2.9, wetBulb_C: 1 }, 10],
    ["air at 49.1 °C, over its limit of 49 °C", { dryBulb_C: 49.1, wetBulb_C: 25 }, 10],
    ["water at 62 °C, its limit", air, 62],
  ])("gives nothing with %s", (_, at, cold_C) => {
    expect(recoverByHeatPump(sheet, at, cold_C, 65)).toEqual({ heat_W: 0, rate_L_s: 0 });
  });
});
