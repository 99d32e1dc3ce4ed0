import type { Reply, ShowProgress } from "../../src/desk.ts";
import type { Card } from "../../src/messages/card.ts";

/** What a delivery came to. */
export type Outcome =
  | { readonly kind: "reply"; readonly reply: Reply }
  | { readonly kind: "fault"; readonly error: unknown }
  /** Given up before it was done: nothing may be taken for its answer, and the browser asks again. */
  | { readonly kind: "stopped" };
export type StartWork = (show: ShowProgress, signal: AbortSignal) => Promise<Reply>;

/** One delivery that is being worked on, with everybody who waits for it. */
export class RunningDelivery {
  progress: Card | undefined;
  outcome: Outcome | undefined;
  /** Settles when the outcome is known; never rejects. */
  readonly done: Promise<void>;
  readonly #stop = new AbortController();
  readonly #grace_ms: number;
  #wake: () => void = () => {};
  #changed: Promise<void>;
  #waiting = 0;
  #orphaned: NodeJS.Timeout | undefined;

  constructor(start: StartWork, grace_ms: number) {
    this.#grace_ms = grace_ms;
    this.#changed = this.#nextChange();
    this.done = this.#work(start);
  }

  /** Resolves when there is more to show than at the time of the call. */
  changed(): Promise<void> {
    return this.#changed;
  }

  /** Somebody waits for this delivery. */
  join(): void {
    this.#waiting += 1;
    clearTimeout(this.#orphaned);
  }

  /** One less waits; work that nobody waits for any more is given up after a while, not at once. */
  leave(): void {
    this.#waiting -= 1;
    if (this.#waiting > 0 || this.outcome) return;
    this.#orphaned = setTimeout(() => this.stop(), this.#grace_ms);
    this.#orphaned.unref();
  }

  stop(): void {
    this.#stop.abort();
  }

  async #work(start: StartWork): Promise<void> {
    this.outcome = await this.#run(start);
    clearTimeout(this.#orphaned);
    this.#wake();
  }

  async #run(start: StartWork): Promise<Outcome> {
    const show = (card: Card) => {
      this.progress = card;
      this.#wake();
      this.#changed = this.#nextChange();
    };
    try {
      const reply = await start(show, this.#stop.signal);
      return this.#stop.signal.aborted ? { kind: "stopped" } : { kind: "reply", reply };
    } catch (error) {
      return this.#stop.signal.aborted ? { kind: "stopped" } : { kind: "fault", error };
    }
  }

  #nextChange(): Promise<void> {
    return new Promise((resolve) => {
      this.#wake = resolve;
    });
  }
}

/**
 * The deliveries that are being worked on. A browser that lost its connection sends the same delivery again: it then
 * joins the work that still goes on, so that bad signal neither starts the work twice nor throws it away.
 */
export class RunningDeliveries {
  readonly #running = new Map<string, RunningDelivery>();
  readonly #grace_ms: number;

  constructor(grace_ms: number) {
    this.#grace_ms = grace_ms;
  }

  /** The work on this delivery: what runs already, or started now. */
  find(delivery: string, start: StartWork): RunningDelivery {
    const found = this.#running.get(delivery);
    if (found) return found;
    const started = new RunningDelivery(start, this.#grace_ms);
    this.#running.set(delivery, started);
    started.done.then(() => this.#running.delete(delivery));
    return started;
  }

  /** Lets work finish for a while, then stops what is left and waits until it has let go. */
  async close(drain_ms: number): Promise<void> {
    const running = [...this.#running.values()];
    const stop = setTimeout(() => {
      for (const delivery of running) delivery.stop();
    }, drain_ms);
    await Promise.all(running.map((delivery) => delivery.done));
    clearTimeout(stop);
  }
}
