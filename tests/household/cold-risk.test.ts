import { describe, expect, test } from "vitest";
import { POLICIES } from "../../src/equipment/policies.ts";
import { type ColdRiskCase, drawsOf, findColdRisk, sampleDays } from "../../src/household/cold-risk.ts";
import { traceDay } from "../../src/household/trace-day.ts";
import { steadyAir } from "../../src/physics/tank/room-air.ts";
import { toBase } from "../../src/units/convert.ts";
import { INTEGRATED_50, INTEGRATED_80, RESISTANCE_50 } from "../fixtures/water-heaters.ts";

const F = (value: number) => toBase(value, "F");
const FAMILY: ColdRiskCase = {
  unit: INTEGRATED_80,
  site: { supply_V: 240, inlet_C: F(45), air: steadyAir(15, 0.5) },
  plan: [{ from_s: 0, policy: POLICIES.heat_pump_first, setpoint_C: F(125) }],
  household: { people: 4, bathrooms: 2 },
  wanted_C: F(105),
  days: 100,
  seed: 1,
};
const COLD_TANK = { ...FAMILY, unit: INTEGRATED_50 };

test("the same seed gives the same count, and days drawn before are the same days", () => {
  const counted = findColdRisk(FAMILY);
  expect(findColdRisk(FAMILY)).toEqual(counted);
  const sampled = sampleDays(FAMILY.household, 1, 100);
  expect(findColdRisk({ ...FAMILY, sampled })).toEqual(counted);
  expect(findColdRisk({ ...FAMILY, draws: drawsOf(sampled, FAMILY.wanted_C) })).toEqual(counted);
});

describe("closed cases", () => {
  test("a tank as hot as is wanted and switched off runs cold on every day", () => {
    const off = { from_s: 0, policy: POLICIES.switched_off, setpoint_C: F(105) } as const;
    const { share, low, high } = findColdRisk({ ...FAMILY, plan: [off] });
    expect(share).toBe(1);
    expect(low).toBeGreaterThan(0.95);
    expect(high).toBe(1);
  });

  test("a tank of 2,000 L does not run cold, and 0 of 100 is said to be 0 to 3.7 %", () => {
    const huge = { ...RESISTANCE_50, tank: { ...RESISTANCE_50.tank, volume_L: 2000, height_m: 2 } };
    const plan = [{ from_s: 0, policy: POLICIES.elements_only, setpoint_C: F(140) }] as const;
    const { coldDays, low, high, error, worstShortfall_L } = findColdRisk({ ...FAMILY, unit: huge, plan });
    expect([coldDays, low, worstShortfall_L]).toEqual([0, 0, 0]);
    expect(high).toBeCloseTo(1.959964 ** 2 / (100 + 1.959964 ** 2), 6);
    expect(error).toBeGreaterThan(0);
  });

  test("heat delivered is what the days' draws carry at the temperatures asked, within what ran short", () => {
    const huge = { ...RESISTANCE_50, tank: { ...RESISTANCE_50.tank, volume_L: 2000, height_m: 2, heatLoss_W_K: 0 } };
    const plan = [{ from_s: 0, policy: POLICIES.elements_only, setpoint_C: F(140) }] as const;
    const sampled = sampleDays(FAMILY.household, 1, 20).map((day) => ({
      ...day,
      uses: day.uses.filter(({ isMixed }) => isMixed),
    }));
    const { summary } = findColdRisk({ ...FAMILY, unit: huge, plan, sampled });
    const draws = drawsOf(sampled, FAMILY.wanted_C);
    const drawn_L = draws.volume_L.reduce((sum, one) => sum + one, 0);
    // Constants of the run: 0.993795 kg/L and 4189.9 J/(kg K).
    const carried_kWh = (drawn_L * 0.993795 * 4189.9 * (F(105) - F(45))) / 3.6e6;
    expect(summary.shortfall_L).toBe(0);
    expect(Math.abs(summary.delivered_kWh / carried_kWh - 1)).toBeLessThan(1e-9);
  });
});

describe("more is asked of the same days", () => {
  const share = (change: Partial<ColdRiskCase>) => findColdRisk({ ...FAMILY, ...change }).share;
  test("warmer taps, a smaller tank and more people never make fewer cold days", () => {
    expect(share({ wanted_C: F(95) })).toBeLessThanOrEqual(share({}));
    expect(share({})).toBeLessThanOrEqual(share({ wanted_C: F(115) }));
    expect(share({})).toBeLessThan(share(COLD_TANK));
    expect(share({ household: { people: 2, bathrooms: 2 } })).toBeLessThan(
      share({ household: { people: 7, bathrooms: 2 } }),
    );
  });
});

describe("the worst day, run again", () => {
  const sampled = sampleDays(COLD_TANK.household, 1, 100);
  const { worstDay, worstShortfall_L } = findColdRisk({ ...COLD_TANK, sampled });
  const { trace, from, lowestOutlet_C } = traceDay(COLD_TANK, sampled, worstDay);

  test("runs under what is wanted, as it was counted", () => {
    expect(worstShortfall_L).toBeGreaterThan(50);
    expect(lowestOutlet_C ?? 99).toBeLessThan(COLD_TANK.wanted_C);
  });

  test("is the last 1,440 minutes of the trace, and draws that day's hot water", () => {
    expect(trace.count - from).toBe(1440);
    const drawn_L = trace.drawn_L.slice(from).reduce((sum, one) => sum + one, 0);
    const asked_L = drawsOf(sampled.slice(worstDay, worstDay + 1), COLD_TANK.wanted_C).volume_L;
    expect(drawn_L).toBeGreaterThan(0);
    expect(drawn_L).toBeLessThanOrEqual(asked_L.reduce((sum, one) => sum + one, 0));
  });

  test("where no day is cold it is the day of most hot water, and its outlet stays warm", () => {
    const plan = [{ from_s: 0, policy: POLICIES.both_together, setpoint_C: F(140) }] as const;
    const easy = { ...FAMILY, plan, household: { people: 1, bathrooms: 1 } };
    const days = sampleDays(easy.household, 1, 30);
    const risk = findColdRisk({ ...easy, sampled: days });
    expect(risk.coldDays).toBe(0);
    expect(traceDay(easy, days, risk.worstDay).lowestOutlet_C ?? 0).toBeGreaterThanOrEqual(easy.wanted_C);
  });

  test("keeps every layer between cold water and 5 K over the setpoint, the upper dead band", () => {
    const [coldest_C, warmest_C] = [
      trace.layers_C.reduce((a, b) => Math.min(a, b)),
      trace.layers_C.reduce((a, b) => Math.max(a, b)),
    ];
    expect(coldest_C).toBeGreaterThanOrEqual(F(45) - 1e-9);
    expect(warmest_C).toBeLessThanOrEqual(F(125) + 5);
  });
});
