import { parseHTML } from "linkedom";
import { openWebDoor } from "../../adapters/web/open-web-door.ts";
import type { JourneyDoor, OpenJourneyDoor, Shown } from "./journey-door.ts";

interface Button {
  readonly label: string;
  readonly say: string;
  readonly aim?: { readonly walk: string; readonly fact: string };
}

/** The local web chat, as its page speaks with the server. */
export const openWebJourney: OpenJourneyDoor = async (desk, books) => {
  const door = await openWebDoor({
    desk,
    settings: { host: "127.0.0.1", port: 0 },
    people: books.people.map(({ id, name, role }) => ({ user: id, name, role })),
    log: { error: () => undefined },
    company: books.company,
  });
  const origin = new URL(door.url).origin;
  const onScreen = new Map<string, readonly Button[]>();
  let count = 0;

  const send = async (who: string, said: object): Promise<Shown> => {
    count += 1;
    const message = { delivery: `delivery-${count}`, conversation: `conversation-${who}`, user: who, ...said };
    const response = await fetch(`${door.url}messages`, {
      method: "POST",
      headers: { "content-type": "application/json", origin },
      body: JSON.stringify(message),
    });
    const lines = (await response.text()).trim().split("\n");
    const last = JSON.parse(lines.at(-1) ?? "{}") as {
      readonly kind: string;
      readonly html?: string;
      readonly text?: string;
    };
    if (last.html === undefined) throw new Error(`the web answered ${last.kind}: ${last.text ?? ""}`);
    const { document } = parseHTML(`<!doctype html><html><body>${last.html}</body></html>`);
    const buttons = [...document.querySelectorAll("button")].flatMap((button): readonly Button[] => {
      const { say, walk, fact } = button.dataset;
      if (say === undefined) return [];
      return [{ label: textOf(button), say, ...(walk && fact && { aim: { walk, fact } }) }];
    });
    onScreen.set(who, buttons);
    return { text: textOf(document.body), buttons: buttons.map(({ label }) => label) };
  };
  const journey: JourneyDoor = {
    door: "web",
    say: (who, text) => send(who, { text }),
    press(who, label) {
      const button = (onScreen.get(who) ?? []).find((one) => one.label === label);
      if (button === undefined) throw new Error(`no button ${label} before ${who}`);
      return send(who, { text: button.say, ...(button.aim && { aim: button.aim }) });
    },
    close: () => door.close(),
  };
  return journey;
};

function textOf(element: { readonly textContent: string | null }): string {
  return (element.textContent ?? "")
    .split("\n")
    .map((line) => line.trim())
    .filter((line) => line !== "")
    .join("\n");
}
