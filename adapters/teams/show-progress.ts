import { DONE, type Pause, type TeamsLine, type TeamsMessage } from "./port.ts";

/** Times of the signs of life while work goes on. Our own choices, within seven messages a second for a conversation. */
const FIRST_TYPING_ms = 800;
/** Teams shows the typing sign for a few seconds only. From memory. */
const NEXT_TYPING_ms = 4_000;
const FIRST_PROGRESS_ms = 1_500;
const NEXT_PROGRESS_ms = 2_000;

/** Shows that work goes on: first that somebody is typing, then how far it has come, in one message that is updated. */
export class ProgressShow {
  readonly #line: TeamsLine;
  readonly #pause: Pause;
  readonly #onProblem: (error: unknown) => void;
  readonly #ended = new AbortController();
  readonly #typing: Promise<void>;
  #latest: TeamsMessage | undefined;
  #shown: TeamsMessage | undefined;
  #id: string | undefined;
  #showing: Promise<void> | undefined;

  constructor(line: TeamsLine, pause: Pause, onProblem: (error: unknown) => void) {
    this.#line = line;
    this.#pause = pause;
    this.#onProblem = onProblem;
    this.#typing = this.#showTyping();
  }

  show(message: TeamsMessage): void {
    this.#latest = message;
    this.#showing ??= this.#keepShowing();
  }

  /** Ends the show. @returns the id of the progress message, which the answer may take the place of */
  async end(): Promise<string | undefined> {
    this.#ended.abort(DONE);
    await Promise.all([this.#typing, this.#showing]);
    return this.#id;
  }

  async #showTyping(): Promise<void> {
    await this.#pause(FIRST_TYPING_ms, this.#ended.signal);
    while (!this.#ended.signal.aborted && this.#id === undefined) {
      await this.#attempt(() => this.#line.showTyping());
      await this.#pause(NEXT_TYPING_ms, this.#ended.signal);
    }
  }

  async #keepShowing(): Promise<void> {
    await this.#pause(FIRST_PROGRESS_ms, this.#ended.signal);
    while (!this.#ended.signal.aborted) {
      await this.#attempt(() => this.#showLatest());
      await this.#pause(NEXT_PROGRESS_ms, this.#ended.signal);
    }
  }

  async #showLatest(): Promise<void> {
    const message = this.#latest;
    if (message === undefined || message === this.#shown) return;
    if (this.#id === undefined) this.#id = await this.#line.send(message, this.#ended.signal);
    else await this.#line.update(this.#id, message, this.#ended.signal);
    this.#shown = message;
  }

  async #attempt(work: () => Promise<void>): Promise<void> {
    try {
      await work();
    } catch (error) {
      if (!this.#ended.signal.aborted) this.#onProblem(error);
    }
  }
}
