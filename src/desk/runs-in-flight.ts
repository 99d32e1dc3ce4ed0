import type { Card } from "../messages/card.ts";

/** What is known of a run that goes on. */
interface RunStart {
  /** Who asked for it: one user of one organisation at one door. */
  readonly owner: string;
  readonly conversation: string;
  /** Short, and shown to the person. */
  readonly id: string;
  /** Ends the run when its door closes. */
  readonly signal: AbortSignal;
  /** Says to whoever called it off that it is called off. */
  readonly calledOff: Card;
}
export interface RunInFlight {
  /** Given when the door closes or the person calls the run off. */
  readonly signal: AbortSignal;
  readonly id: string;
  /** From now on it cannot be called off any more. @returns whether the person called it off before */
  end(): boolean;
}

/** The runs that go on in this process, so that whoever asked can call them off. */
export interface RunsInFlight {
  start(run: RunStart): RunInFlight;
  /**
   * Calls off a run of this person: the one of this id wherever it was asked, or with an empty id the newest of this
   * conversation. Called off twice, it is called off once.
   * @returns what to say, or nothing when there is no such run of theirs
   */
  callOff(owner: string, conversation: string, id: string): Card | undefined;
}

export function watchRuns(): RunsInFlight {
  const going = new Map<string, RunStart & { readonly stop: AbortController }>();
  return {
    start(run) {
      const key = JSON.stringify([run.owner, run.id]);
      const stop = new AbortController();
      // Joined by hand: a door's signal lives for months and must not keep every run that it was joined with.
      const passOn = () => stop.abort(run.signal.reason);
      if (run.signal.aborted) passOn();
      else run.signal.addEventListener("abort", passOn, { once: true });
      going.set(key, { ...run, stop });
      return {
        signal: stop.signal,
        id: run.id,
        end() {
          going.delete(key);
          run.signal.removeEventListener("abort", passOn);
          return stop.signal.aborted && !run.signal.aborted;
        },
      };
    },
    callOff(owner, conversation, id) {
      const theirs = [...going.values()].filter((run) => run.owner === owner);
      const run = theirs.findLast((one) => (id === "" ? one.conversation === conversation : one.id === id));
      run?.stop.abort();
      return run?.calledOff;
    },
  };
}
