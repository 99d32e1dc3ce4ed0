import { describe, expect, test } from "vitest";
import { type RunOnePart, runParts } from "../../adapters/workers/run-parts.ts";
import { q } from "../../src/declaration/answer.ts";
import { runTopic } from "../../src/declaration/run-topic.ts";
import { declareTopic, type ReportProgress } from "../../src/declaration/topic.ts";
import { fixtureBooks } from "../support/fixture-books.ts";

/** Two rounds of arithmetic: squares of 1..n, then each square with all of them added. Every figure is invented. */
const squares = declareTopic({
  id: "squares",
  work: "long",
  facts: { n: { type: "quantity", quantity: "count", min: 0, max: 9 } },
  results: ["sum"],
  findings: { so_far: { sum: "count" } },
  parts: {
    rounds: 2,
    count: ({ n }: { readonly n: number }) => n,
    run: (_facts, _books, done: readonly (readonly number[])[], part: number) =>
      done.length === 0 ? (part + 1) ** 2 : (part + 1) ** 2 + sum(done[0] ?? []),
    preview: (_facts, _books, done) => ({ code: "so_far", data: { sum: q("count", sum(done.flat())) } }),
  },
  compute: (_facts, _books, _report, done) => ({
    kind: "answer",
    verdict: "info",
    headline: { code: "so_far", data: { sum: q("count", sum(done.at(-1) ?? [])) } },
    results: [],
    findings: [],
  }),
});
const facts = { n: { value: 3, from: "asked" } } as const;
const never = new AbortController().signal;
const quiet: ReportProgress = () => undefined;
const work = { topic: squares, facts, books: fixtureBooks, report: quiet, signal: never };
const square: RunOnePart = async (done, part) => squares.parts?.run({ n: 3 }, fixtureBooks, toNumbers(done), part);

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
function toNumbers(done: readonly (readonly unknown[])[]): readonly (readonly number[])[] {
  return done.map((round) => round.map(Number));
}

describe("parts of long work", () => {
  test("come back round by round in their order, whichever is done first", async () => {
    const lastFirst: RunOnePart = async (done, part, stop) => {
      for (let turn = part; turn < 3; turn += 1) await Promise.resolve();
      return square(done, part, stop);
    };
    expect(await runParts(work, 3, lastFirst)).toEqual([
      [1, 4, 9],
      [15, 18, 23],
    ]);
  });

  test("run one after another where nobody spreads them, with the same answer", async () => {
    const done = await runParts(work, 2, square);
    const here = runTopic(squares, facts, fixtureBooks, [], quiet);
    expect(runTopic(squares, facts, fixtureBooks, [], quiet, done)).toEqual(here);
    expect(here.result).toMatchObject({ headline: { data: { sum: { value: 56 } } } });
  });

  test("are reported one by one in hundredths, with what can be said already", async () => {
    const seen: unknown[] = [];
    const report: ReportProgress = (done, total, soFar) => seen.push([done, total, soFar?.data["sum"]]);
    await runParts({ ...work, report }, 1, square);
    const sums = [1, 5, 14, 29, 47, 70].map((value) => ({ kind: "count", value }));
    expect(seen).toEqual([17, 33, 50, 67, 83, 100].map((share, index) => [share, 100, sums[index]]));
  });

  test.each([1, 2, 5])("run no more than %i at once", async (width) => {
    let open = 0;
    let most = 0;
    await runParts(work, width, async (done, part, stop) => {
      open += 1;
      most = Math.max(most, open);
      await Promise.resolve();
      open -= 1;
      return square(done, part, stop);
    });
    expect(most).toBe(Math.min(width, 3));
  });

  test("are none where the facts are missing or there is nothing to do", async () => {
    expect(await runParts({ ...work, facts: {} }, 2, square)).toEqual([]);
    expect(await runParts({ ...work, facts: { n: { value: 0, from: "asked" } } }, 2, square)).toEqual([]);
  });

  test("are all stopped when the work is called off, and none is begun any more", async () => {
    const calledOff = new AbortController();
    const begun: number[] = [];
    const stopped: number[] = [];
    const hangs: RunOnePart = (_done, part, stop) =>
      new Promise((_, reject) => {
        begun.push(part);
        stop.addEventListener("abort", () => {
          stopped.push(part);
          reject(stop.reason);
        });
        if (begun.length === 2) calledOff.abort();
      });
    await expect(runParts({ ...work, signal: calledOff.signal }, 2, hangs)).rejects.toThrow(/abort/i);
    expect(begun).toEqual([0, 1]);
    expect(stopped).toEqual([0, 1]);
  });

  test("are stopped when one of them fails, and its fault is what comes out", async () => {
    const stopped: number[] = [];
    const fails: RunOnePart = (_done, part, stop) =>
      new Promise((_, reject) => {
        if (part === 1) reject(new RangeError("part 1 broke"));
        stop.addEventListener("abort", () => stopped.push(part));
      });
    await expect(runParts(work, 2, fails)).rejects.toThrow("part 1 broke");
    expect(stopped).toContain(0);
  });
});
