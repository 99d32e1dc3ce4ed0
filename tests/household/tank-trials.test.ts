import { describe, expect, test } from "vitest";
import { POLICIES } from "../../src/equipment/policies.ts";
import { runFirstHour } from "../../src/equipment/test-procedure/first-hour.ts";
import { RATING } from "../../src/equipment/test-procedure/rating-conditions.ts";
import { mountUnit, ratingPolicy, type StandConditions } from "../../src/equipment/test-procedure/test-stand.ts";
import { recoveryTime_s, usableMixed_L } from "../../src/household/tank-trials.ts";
import { steadyAir } from "../../src/physics/tank/room-air.ts";
import { fromBase, toBase } from "../../src/units/convert.ts";
import { bareSite, bareTank } from "../fixtures/bare-tank.ts";
import { INTEGRATED_80, PLUG_IN_50 } from "../fixtures/water-heaters.ts";
import { HEATING } from "../reference/tank.ts";

const F = (value: number) => toBase(value, "F");
const planOf = (setpoint_C: number, policy = POLICIES.elements_only) => [{ from_s: 0, policy, setpoint_C }] as const;

describe("usable mixed water", () => {
  const usable = (setpoint_F: number, wanted_F: number, stirred = 0) =>
    usableMixed_L({
      unit: bareTank({ stirred }),
      site: bareSite(F(50)),
      plan: planOf(F(setpoint_F)),
      wanted_C: F(wanted_F),
    });

  test.each([
    [140, 105],
    [120, 105],
    [120, 120],
    [140, 51],
  ])(
    "a perfect 50-gal tank at %f °F gives V (t_hot - t_cold) / (t_mix - t_cold) at %f °F, exact",
    (hot_F, wanted_F) => {
      const exact_gal = 50 * Math.min((hot_F - 50) / (wanted_F - 50), 20);
      expect(Math.abs(fromBase(usable(hot_F, wanted_F), "gal") / exact_gal - 1)).toBeLessThan(1e-6);
    },
  );

  test("a stirred inlet leaves less", () => expect(usable(140, 105, 0.3)).toBeLessThan(usable(140, 105)));
});

describe("recovery from cold", () => {
  test("50 gal from 58 to 125 °F with 4.5 kW at the bottom take m c dT / P, 1.8174 h, within 1 %", () => {
    const [row] = HEATING;
    const unit = bareTank({ elements: [{ place: "lower", height_m: 0, rated_W: 4500, rated_V: 240 }] });
    const plan = planOf(F(row.to_F));
    const time_s = recoveryTime_s({ unit, site: bareSite(F(row.from_F)), plan, wanted_C: F(105) });
    expect(Math.abs((time_s ?? 0) / 3600 / row.hours - 1)).toBeLessThan(0.01);
  });

  test("nothing heats in air of 0 °C with the heat pump only, so there is no time", () => {
    const site = { supply_V: 120, inlet_C: 10, air: steadyAir(0, 0.5) };
    const plan = planOf(50, POLICIES.heat_pump_only);
    expect(recoveryTime_s({ unit: PLUG_IN_50, site, plan, wanted_C: 40 })).toBeUndefined();
  });
});

describe("first hour at a site", () => {
  const rating: StandConditions = {
    setpoint_C: RATING.outlet_C,
    supply_V: RATING.supply_V,
    inlet_C: RATING.supply_C,
    air: steadyAir(RATING.ambient_C, RATING.relativeHumidity),
  };
  const at = (change: Partial<StandConditions>, unit = INTEGRATED_80) =>
    runFirstHour(unit, mountUnit(unit, ratingPolicy(unit), { ...rating, ...change })).firstHour_L;

  test("at rating conditions it is the first-hour rating", () => {
    expect(at({})).toBe(runFirstHour(INTEGRATED_80).firstHour_L);
  });
  test("208 V and water at 40 °F give less", () => {
    expect(at({ supply_V: 208, inlet_C: F(40) })).toBeLessThan(at({}));
  });
  test("a draw that never falls 15 °F ends after the hour: 180 gal at 3 gpm", () => {
    const warm = at({ setpoint_C: F(96), inlet_C: F(94) });
    expect(Math.abs(fromBase(warm, "gal") - 180)).toBeLessThan(0.5);
  });
});
