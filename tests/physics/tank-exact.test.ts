import { describe, expect, test } from "vitest";
import { POLICIES } from "../../src/equipment/policies.ts";
import { simulate } from "../../src/physics/tank/simulate.ts";
import { makeTrace } from "../../src/physics/tank/trace.ts";
import { fromBase, toBase } from "../../src/units/convert.ts";
import { bareSite, bareTank, onePlan, plainDraw, REFERENCE_WATER } from "../fixtures/bare-tank.ts";
import { REFERENCE_UNITS } from "../fixtures/water-heaters.ts";
import { CHAIN, COOL_DOWN, DRAWN, HEATING, MIXED, PLUG, UA_TYPICAL, USABLE } from "../reference/tank.ts";

const HOT_C = toBase(DRAWN.hot_F, "F");
const COLD_C = toBase(DRAWN.cold_F, "F");
const VOLUME_L = toBase(50, "gal");

/** Draws a volume from a full tank at a steady flow; the outlet follows on a fine grid. */
function drawVolume(volume_L: number, layers: number, drawModel: "plug" | "mixed_layers", stirred = 0) {
  const duration_s = 2000;
  const trace = makeTrace(duration_s, 2);
  const result = simulate(
    bareTank({ stirred }),
    bareSite(COLD_C),
    onePlan(duration_s, volume_L > 0 ? [plainDraw(volume_L, duration_s)] : []),
    { layers, drawModel, trace, start_C: HOT_C },
  );
  return { outlet_F: fromBase(result.summary.outletAtEnd_C, "F"), trace, result };
}

describe("cool-down of a mixed tank", () => {
  test.each(COOL_DOWN)("$hours h from $from_F F in $air_F F: $to_F F within 0.001 F", (row) => {
    const unit = bareTank({ volume_L: toBase(row.volume_gal, "gal"), loss_W_K: toBase(row.loss_Btu_h_F, "Btu_h_F") });
    const site = bareSite(COLD_C, toBase(row.air_F, "F"));
    const options = { layers: 1, start_C: toBase(row.from_F, "F"), water: REFERENCE_WATER };
    const { summary } = simulate(unit, site, onePlan(row.hours * 3600), options);
    expect(Math.abs(fromBase(summary.meanAtEnd_C, "F") - row.to_F)).toBeLessThan(1e-3);
  });

  test("one step of six hours and 360 of a minute end at the same temperature", () => {
    const unit = bareTank({ loss_W_K: 1.6 });
    const run = (idle_s: number) =>
      simulate(unit, bareSite(10), onePlan(6 * 3600), {
        layers: 1,
        start_C: 60,
        pace: { idle_s, heating_s: 60, drawing_s: 60, exchange_s: 0 },
      }).summary.meanAtEnd_C;
    expect(Math.abs(run(6 * 3600) - run(60))).toBeLessThan(1e-7);
  });

  test("twelve layers lose 0 to 2 % less than one, because the cold end loses less", () => {
    const unit = bareTank({ loss_W_K: 1.6, conductivity_W_m_K: 1.7 });
    const run = (layers: number) => simulate(unit, bareSite(10), onePlan(24 * 3600), { layers, start_C: 60 });
    const share = run(12).summary.lost_kWh / run(1).summary.lost_kWh;
    expect(share).toBeLessThan(1);
    expect(share).toBeGreaterThan(0.98);
  });
});

describe("heating from cold by an element at the bottom", () => {
  const elements = [{ place: "lower", height_m: 0, rated_W: 4500, rated_V: 240 }] as const;
  const cases = HEATING.flatMap((row) => [1, 12].map((layers) => ({ ...row, layers })));

  test.each(cases)("UA $loss_Btu_h_F, $layers layers: $hours h within 0.1 %", (row) => {
    const unit = bareTank({ loss_W_K: toBase(row.loss_Btu_h_F, "Btu_h_F"), elements });
    const setpoint_C = toBase(row.to_F, "F");
    const { summary } = simulate(
      unit,
      bareSite(COLD_C, toBase(row.air_F, "F")),
      onePlan(2.5 * 3600, [], setpoint_C, POLICIES.elements_only),
      { layers: row.layers, start_C: toBase(row.from_F, "F"), water: REFERENCE_WATER },
    );
    expect(Math.abs(summary.lowerRan_s / 3600 / row.hours - 1)).toBeLessThan(1e-3);
  });

  test("on 208 V the same takes (240/208)² as long", () => {
    const unit = bareTank({ elements });
    const schedule = onePlan(4 * 3600, [], 52, POLICIES.elements_only);
    const at = (supply_V: number) => simulate(unit, { ...bareSite(14), supply_V }, schedule, { start_C: 14 }).summary;
    expect(at(208).lowerRan_s / at(240).lowerRan_s).toBeCloseTo((240 / 208) ** 2, 3);
  });
});

describe("plug flow", () => {
  test.each(PLUG)("after $drawn_gal of 50 gal the outlet is at $outlet_F F", ({ drawn_gal, outlet_F }) => {
    expect(drawVolume(toBase(drawn_gal, "gal"), 12, "plug").outlet_F).toBeCloseTo(outlet_F, 9);
  });

  test.each([1, 7, 12, 60])("with %d layers exactly one tank volume comes out hot", (layers) => {
    const { result } = drawVolume(1.5 * VOLUME_L, layers, "plug");
    expect(result.books.drawnOut_kWh).toBeCloseTo(
      ((VOLUME_L * HOT_C + 0.5 * VOLUME_L * COLD_C) * 0.993795 * 4189.9) / 3.6e6,
      6,
    );
  });

  test("a draw cut into 200 small ones leaves the tank as one draw does", () => {
    const many = Array.from({ length: 200 }, (_, i) => plainDraw(0.45, 7, 10 * i));
    const run = (draws: typeof many) =>
      simulate(bareTank({ stirred: 0.2 }), bareSite(COLD_C), onePlan(2000, draws), { start_C: HOT_C }).layersAtEnd_C;
    const [once, often] = [run([plainDraw(90, 1400)]), run(many)];
    once.forEach((t_C, i) => {
      expect(often[i]).toBeCloseTo(t_C, 3);
    });
  });
});

describe("a chain of fully mixed layers, the textbook tank", () => {
  test.each(MIXED)("one layer, $volumes volumes drawn: $outlet_F F within 0.001 F", ({ volumes, outlet_F }) => {
    expect(Math.abs(drawVolume(volumes * VOLUME_L, 1, "mixed_layers").outlet_F - outlet_F)).toBeLessThan(1e-3);
  });

  test.each(CHAIN)("$layers layers, $volumes volumes drawn: $outlet_F F within 0.001 F", (row) => {
    const { outlet_F } = drawVolume(row.volumes * VOLUME_L, row.layers, "mixed_layers");
    expect(Math.abs(outlet_F - row.outlet_F)).toBeLessThan(1e-3);
  });

  test.each(USABLE)("$layers layers give $volumes volumes before the outlet falls 15 F, within 1e-3", (row) => {
    const { trace } = drawVolume(VOLUME_L, row.layers, "mixed_layers");
    const floor_C = HOT_C - toBase(15, "F_diff");
    const i = trace.outlet_C.findIndex((t_C) => t_C < floor_C);
    const [before, after] = [trace.outlet_C[i - 1] ?? HOT_C, trace.outlet_C[i] ?? 0];
    const place = i + (before - floor_C) / (before - after);
    expect(Math.abs((place * trace.every_s) / 2000 - row.volumes)).toBeLessThan(1e-3);
  });
});

describe("a stirred zone under plug flow", () => {
  /** Mixed tank and plug in series: hot until the plug has gone, then exponential. */
  const exact_F = (volumes: number, zone: number) =>
    volumes < 1 - zone
      ? DRAWN.hot_F
      : DRAWN.cold_F + (DRAWN.hot_F - DRAWN.cold_F) * Math.exp(-(volumes - (1 - zone)) / zone);

  test("the outlet nears the exact curve as layers are refined: 5.5, 3 and 1.1 F at worst with 20, 40 and 120 layers", () => {
    // A share that makes the zone k + 1/2 layers at each of these.
    const worst = [20, 40, 120].map((layers) => {
      const zone = (Math.round(0.2 * layers) + 0.5) / layers;
      const errors = [0.7, 0.85, 0.9, 1, 1.1, 1.3].map((volumes) => {
        const { outlet_F } = drawVolume(volumes * VOLUME_L, layers, "plug", zone);
        return Math.abs(outlet_F - exact_F(volumes, zone));
      });
      return Math.max(...errors);
    });
    const [coarse = 0, middle = 0, fine = 0] = worst;
    expect(coarse).toBeLessThan(5.5);
    expect(middle).toBeLessThan(3);
    expect(fine).toBeLessThan(1.1);
    expect(fine).toBeLessThan(middle);
    expect(middle).toBeLessThan(coarse);
  });
});

test.each(REFERENCE_UNITS)(
  "$id: its loss is 0.5 to 1 times the lower typical value, as well-insulated tanks are",
  (unit) => {
    const loss_Btu_h_F = fromBase(unit.tank.heatLoss_W_K, "Btu_h_F");
    expect(loss_Btu_h_F).toBeGreaterThan(0.5 * UA_TYPICAL.lowest_Btu_h_F);
    expect(loss_Btu_h_F).toBeLessThan(UA_TYPICAL.highest_Btu_h_F);
  },
);
