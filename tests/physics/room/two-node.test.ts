import fc from "fast-check";
import { expect, test } from "vitest";
import { type MoistNode, passMoistNode, passTwoNode, type TwoNode } from "../../../src/physics/room/two-node.ts";

const NODE: TwoNode = {
  c1_J_K: 24_000,
  c2_J_K: 600_000,
  between_W_K: 400,
  k1_W_K: 20,
  k2_W_K: 60,
  s1_C: 20,
  s2_C: 10,
  q1_W: -1000,
  q2_W: 0,
  t1_C: 18,
  t2_C: 17,
  mean1_C: 0,
  mean2_C: 0,
};
const MOIST: MoistNode = { air_kg: 30, flow_kg_s: 0.01, supply: 0.008, water_kg_s: -2e-5, ratio: 0.005, mean: 0 };

/** The same equations by steps of a classical fourth-order Runge-Kutta, written here and nowhere else. */
function rungeKutta(node: TwoNode, seconds: number, steps: number): readonly [number, number] {
  const slope = (a: number, b: number): readonly [number, number] => [
    (node.between_W_K * (b - a) + node.k1_W_K * (node.s1_C - a) + node.q1_W) / node.c1_J_K,
    (node.between_W_K * (a - b) + node.k2_W_K * (node.s2_C - b) + node.q2_W) / node.c2_J_K,
  ];
  let [a, b] = [node.t1_C, node.t2_C];
  const h = seconds / steps;
  for (let step = 0; step < steps; step += 1) {
    const k1 = slope(a, b);
    const k2 = slope(a + (h / 2) * k1[0], b + (h / 2) * k1[1]);
    const k3 = slope(a + (h / 2) * k2[0], b + (h / 2) * k2[1]);
    const k4 = slope(a + h * k3[0], b + h * k3[1]);
    a += (h / 6) * (k1[0] + 2 * k2[0] + 2 * k3[0] + k4[0]);
    b += (h / 6) * (k1[1] + 2 * k2[1] + 2 * k3[1] + k4[1]);
  }
  return [a, b];
}

test("two temperatures follow the same curve as small Runge-Kutta steps, over minutes and over hours", () => {
  for (const seconds of [60, 300, 7200]) {
    const [a, b] = rungeKutta(NODE, seconds, 4000);
    const node = { ...NODE };
    passTwoNode(node, seconds);
    expect(node.t1_C).toBeCloseTo(a, 8);
    expect(node.t2_C).toBeCloseTo(b, 8);
  }
});

test("one temperature that nothing joins to the other follows T = S + (T0 - S) e^(-K t / C) exactly", () => {
  const node = { ...NODE, between_W_K: 0, q1_W: 0 };
  passTwoNode(node, 900);
  expect(node.t1_C).toBeCloseTo(20 + (18 - 20) * Math.exp((-20 * 900) / 24_000), 12);
  expect(node.t2_C).toBeCloseTo(10 + (17 - 10) * Math.exp((-60 * 900) / 600_000), 12);
});

test("after a long time both balance: what goes in goes out", () => {
  const node = { ...NODE };
  passTwoNode(node, 1e8);
  const { t1_C, t2_C } = node;
  expect(400 * (t2_C - t1_C) + 20 * (20 - t1_C) - 1000).toBeCloseTo(0, 8);
  expect(400 * (t1_C - t2_C) + 60 * (10 - t2_C)).toBeCloseTo(0, 8);
});

test("heat is conserved for any numbers: stored more is what the means say came in", () => {
  const positive = fc.double({ min: 0.1, max: 1000, noNaN: true });
  const temperature = fc.double({ min: -30, max: 40, noNaN: true });
  fc.assert(
    fc.property(
      fc.record({ k1: positive, k2: positive, g: positive, t1: temperature, t2: temperature, seconds: positive }),
      ({ k1, k2, g, t1, t2, seconds }) => {
        const node = { ...NODE, k1_W_K: k1, k2_W_K: k2, between_W_K: g, t1_C: t1, t2_C: t2 };
        passTwoNode(node, seconds);
        const in_J = seconds * (k1 * (20 - node.mean1_C) + k2 * (10 - node.mean2_C) - 1000);
        const stored_J = 24_000 * (node.t1_C - t1) + 600_000 * (node.t2_C - t2);
        const passed_J = seconds * (k1 * 60 + k2 * 60 + 1000) + 24_000 * 60;
        expect(Math.abs(in_J - stored_J) / passed_J).toBeLessThan(1e-9);
      },
    ),
  );
});

test("two short steps are one long one", () => {
  const once = { ...NODE };
  passTwoNode(once, 600);
  const twice = { ...NODE };
  passTwoNode(twice, 250);
  passTwoNode(twice, 350);
  expect(twice.t1_C).toBeCloseTo(once.t1_C, 10);
  expect(twice.t2_C).toBeCloseTo(once.t2_C, 10);
});

test("a room that nothing holds is refused", () => {
  expect(() => passTwoNode({ ...NODE, k1_W_K: 0, k2_W_K: 0 }, 60)).toThrow(/held by its surroundings/);
});

test("moisture follows W = W* + (W0 - W*) e^(-f t / m), and what came in is what is held more", () => {
  const moist = { ...MOIST };
  passMoistNode(moist, 1800);
  const settled = 0.008 - 2e-5 / 0.01;
  expect(moist.ratio).toBeCloseTo(settled + (0.005 - settled) * Math.exp((-0.01 * 1800) / 30), 14);
  const in_kg = 1800 * (0.01 * (0.008 - moist.mean) - 2e-5);
  expect(30 * (moist.ratio - 0.005)).toBeCloseTo(in_kg, 12);
});

test("without any change of air the water that is taken is missing: 0.02 g/s for half an hour are 36 g", () => {
  const moist = { ...MOIST, flow_kg_s: 0 };
  passMoistNode(moist, 1800);
  expect(30 * (0.005 - moist.ratio)).toBeCloseTo(0.036, 12);
});
