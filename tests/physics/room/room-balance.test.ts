import { expect, test } from "vitest";
import { airCapacity_J_K, heatTaken_W, steadyFall_K } from "../../../src/physics/room/room-balance.ts";
import { fromBase, toBase } from "../../../src/units/convert.ts";
import { ROOM_REFERENCE } from "../../reference/room.ts";

const Btu_h = (value: number) => toBase(value, "Btu_h");

test("4500 Btu/h into the water at COP 3 takes 3000 Btu/h from the room", () => {
  const { water_Btu_h, cop, taken_Btu_h } = ROOM_REFERENCE.heatTaken;
  expect(fromBase(heatTaken_W(Btu_h(water_Btu_h), cop), "Btu_h")).toBeCloseTo(taken_Btu_h, 9);
});

test.each(ROOM_REFERENCE.steadyFall)(
  "$heat_Btu_h Btu/h out of $conductance_Btu_h_F Btu/h F is a fall of $fall_F °F",
  ({ heat_Btu_h, conductance_Btu_h_F, fall_F }) => {
    const fall_K = steadyFall_K(Btu_h(heat_Btu_h), toBase(conductance_Btu_h_F, "Btu_h_F"));
    expect(fromBase(fall_K, "F_diff")).toBeCloseTo(fall_F, 2);
  },
);

test.each(ROOM_REFERENCE.airAlone)(
  "the air alone of $volume_ft3 ft³ holds $capacity_Btu_F Btu/°F",
  ({ volume_ft3, capacity_Btu_F, fall_F_min }) => {
    const specific_J_kg_K = 0.24 * 4186.8;
    const capacity_J_K = airCapacity_J_K(toBase(volume_ft3, "ft3"), toBase(0.075, "lb_ft3"), specific_J_kg_K);
    const capacity_Btu = (toBase(capacity_J_K / 3.6e6, "kWh") / toBase(1, "Btu")) * toBase(1, "F_diff");
    expect(capacity_Btu / capacity_Btu_F).toBeCloseTo(1, 3);
    expect(fromBase((Btu_h(3000) / capacity_J_K) * 60, "F_diff") / fall_F_min).toBeCloseTo(1, 2);
  },
);
