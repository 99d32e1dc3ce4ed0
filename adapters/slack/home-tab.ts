import type { Desk } from "../../src/desk.ts";
import type { Caller } from "../../src/ports/store.ts";
import type { DoorLog } from "./door-log.ts";
import { SlackRefusalError } from "./errors.ts";
import { renderHome } from "./render-home.ts";
import type { SlackCalls } from "./slack-calls.ts";
import type { WorkInFlight } from "./work-in-flight.ts";

/** Whose home tab it is, and what is known of what stands there. */
export interface HomeOwner {
  readonly caller: Caller;
  /** Their direct messages with the app, where the buttons of the tab are answered. */
  readonly channel: string;
  /** Slack's mark of the view that stands there, as the event told it. */
  readonly hash?: string;
}
export interface HomeSettings {
  readonly desk: Desk;
  readonly work: WorkInFlight;
  readonly log: DoorLog;
}

/** What the tab shows, as a person would ask for it. */
const HOME_REQUEST = "today";
/** People whose last view is kept in mind. */
const MOST_KEPT = 1_000;

/**
 * The home tab: the card of the day, published anew each time somebody opens it and after what they did there. A view
 * that was asked for earlier never takes the place of a later one: within this program they are counted, and between
 * two programs Slack compares the mark of the view that the request began with. Nothing here throws.
 */
export class HomeTab {
  readonly #settings: HomeSettings;
  readonly #published = new Map<string, number>();
  #asked = 0;

  constructor(settings: HomeSettings) {
    this.#settings = settings;
  }

  /** Starts to show it and returns at once. @param delivery unique per request */
  show(owner: HomeOwner, delivery: string, calls: SlackCalls): void {
    this.#asked += 1;
    const number = this.#asked;
    const { work, log } = this.#settings;
    const shown = this.#publish(owner, delivery, number, calls).catch((error: unknown) => {
      const isLate = error instanceof SlackRefusalError && /^hash_conflict/.test(error.reason);
      if (isLate) log.info({ delivery }, "a later home tab stands already");
      else log.error({ error, delivery }, "a home tab could not be shown");
    });
    work.track(shown);
  }

  async #publish(owner: HomeOwner, delivery: string, number: number, calls: SlackCalls): Promise<void> {
    const { desk, work } = this.#settings;
    const { caller, channel, hash } = owner;
    const conversation = `${caller.organisation}/home/${caller.user}`;
    const inbound = { caller, conversation, delivery, text: HOME_REQUEST };
    const { card, isRepeat } = await desk.receive(inbound, () => {}, work.signal);
    if (isRepeat || work.signal.aborted) return;
    const key = JSON.stringify([caller.organisation, caller.user]);
    if ((this.#published.get(key) ?? 0) > number) return;
    this.#keep(key, number);
    await calls.publishHome(caller.user, renderHome(card, writeHomeMetadata(channel)), hash);
  }

  #keep(key: string, number: number): void {
    this.#published.delete(key);
    this.#published.set(key, number);
    const [oldest] = this.#published.keys();
    if (this.#published.size > MOST_KEPT && oldest !== undefined) this.#published.delete(oldest);
  }
}

function writeHomeMetadata(channel: string): string {
  return JSON.stringify({ channel });
}
