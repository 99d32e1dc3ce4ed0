import { describe, expect, test } from "vitest";
import { runTopic } from "../../src/declaration/run-topic.ts";
import { projectJob } from "../../src/jobs/project-job.ts";
import { startup } from "../../src/topics/startup.ts";
import { toBase } from "../../src/units/convert.ts";
import { answerOf, askTopic, codesOf, resultOf } from "../support/ask-topic.ts";
import { fixtureBooks } from "../support/fixture-books.ts";
import { eventsOf } from "../support/job-samples.ts";

const rowOf = (answer: ReturnType<typeof answerOf>, step: string) =>
  answer.tables?.[0]?.rows.find(([name]) => typeof name === "object" && "code" in name && name.code === `step_${step}`);

describe("startup", () => {
  test("lists every step with what is accepted, and says that nothing is kept without a job", () => {
    const answer = answerOf(startup, { list: true });
    expect(answer.tables?.[0]?.rows.length).toBe(15);
    expect(answer.verdict).toBe("caution");
    expect(codesOf(answer)).toContain("not_kept");
    expect(rowOf(answer, "line_pressure")?.[2]).toMatchObject({
      code: "range_line_pressure",
      data: { high: { kind: "pressure", value: toBase(80, "psi") } },
    });
  });

  test("leaves the expansion tank out where the system is open", () => {
    expect(rowOf(answerOf(startup, { list: true, closed: false }), "precharge")).toBeUndefined();
    expect(rowOf(answerOf(startup, { list: true, closed: true }), "precharge")).toBeDefined();
  });

  test("says what an element gives on another voltage: 208 V on 240 V is three quarters of the power", () => {
    const answer = answerOf(startup, { list: true, model: "brackwell-50", start_supply: 208 });
    const found = answer.findings.find(({ code }) => code === "element_gives");
    const power = found?.data["power"];
    if (typeof power !== "object") throw new Error("no power");
    // NEC/UL plates: 4500 W at 240 V is 3380 W at 208 V (Ohm's law).
    expect(power.value / 4500).toBeCloseTo((208 / 240) ** 2, 3);
  });

  test("asks the unit first, then the steps in order", () => {
    const { result } = askTopic(startup, {});
    expect(result).toEqual({ kind: "needs-facts", missing: ["model"] });
    expect(askTopic(startup, { model: "hollin-50" }).result).toEqual({
      kind: "needs-facts",
      missing: ["start_filled"],
    });
    expect(askTopic(startup, { model: "no-such-unit" }).result).toEqual({ kind: "needs-facts", missing: ["model"] });
  });

  test("takes what the job holds as done, and counts it", () => {
    const openJob = projectJob(
      eventsOf(
        { kind: "unit", model: "hollin-50" },
        { kind: "facts", topic: "startup", facts: { start_filled: "done", start_purged: "done" } },
        {
          kind: "reading",
          reading: {
            id: "supply",
            quantity: { kind: "voltage", value: 208 },
            isAccepted: false,
            because: "by the plate",
          },
        },
      ),
    );
    if (openJob === undefined) throw new Error("no job");
    const list = { list: { value: true, from: "asked" } } as const;
    const { result } = runTopic(startup, list, { ...fixtureBooks, openJob }, [], () => undefined);
    if (result.kind !== "answer") throw new Error("no answer");
    expect(resultOf(result, "steps_done").quantity.value).toBe(3);
    expect(rowOf(result, "supply")?.[1]).toEqual({ kind: "voltage", value: 208 });
  });
});
