import { describe, expect, test } from "vitest";
import { planRoom, type RoomCase, type RoomFacts } from "../../src/household/room-case.ts";
import { middlingDay, runInStillAir, runRoomDay, runStillRoom } from "../../src/household/room-day.ts";
import { heatingPenalty } from "../../src/household/room-side.ts";
import { toBase } from "../../src/units/convert.ts";
import { seedBooks } from "../support/ask-with-seeds.ts";

const NOTHING_TOLD = {
  heat_pump_W: undefined,
  tank_L: undefined,
  mode: undefined,
  place: undefined,
  outdoor_C: undefined,
  adjoining_C: undefined,
  heater_W: undefined,
  heater_setting_C: undefined,
  gains_W: undefined,
  low_grille_m2: undefined,
  high_grille_m2: undefined,
  duct_to: undefined,
  duct_run_m: undefined,
  duct_size_m: undefined,
  duct_kind: undefined,
} as const;
const FACTS: RoomFacts = {
  ...NOTHING_TOLD,
  volume_m3: toBase(450, "ft3"),
  ceiling_m: toBase(8, "ft"),
  where: "closet",
  model: "hollin-50",
  setpoint_C: toBase(125, "F"),
  people: 3,
  door: "plain",
  undercut_m: toBase(0.5, "in"),
  duct: "none",
};
function caseOf(change: Partial<RoomFacts> = {}): RoomCase {
  const known = planRoom({ ...FACTS, ...change }, seedBooks);
  if (known === undefined) throw new Error("no heat pump");
  return known;
}
const day = middlingDay(3);
const known = caseOf();
const winter = runRoomDay(known, "winter", day);
const J_PER_kWh = 3.6e6;

describe("the tank and its room", () => {
  test("agree on what was taken, condensed and given off, to the last joule", () => {
    const { summary, ledger } = winter;
    expect(ledger.taken_J / J_PER_kWh).toBeCloseTo(summary.takenFromAir_kWh, 9);
    expect(ledger.coil_kg).toBeCloseTo(summary.condensate_kg, 9);
    expect(ledger.released_J / J_PER_kWh).toBeCloseTo(summary.lost_kWh + summary.standby_kWh, 9);
  });
  test("settle: the room begins and ends two days within 0.3 K", () => {
    expect(winter.isSettled).toBe(true);
    expect(winter.ledger.seconds).toBe(2 * 86_400);
  });
  test("over settled days what the neighbours bring is what the unit takes less what the tank gives off", () => {
    const { from_J, vapour_J, taken_J, released_J } = winter.ledger;
    const brought_J = [...Object.values(from_J), ...Object.values(vapour_J)].reduce((sum, one) => sum + one, 0);
    expect(brought_J / (taken_J - released_J)).toBeCloseTo(1, 1);
  });
  test("running hours in the track are those of the unit", () => {
    const ran_s = winter.track.ran.reduce((sum, share) => sum + share * 300, 0);
    expect(ran_s).toBeCloseTo(winter.summary.heatPumpRan_s, 0);
  });
});

describe("without the unit", () => {
  const still = runStillRoom(known, "winter");
  test("a closet among heated rooms is as warm as they are", () => {
    expect(still.mean_C).toBeCloseTo(known.weather.winter.adjoining_C, 1);
    expect(Math.abs(heatingPenalty(known, { ...winter, ledger: still.ledger, days: 1 }, still).total_kWh)).toBe(0);
  });
  test("air that cannot be cooled gives a better COP than the room", () => {
    expect(runInStillAir(known, still, "winter", day).systemCop).toBeGreaterThan(winter.summary.systemCop);
  });
});

test("heating makes up no more than was taken and was not given back: (1 - 1/COP) of the heat is the bound", () => {
  const still = runStillRoom(known, "winter");
  const { total_kWh, taken_kWh } = heatingPenalty(known, winter, still);
  const { heatPumpHeat_kWh, compressor_kWh } = winter.summary;
  expect(taken_kWh).toBeLessThan((heatPumpHeat_kWh - compressor_kWh) / winter.days);
  expect(total_kWh).toBeGreaterThan(0);
  expect(total_kWh).toBeLessThan(taken_kWh);
});

test("intervals of two and of five minutes come to the same room within 0.5 K", () => {
  // A room just under and just over the size at which the interval changes.
  const under = runRoomDay(caseOf({ volume_m3: toBase(299, "ft3") }), "winter", day);
  const over = runRoomDay(caseOf({ volume_m3: toBase(301, "ft3") }), "winter", day);
  expect(Math.abs(under.mean_C - over.mean_C)).toBeLessThan(0.5);
  expect(under.summary.systemCop / over.summary.systemCop).toBeCloseTo(1, 1);
});

test("summer brings more condensate than winter", () => {
  const summer = runRoomDay(known, "summer", day);
  expect(summer.summary.condensate_kg).toBeGreaterThan(winter.summary.condensate_kg);
});
