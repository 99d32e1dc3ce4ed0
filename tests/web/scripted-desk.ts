import { openWebDoor, type WebDoor, type WebDoorOptions } from "../../adapters/web/open-web-door.ts";
import type { Desk, Inbound, Reply, ShowProgress } from "../../src/desk.ts";
import type { Card } from "../../src/messages/card.ts";

/** A desk that answers by a table of texts, each delivery once, and writes down what it was asked. */
export class ScriptedDesk implements Desk {
  /** Every call, repeats included. */
  readonly received: Inbound[] = [];
  /** Deliveries that were worked on, in order. */
  readonly worked: Inbound[] = [];
  readonly #answers: (inbound: Inbound) => Card;
  readonly #given = new Map<string, Card>();
  #held: { readonly until: Promise<void>; readonly release: () => void } | undefined;
  #show: ShowProgress = () => {};
  signal: AbortSignal | undefined;

  constructor(answers: (inbound: Inbound) => Card = (inbound) => noteCard(`You said: ${inbound.text}`)) {
    this.#answers = answers;
  }

  async receive(inbound: Inbound, show: ShowProgress, signal: AbortSignal): Promise<Reply> {
    this.received.push(inbound);
    this.signal = signal;
    const given = this.#given.get(inbound.delivery);
    if (given) return { card: given, isRepeat: true };
    this.worked.push(inbound);
    this.#show = show;
    await this.#held?.until;
    const card = this.#answers(inbound);
    this.#given.set(inbound.delivery, card);
    return { card, isRepeat: false };
  }

  /** From now on nothing is answered until `release`. */
  hold(): void {
    let release = () => {};
    const until = new Promise<void>((resolve) => {
      release = resolve;
    });
    this.#held = { until, release };
  }
  release(): void {
    this.#held?.release();
    this.#held = undefined;
  }
  /** Shows how far the work is that is being held. */
  showProgress(card: Card): void {
    this.#show(card);
  }
}

/** A card that only says this. */
export function noteCard(text: string): Card {
  return { title: "Note", summary: text, blocks: [{ kind: "text", tone: "plain", text }] };
}

/** Invented people, one of each role. */
export const PEOPLE = [
  { user: "wilma", name: "Wilma Tarn", role: "technician" },
  { user: "oskar", name: "Oskar Lind", role: "dispatcher" },
  { user: "nadia", name: "Nadia Brook", role: "manager" },
] as const;

/** The door on a free port of the loopback address, with everybody reading English. */
export async function openTestDoor(desk: Desk, options: Partial<WebDoorOptions> = {}): Promise<WebDoor> {
  return await openWebDoor({
    desk,
    settings: { host: "127.0.0.1", port: 0 },
    people: PEOPLE,
    company: { name: "Invented & Sons", isInvented: true },
    log: { error: () => {} },
    pace: { drain_ms: 0, flush_ms: 0 },
    ...options,
  });
}
