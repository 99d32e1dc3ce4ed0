import { describe, expect, test } from "vitest";
import { humidityRatioFromRelativeHumidity, saturationHumidityRatio } from "../../../src/physics/moist-air.ts";
import { ROOM_PRESSURE_kPa, type RoomSpec } from "../../../src/physics/room/room-spec.ts";
import { openRoom, type RoomZone } from "../../../src/physics/room/room-zone.ts";
import type { AirState, RoomExchange } from "../../../src/physics/tank/room-air.ts";

const ratio = (t_C: number, rh: number) => humidityRatioFromRelativeHumidity(t_C, rh, ROOM_PRESSURE_kPa);
const NOTHING: RoomExchange = { released_J: 0, taken_J: 0, condensed_kg: 0, ran_s: 0 };
const SPEC: RoomSpec = {
  every_s: 300,
  volume_m3: 20,
  surfaces_W_K: 400,
  quickMass_J_K: 600_000,
  moistureStore: 15,
  neighbours: [
    { id: "adjoining", walls_W_K: 50, leak_m3_s: 0.005, at_C: () => 20, humidityRatio: () => ratio(20, 0.4) },
    { id: "outdoors", walls_W_K: 10, leak_m3_s: 0.001, at_C: () => -5, humidityRatio: () => ratio(-5, 0.8) },
  ],
  gains_W: 0,
  start: { air_C: 20, humidityRatio: ratio(20, 0.4) },
};

/** Runs a room for some hours with the same exchange every interval. */
function run(room: RoomZone, hours: number, exchange: RoomExchange): AirState {
  const air: AirState = { dryBulb_C: 0, humidityRatio: 0, pressure_kPa: 0, aroundTank_C: 0 };
  room.update(0, NOTHING, air);
  for (let k = 1; k <= (hours * 3600) / room.every_s; k += 1) room.update(k * room.every_s, exchange, air);
  return air;
}
/** A unit that takes so much heat and water all the time. */
function taking(heat_W: number, water_kg_h = 0): RoomExchange {
  return { released_J: 0, taken_J: heat_W * 300, condensed_kg: (water_kg_h / 3600) * 300, ran_s: 300 };
}

describe("books", () => {
  test("heat and water close to 1e-9 with walls, cracks, a heater, other heat and a unit that condenses", () => {
    const room = openRoom({ ...SPEC, gains_W: 80, heater: { setting_C: 16, most_W: 300 } });
    run(room, 48, { ...taking(900, 0.1), released_J: 20_000 });
    const { gaps, ledger } = room.closeAndClear();
    expect(gaps.heatShare).toBeLessThan(1e-9);
    expect(gaps.waterShare).toBeLessThan(1e-9);
    expect(ledger.heater_J).toBeGreaterThan(0);
    expect(ledger.coil_kg).toBeCloseTo(4.8, 9);
    expect(ledger.seconds).toBe(48 * 3600);
  });
  test("they close with water settling on cold surfaces too", () => {
    const room = openRoom({ ...SPEC, start: { air_C: 20, humidityRatio: ratio(20, 0.95) } });
    run(room, 6, taking(1500));
    const { gaps, ledger } = room.closeAndClear();
    expect(ledger.settled_kg).toBeGreaterThan(0.01);
    expect(gaps.heatShare).toBeLessThan(1e-9);
    expect(gaps.waterShare).toBeLessThan(1e-9);
  });
  test("a room that loses heat nobody wrote down does not pass", () => {
    const room = openRoom(SPEC);
    run(room, 2, taking(500));
    room.ledger.taken_J -= 10_000;
    expect(() => room.closeAndClear()).toThrow(/books do not close/);
  });
});

describe("temperature", () => {
  test("left alone it settles between its neighbours by their conductances, air and wall apart", () => {
    const { dryBulb_C } = run(openRoom(SPEC), 400, NOTHING);
    // Air node and wall node in series: solve the two balances by hand.
    const density = 1 / 0.8433;
    const k1 = 0.006 * density * 1019;
    const s1 = (0.005 * 20 + 0.001 * -5) / 0.006;
    const wall = (t: number) => (400 * t + 50 * 20 + 10 * -5) / 460;
    const t = (400 * ((50 * 20 - 50) / 460) + k1 * s1) / (400 - (400 * 400) / 460 + k1);
    expect(400 * (wall(t) - t) + k1 * (s1 - t)).toBeCloseTo(0, 9);
    expect(dryBulb_C).toBeCloseTo(t, 2);
  });
  test("steady fall of a unit that always runs is its heat over the conductance of walls, surfaces and air", () => {
    const still = run(openRoom(SPEC), 400, NOTHING).dryBulb_C;
    const cooled = run(openRoom(SPEC), 400, taking(600)).dryBulb_C;
    const density = 1 / 0.8433;
    const conductance_W_K = 0.006 * density * 1019 + 1 / (1 / 400 + 1 / 60);
    expect(still - cooled).toBeCloseTo(600 / conductance_W_K, 1);
  });
  test("a heater with enough power holds its setting, one without falls short and runs all the time", () => {
    const strong = openRoom({ ...SPEC, heater: { setting_C: 18, most_W: 3000 } });
    expect(run(strong, 72, taking(600)).dryBulb_C).toBeCloseTo(18, 2);
    const start = { ...SPEC.start, air_C: 15 };
    const weak = openRoom({ ...SPEC, start, heater: { setting_C: 18, most_W: 100 } });
    expect(run(weak, 72, taking(600)).dryBulb_C).toBeLessThan(17);
    expect(weak.ledger.heater_J).toBeCloseTo(100 * 72 * 3600, 3);
  });
  test("water that condenses on the coil spares the air that much cooling", () => {
    const dry = run(openRoom(SPEC), 24, taking(600)).dryBulb_C;
    const wet = run(openRoom(SPEC), 24, taking(600, 0.06)).dryBulb_C;
    // 0.06 kg an hour release 42 W, which is 0.7 K over about 60 W/K.
    expect(wet - dry).toBeGreaterThan(0.5);
    expect(wet - dry).toBeLessThan(0.9);
  });
});

describe("humidity", () => {
  test("never passes saturation", () => {
    const air = run(openRoom({ ...SPEC, start: { air_C: 20, humidityRatio: ratio(20, 0.99) } }), 4, taking(2000));
    expect(air.humidityRatio).toBeLessThan(saturationHumidityRatio(air.dryBulb_C, ROOM_PRESSURE_kPa) * 1.001);
  });
  test("drifts toward the mix of the air that comes in", () => {
    const { humidityRatio } = run(openRoom(SPEC), 600, NOTHING);
    expect(humidityRatio).toBeCloseTo((0.005 * ratio(20, 0.4) + 0.001 * ratio(-5, 0.8)) / 0.006, 6);
  });
});

describe("ducts", () => {
  const ducts = { airflow_m3_s: 0.1, makeUp: "adjoining" } as const;
  test("both outside: the room keeps its temperature, and the unit draws outdoor air", () => {
    const room = openRoom({ ...SPEC, ducts: { ...ducts, intake: "outdoors", exhaust: "outdoors" } });
    const air = run(room, 48, taking(900));
    expect(air.dryBulb_C).toBe(-5);
    expect(air.aroundTank_C).toBeCloseTo(run(openRoom(SPEC), 48, NOTHING).dryBulb_C, 9);
  });
  test("exhaust only: the cold leaves, and the room warms toward the air that comes in for it", () => {
    const exhaust = openRoom({ ...SPEC, ducts: { ...ducts, intake: "room", exhaust: "outdoors" } });
    const { dryBulb_C } = run(exhaust, 48, taking(900));
    expect(dryBulb_C).toBeGreaterThan(run(openRoom(SPEC), 48, NOTHING).dryBulb_C);
    expect(exhaust.closeAndClear().gaps.heatShare).toBeLessThan(1e-9);
  });
  test("intake only: outdoor air, chilled once more, ends up in the room", () => {
    const intake = openRoom({ ...SPEC, ducts: { ...ducts, intake: "outdoors", exhaust: "room" } });
    const { aroundTank_C, dryBulb_C } = run(intake, 48, taking(900));
    expect(dryBulb_C).toBe(-5);
    expect(aroundTank_C).toBeLessThan(run(openRoom(SPEC), 48, taking(900)).dryBulb_C);
  });
});

test("openings bring the room closer to its neighbour than cracks alone", () => {
  const open = openRoom({ ...SPEC, openings: { to: "adjoining", flow_m3_s: () => 0.05 } });
  expect(run(open, 48, taking(900)).dryBulb_C).toBeGreaterThan(run(openRoom(SPEC), 48, taking(900)).dryBulb_C + 3);
});
