import { expect, test } from "vitest";
import { thermistorResistance_ohm, USUAL_THERMISTOR } from "../../src/physics/thermistor.ts";

// Source: beta equation worked by hand: 10 kohm, beta 3950, at 323.15 K: 10000 exp(3950 (1/323.15 - 1/298.15)).
test("a usual sensor has 3588 ohm at 50 °C and its rated resistance at 25 °C", () => {
  expect(thermistorResistance_ohm(USUAL_THERMISTOR, 50)).toBeCloseTo(3588.1, 0);
  expect(thermistorResistance_ohm(USUAL_THERMISTOR, 25)).toBe(10_000);
});

test("a sensor that is none is refused", () => {
  expect(() => thermistorResistance_ohm({ at25_ohm: 0, beta_K: 3950 }, 20)).toThrow(RangeError);
  expect(() => thermistorResistance_ohm(USUAL_THERMISTOR, 400)).toThrow(RangeError);
});
