import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  frictionDrop_kPa,
  frictionFactor,
  pipeContents_L,
  plugFlowWait_s,
  velocity_m_s,
} from "../../src/physics/pipe-flow.ts";
import { planRun } from "../../src/physics/pipe-run.ts";
import { insideDiameter_m, nextSizeDown, PIPE_KINDS, PIPE_SIZES } from "../../src/physics/pipe-table.ts";
import { velocityLimit_m_s } from "../../src/physics/velocity-limit.ts";
import { fromBase, toBase } from "../../src/units/convert.ts";
import {
  B88_WALLS,
  CONTENTS,
  colebrook,
  FASTEST,
  FRICTION,
  hazenWilliams_psi_ft,
  VELOCITY,
  WAITS,
} from "../reference/pipe.ts";

const FOOT_m = toBase(1, "ft");
const OZ_PER_GAL = 128;
const COLD_C = toBase(60, "F");
const gpm = (flow: number) => toBase(flow, "gpm");

describe.each(CONTENTS)("$kind $size", ({ kind, size, inside_in, gal_ft, oz_ft }) => {
  const inside_m = insideDiameter_m(kind, size) ?? Number.NaN;
  test(`is ${inside_in} in wide`, () => expect(fromBase(inside_m, "in")).toBeCloseTo(inside_in, 9));
  test(`holds ${gal_ft} gal and ${oz_ft} oz in a foot within 1 %`, () => {
    const held_gal = fromBase(pipeContents_L(inside_m, FOOT_m), "gal");
    expect(Math.abs(held_gal / gal_ft - 1)).toBeLessThan(0.01);
    expect(Math.abs((held_gal * OZ_PER_GAL) / oz_ft - 1)).toBeLessThan(0.01);
  });
});

test.each(B88_WALLS)(
  "$kind $size is $outside_in in less two walls of $wall_in in",
  ({ kind, size, outside_in, wall_in }) => {
    expect(fromBase(insideDiameter_m(kind, size) ?? Number.NaN, "in")).toBeCloseTo(outside_in - 2 * wall_in, 9);
  },
);

test("within a kind, a larger nominal size is wider", () => {
  for (const kind of PIPE_KINDS) {
    const widths = PIPE_SIZES.map((size) => insideDiameter_m(kind, size)).filter((width) => width !== undefined);
    expect(widths.length).toBeGreaterThanOrEqual(4);
    expect(widths).toEqual([...widths].sort((a, b) => a - b));
  }
});

describe("sizes", () => {
  const down = [
    ["copper_l", "3/4", "1/2"],
    ["copper_m", "1", "3/4"],
    ["pex", "1/2", "3/8"],
  ] as const;
  test.each(down)("in %s below %s comes %s", (kind, size, smaller) => expect(nextSizeDown(kind, size)).toBe(smaller));
  test("CPVC has none below 1/2", () => expect(nextSizeDown("cpvc", "1/2")).toBeUndefined());
  test("CPVC is not made in 3/8", () => expect(insideDiameter_m("cpvc", "3/8")).toBeUndefined());
});

test.each(WAITS)("$length_ft ft of $kind $size at $flow_gpm gpm empty in $wait_s s within 0.5 %", (row) => {
  const inside_m = insideDiameter_m(row.kind, row.size) ?? Number.NaN;
  const actual_s = plugFlowWait_s(pipeContents_L(inside_m, toBase(row.length_ft, "ft")), gpm(row.flow_gpm));
  expect(Math.abs(actual_s / row.wait_s - 1)).toBeLessThan(0.005);
});

describe("velocity", () => {
  const { constant, flow_gpm, inside_in, velocity_ft_s } = VELOCITY;
  const ft_s = (flow: number, inside: number) => fromBase(velocity_m_s(gpm(flow), toBase(inside, "in")), "ft_s");
  test(`of ${flow_gpm} gpm in ${inside_in} in is ${velocity_ft_s} ft/s`, () => {
    expect(Math.abs(ft_s(flow_gpm, inside_in) - velocity_ft_s)).toBeLessThan(0.01);
    expect(Math.abs(ft_s(1, 1) - constant)).toBeLessThan(1e-4);
  });
  test.each(FASTEST)("in $inside_in in reaches 8 ft/s at $at_8_gpm and 5 ft/s at $at_5_gpm gpm", (row) => {
    expect(Math.abs(ft_s(row.at_8_gpm, row.inside_in) / 8 - 1)).toBeLessThan(0.005);
    expect(Math.abs(ft_s(row.at_5_gpm, row.inside_in) / 5 - 1)).toBeLessThan(0.005);
  });
  const limits = [
    ["copper", "hot", 140, 5],
    ["copper", "hot", 141, 3],
    ["copper", "cold", 50, 8],
    ["plastic", "hot", 140, 8],
  ] as const;
  test.each(limits)("in %s, %s at %f °F, is advised up to %f ft/s", (metal, water, at_F, limit_ft_s) => {
    expect(fromBase(velocityLimit_m_s(metal, water, toBase(at_F, "F")), "ft_s")).toBeCloseTo(limit_ft_s, 9);
  });
});

describe("friction", () => {
  test("in laminar flow is 64 / Re", () => {
    for (const reynolds of [100, 500, 1500]) expect(frictionFactor(reynolds, 0) * reynolds).toBeCloseTo(64, 1);
  });

  test("agrees with Colebrook within 2 % in drawn tubing from Re 4000 to a million", () => {
    for (const reynolds of [4e3, 1e4, 3e4, 1e5, 3e5, 1e6])
      for (const roughness of [0, 1.5e-4])
        expect(Math.abs(frictionFactor(reynolds, roughness) / colebrook(reynolds, roughness) - 1)).toBeLessThan(0.02);
  });

  test.each(FRICTION)("$flow_gpm gpm in $size L lose $drop_psi psi per 100 ft within 10 % (published table)", (row) => {
    const drop_kPa = frictionDrop_kPa(gpm(row.flow_gpm), toBase(row.inside_in, "in"), 100 * FOOT_m, COLD_C);
    expect(Math.abs(fromBase(drop_kPa, "psi") / row.drop_psi - 1)).toBeLessThan(0.1);
  });

  test("agrees with Hazen-Williams at C = 140 within 15 % at 60 °F, 2 to 8 ft/s, 1/2 to 1-1/4", () => {
    for (const inside_in of [0.545, 0.785, 1.025, 1.265])
      for (const velocity_ft_s of [2, 4, 8]) {
        const flow = (velocity_ft_s * inside_in ** 2) / VELOCITY.constant;
        const drop_psi = fromBase(frictionDrop_kPa(gpm(flow), toBase(inside_in, "in"), FOOT_m, COLD_C), "psi");
        expect(Math.abs(drop_psi / hazenWilliams_psi_ft(flow, inside_in, 140) - 1)).toBeLessThan(0.15);
      }
  });

  test("of hot water is less than of cold", () => {
    expect(frictionDrop_kPa(0.1, 0.02, 10, 60)).toBeLessThan(frictionDrop_kPa(0.1, 0.02, 10, 10));
  });

  test("is zero without flow or without length, and rises with flow", () => {
    expect(frictionDrop_kPa(0, 0.02, 10, 20)).toBe(0);
    expect(frictionDrop_kPa(0.1, 0.02, 0, 20)).toBe(0);
    const flow = fc.double({ min: 0.001, max: 5, noNaN: true });
    fc.assert(
      fc.property(flow, (flow_L_s) => {
        const more = frictionDrop_kPa(flow_L_s * 1.05, 0.02, 10, 20);
        expect(more).toBeGreaterThan(frictionDrop_kPa(flow_L_s, 0.02, 10, 20));
      }),
    );
  });
});

describe("a run of two pipes", () => {
  const main = { inside_m: 0.02, length_m: 12 };
  const branch = { inside_m: 0.0138, length_m: 3 };
  const [both, alone, end] = [[main, branch], [main], [branch]].map((run) => planRun(run, 0.1, 50));

  test("holds, waits and loses what its pieces do together", () => {
    const sum = (pick: (run: ReturnType<typeof planRun>) => number) =>
      [alone, end].reduce((a, run) => a + (run ? pick(run) : 0), 0);
    expect(both?.contents_L).toBeCloseTo(
      sum((run) => run.contents_L),
      12,
    );
    expect(both?.wait_s).toBeCloseTo(
      sum((run) => run.wait_s),
      9,
    );
    expect(both?.drop_kPa).toBeCloseTo(
      sum((run) => run.drop_kPa),
      9,
    );
  });
  test("runs fastest in the narrow piece", () => expect(both?.velocity_m_s).toBe(end?.velocity_m_s));
  test("likely waits 1.2 times the shortest wait, 0.6 gal collected for 0.5 gal stored", () => {
    expect((both?.likely_s ?? 0) / (both?.wait_s ?? 1)).toBeCloseTo(1.2, 12);
  });
});

const REFUSED = [
  ["a NaN width", () => pipeContents_L(Number.NaN, 1)],
  ["a NaN length", () => pipeContents_L(0.02, Number.NaN)],
  ["no flow to wait for", () => plugFlowWait_s(1, 0)],
  ["a NaN flow", () => velocity_m_s(Number.NaN, 0.02)],
  ["a negative flow", () => frictionDrop_kPa(-0.1, 0.02, 10, 20)],
  ["NaN water", () => frictionDrop_kPa(0.1, 0.02, 10, Number.NaN)],
  ["a Reynolds number of zero", () => frictionFactor(0, 0)],
  ["a velocity limit for NaN water", () => velocityLimit_m_s("copper", "hot", Number.NaN)],
] as const;
test.each(REFUSED)("refuses %s", (_, run) => {
  expect(run).toThrow(RangeError);
});
