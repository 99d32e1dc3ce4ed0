import type { Desk, Inbound } from "../../src/desk.ts";
import type { Block, Button, Card } from "../../src/messages/card.ts";
import type { DoorRig, DoorUnderTest, SaidMessage, ShownMessage } from "../contracts/door-contract.ts";

/** The smallest door there can be: it shows cards as lines of text. It knows no platform and no library. */
class FakeDoor {
  readonly #desk: Desk;
  readonly #screen: Card[];
  readonly #seen: Set<string>;
  readonly #inHand = new Set<Promise<void>>();
  readonly #closing = new AbortController();

  constructor(desk: Desk, screen: Card[], seen: Set<string>) {
    this.#desk = desk;
    this.#screen = screen;
    this.#seen = seen;
  }

  take(inbound: Omit<Inbound, "caller" | "conversation">): void {
    if (this.#closing.signal.aborted) throw new Error("closed");
    if (this.#seen.has(inbound.delivery)) return;
    this.#seen.add(inbound.delivery);
    const caller = { door: "terminal", organisation: "local", user: "ana", name: "Ana" } as const;
    const work = this.#answer({ caller, conversation: "c", ...inbound }).finally(() => this.#inHand.delete(work));
    this.#inHand.add(work);
  }

  async close(): Promise<void> {
    this.#closing.abort();
    await Promise.all(this.#inHand);
  }

  async #answer(inbound: Inbound): Promise<void> {
    let place: number | undefined;
    const put = (card: Card) => {
      place ??= this.#screen.length;
      this.#screen[place] = card;
    };
    try {
      const { card } = await this.#desk.receive(inbound, put, new AbortController().signal);
      put(card);
    } catch {
      const text = "Something failed. Report 0000000a.";
      put({ title: "Fault", summary: text, blocks: [{ kind: "text", tone: "problem", text }] });
    }
  }
}

export const fakeDoor: DoorUnderTest = {
  name: "a door of lines of text",
  openPlatform: async () => {
    const screen: Card[] = [];
    const seen = new Set<string>();
    return {
      open: async (desk) => openRig(new FakeDoor(desk, screen, seen), screen),
      close: async () => {},
    };
  },
};

function openRig(door: FakeDoor, screen: readonly Card[]): DoorRig {
  const say = async ({ id, text }: SaidMessage) => {
    door.take({ delivery: id, text });
    return 200;
  };
  return {
    say,
    sayAsStranger: async () => 401,
    async sayWithPhoto({ id, text }, photo) {
      let fetched = 0;
      const read = async () => {
        fetched += 1;
        return photo;
      };
      door.take({ delivery: id, text, files: [{ name: "photo", read }] });
      return { fetched: () => fetched };
    },
    async press(label, id, from = 0) {
      const found = screen.flatMap(buttonsOf).filter((button) => button.label === label);
      const button = found.at(-1 - from);
      if (button === undefined) throw new Error(`no button ${label}`);
      door.take({ delivery: id, text: button.say, ...(button.aim && { aim: button.aim }) });
      return 200;
    },
    async fillIn(fields, id) {
      const form = screen.flatMap(({ blocks }) => blocks).findLast((block) => block.kind === "form");
      door.take({ delivery: id, text: "", form: { topic: form?.topic ?? "", fields } });
      return 200;
    },
    shown: () => screen.map(readCard),
    live: () => [],
    close: () => door.close(),
  };
}

function buttonsOf({ blocks }: Card): readonly Button[] {
  return blocks.flatMap((block) => (block.kind === "buttons" ? block.buttons : []));
}

function readCard(card: Card): ShownMessage {
  const lines = [card.title, ...card.blocks.flatMap(linesOf)];
  return { text: lines.join("\n"), buttons: buttonsOf(card).map(({ label }) => label) };
}

function linesOf(block: Block): readonly string[] {
  switch (block.kind) {
    case "rows":
      return block.rows.flatMap(({ label, value }) => [label, value]);
    case "table":
      return [block.caption, ...block.columns, ...block.rows.flat()];
    case "question":
      return [block.prompt];
    case "buttons":
    case "form":
    case "chart":
      return [];
    default:
      return [block.text];
  }
}
