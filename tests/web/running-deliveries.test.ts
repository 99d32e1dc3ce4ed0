import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { RunningDeliveries } from "../../adapters/web/running-deliveries.ts";
import type { Reply } from "../../src/desk.ts";
import { noteCard } from "./scripted-desk.ts";

const GRACE_ms = 60_000;
beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

/** Work that ends when it is told to, or when it is stopped. */
function startWork() {
  const work = { starts: 0, isStopped: false, finish: (_reply: Reply) => {}, show: (_text: string) => {} };
  const start = (show: (card: ReturnType<typeof noteCard>) => void, signal: AbortSignal) => {
    work.starts += 1;
    work.show = (text) => show(noteCard(text));
    return new Promise<Reply>((resolve, reject) => {
      work.finish = resolve;
      signal.addEventListener("abort", () => {
        work.isStopped = true;
        reject(new Error("stopped"));
      });
    });
  };
  return { work, start };
}
const reply: Reply = { card: noteCard("done"), isRepeat: false };

test("the same delivery twice at once is one work with one outcome", async () => {
  const { work, start } = startWork();
  const running = new RunningDeliveries(GRACE_ms);
  const first = running.find("d1", start);
  const second = running.find("d1", start);
  work.finish(reply);
  await first.done;
  expect(work.starts).toBe(1);
  expect(second.outcome).toEqual({ kind: "reply", reply });
});

test("another delivery is another work", () => {
  const { work, start } = startWork();
  const running = new RunningDeliveries(GRACE_ms);
  running.find("d1", start);
  running.find("d2", start);
  expect(work.starts).toBe(2);
});

test("a delivery that is done is forgotten, so that its repeat goes to the desk", async () => {
  const { work, start } = startWork();
  const running = new RunningDeliveries(GRACE_ms);
  const first = running.find("d1", start);
  work.finish(reply);
  await first.done;
  await Promise.resolve();
  running.find("d1", start);
  expect(work.starts).toBe(2);
});

test("a change is told to whoever waits, progress first and then the outcome", async () => {
  const { work, start } = startWork();
  const delivery = new RunningDeliveries(GRACE_ms).find("d1", start);
  const progress = delivery.changed();
  work.show("half");
  await progress;
  expect(delivery.progress?.summary).toBe("half");
  const end = delivery.changed();
  work.finish(reply);
  await end;
  expect(delivery.outcome?.kind).toBe("reply");
});

test("work goes on for 59 s after the last one who waited has left, and is stopped at 60 s", async () => {
  const { work, start } = startWork();
  const delivery = new RunningDeliveries(GRACE_ms).find("d1", start);
  delivery.join();
  delivery.leave();
  await vi.advanceTimersByTimeAsync(59_000);
  expect(work.isStopped).toBe(false);
  await vi.advanceTimersByTimeAsync(1000);
  expect(work.isStopped).toBe(true);
  expect(delivery.outcome?.kind).toBe("stopped");
});

test("work goes on while somebody came back, or one of two still waits", async () => {
  const { work, start } = startWork();
  const delivery = new RunningDeliveries(GRACE_ms).find("d1", start);
  delivery.join();
  delivery.leave();
  await vi.advanceTimersByTimeAsync(30_000);
  delivery.join();
  delivery.join();
  delivery.leave();
  await vi.advanceTimersByTimeAsync(10 * GRACE_ms);
  expect(work.isStopped).toBe(false);
});

test("closing lets work finish", async () => {
  const { work, start } = startWork();
  const running = new RunningDeliveries(GRACE_ms);
  const delivery = running.find("d1", start);
  const closed = running.close(5000);
  await vi.advanceTimersByTimeAsync(4000);
  work.finish(reply);
  await closed;
  expect(delivery.outcome).toEqual({ kind: "reply", reply });
});

test("closing stops work after 5 s and waits until it has let go", async () => {
  const { work, start } = startWork();
  const running = new RunningDeliveries(GRACE_ms);
  const delivery = running.find("d1", start);
  const closed = running.close(5000);
  await vi.advanceTimersByTimeAsync(4999);
  expect(work.isStopped).toBe(false);
  await vi.advanceTimersByTimeAsync(1);
  await closed;
  expect(work.isStopped).toBe(true);
  expect(delivery.outcome?.kind).toBe("stopped");
});

test("what a desk says of work that was stopped is no answer", async () => {
  const running = new RunningDeliveries(GRACE_ms);
  const delivery = running.find("d1", async (_show, signal) => {
    await new Promise((resolve) => signal.addEventListener("abort", resolve));
    return { card: noteCard("cancelled"), isRepeat: false };
  });
  const closed = running.close(0);
  await vi.advanceTimersByTimeAsync(0);
  await closed;
  expect(delivery.outcome).toEqual({ kind: "stopped" });
});

test("work that throws at once is a fault, not a crash", async () => {
  const delivery = new RunningDeliveries(GRACE_ms).find("d1", () => {
    throw new Error("broken");
  });
  await delivery.done;
  expect(delivery.outcome).toMatchObject({ kind: "fault", error: { message: "broken" } });
});
