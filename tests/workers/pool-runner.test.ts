import { afterAll, describe, expect, test } from "vitest";
import { loadBooks } from "../../adapters/books/load-books.ts";
import { loadLibrary } from "../../adapters/library/load-library.ts";
import { createInlineRunner } from "../../adapters/workers/inline-runner.ts";
import { createPoolRunner } from "../../adapters/workers/pool-runner.ts";
import { parseRequest } from "../../src/conversation/grammar/parse-request.ts";
import type { ReportProgress } from "../../src/declaration/topic.ts";

const booksFolder = new URL("../../seeds", import.meta.url).pathname;
const workerFile = new URL("../../adapters/long-work-thread.mjs", import.meta.url).pathname;
const library = await loadLibrary();
const books = await loadBooks(booksFolder);
const inline = createInlineRunner(library, books);
const pool = createPoolRunner(library, books, inline, { booksFolder, workerFile, threads: 2 });
const never = new AbortController().signal;
const { facts } = parseRequest("size people=3 tank=65gal setpoint=125F", library, { language: "en", units: "us" });

afterAll(() => pool.close());

test("long work gives the same answer in another thread, and this thread stays free for others meanwhile", async () => {
  let turns = 0;
  const counting = setInterval(() => turns++, 5);
  const seen: [number, number][] = [];
  const answered = await pool.run("size", facts, (done, total) => seen.push([done, total]), never);
  clearInterval(counting);
  expect(answered).toEqual(await inline.run("size", facts, () => undefined, never));
  expect(turns).toBeGreaterThan(10);
  expect(seen.every(([done, total]) => done >= 0 && done <= total)).toBe(true);
});

test("work that is called off is stopped, and the pool goes on", async () => {
  const calledOff = new AbortController();
  const stopped = pool.run("size", facts, () => undefined, calledOff.signal);
  calledOff.abort();
  await expect(stopped).rejects.toThrow();
  const { result } = await pool.run("size", facts, () => undefined, never);
  expect(result.kind).toBe("answer");
});

describe("work that falls into parts", () => {
  const text = "pick people=1 height=68in mode=heat_pump_only setpoint=130F days=20";
  const picked = parseRequest(text, library, { language: "en", units: "us" });

  test("is spread over the threads with the same answer, and says what is best so far", async () => {
    const seen: { readonly share: number; readonly code: string | undefined }[] = [];
    const report: ReportProgress = (done, total, soFar) => seen.push({ share: done / total, code: soFar?.code });
    const answered = await pool.run("pick", picked.facts, report, never);
    expect(answered).toEqual(await inline.run("pick", picked.facts, () => undefined, never));
    expect(answered.result.kind).toBe("answer");
    expect(seen.length).toBeGreaterThan(2);
    expect(seen.map(({ share }) => share)).toEqual(seen.map(({ share }) => share).sort((a, b) => a - b));
    expect(seen.at(-1)).toEqual({ share: 1, code: "so_far_heat_pump_only" });
  });

  test("is stopped in all threads when it is called off: no part is done after that", async () => {
    const calledOff = new AbortController();
    const seen: number[] = [];
    const report: ReportProgress = (done) => {
      seen.push(done);
      calledOff.abort();
    };
    await expect(pool.run("pick", picked.facts, report, calledOff.signal)).rejects.toThrow();
    expect(seen).toHaveLength(1);
  });

  test("asks for what is missing and refuses what is out of range without any part", async () => {
    const missing = await pool.run("pick", {}, () => undefined, never);
    expect(missing.result).toEqual({ kind: "needs-facts", missing: ["people"] });
    const place = { value: "nowhere", from: "asked" } as const;
    const refused = await pool.run("pick", { ...picked.facts, place }, () => undefined, never);
    expect(refused.result).toMatchObject({ kind: "out-of-range", fact: "place" });
  });
});

test("short work does not travel: a missing fact comes back at once", async () => {
  const { result } = await pool.run("mix", {}, () => undefined, never);
  expect(result.kind).toBe("needs-facts");
});
