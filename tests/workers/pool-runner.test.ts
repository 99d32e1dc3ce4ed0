import { afterAll, expect, test } from "vitest";
import { loadBooks } from "../../adapters/books/load-books.ts";
import { loadLibrary } from "../../adapters/library/load-library.ts";
import { createInlineRunner } from "../../adapters/workers/inline-runner.ts";
import { createPoolRunner } from "../../adapters/workers/pool-runner.ts";
import { parseRequest } from "../../src/conversation/grammar/parse-request.ts";

const booksFolder = new URL("../../seeds", import.meta.url).pathname;
const workerFile = new URL("../../adapters/long-work-thread.mjs", import.meta.url).pathname;
const library = await loadLibrary();
const inline = createInlineRunner(library, await loadBooks(booksFolder));
const pool = createPoolRunner(library, inline, { booksFolder, workerFile, threads: 2 });
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

test("short work does not travel: a missing fact comes back at once", async () => {
  const { result } = await pool.run("mix", {}, () => undefined, never);
  expect(result.kind).toBe("needs-facts");
});
