import { describe, expect, test } from "vitest";
import { loadFaults } from "../../adapters/library/load-faults.ts";
import { openRandomStream } from "../../src/household/random.ts";
import { drawFault, drawOutcome } from "../bench/fault-cases.ts";
import { playRound, ROUNDS } from "../bench/faults.ts";
import { FIXTURE } from "./fixture-knowledge.ts";

const knowledge = await loadFaults("src");
/** Few, for it is a test; the bench plays thousands. */
const CASES = 70;
const TWO_CAUSE_CASES = 40;

describe("against a fixed checklist and against the likeliest cause first, on the same synthetic faults", () => {
  test.each(ROUNDS)("$name: more are solved, in fewer minutes", (round) => {
    const { ours, checklist, likeliest } = playRound(
      knowledge,
      round,
      round.causes === 1 ? CASES : TWO_CAUSE_CASES,
      11,
    ).total;
    expect(ours.solved).toBeGreaterThan(checklist.solved);
    expect(ours.solved).toBeGreaterThan(likeliest.solved);
    expect(ours.minutes).toBeLessThan(checklist.minutes);
    expect(ours.minutes).toBeLessThan(likeliest.minutes);
  });
});

describe("the bench itself", () => {
  test("the same seed draws the same faults", () => {
    const draw = () => drawFault(knowledge, openRandomStream(3, 1), 2);
    expect(draw()).toEqual(draw());
  });

  test("outcomes come as often as the knowledge says", () => {
    const [check] = FIXTURE.checks;
    const valve = FIXTURE.causes.filter(({ id }) => id === "valve");
    if (check === undefined) throw new Error("the fixture has no checks");
    const random = openRandomStream(5, 5);
    const noise = { wrong: 0, notSure: 0 };
    const bad = Array.from({ length: 4000 }, () => drawOutcome(check, valve, noise, random)).filter(
      (id) => id === "bad",
    );
    // 0.6 of 0.6 + 0.25; the standard error of 4,000 draws is 0.7 %.
    expect(bad.length / 4000).toBeGreaterThan(0.6 / 0.85 - 0.03);
    expect(bad.length / 4000).toBeLessThan(0.6 / 0.85 + 0.03);
  });
});
