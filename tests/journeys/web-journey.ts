import { parseHTML } from "linkedom";
import { sniffType } from "../../adapters/files/sniff-type.ts";
import { openWebDoor } from "../../adapters/web/open-web-door.ts";
import { MOST_FILE_B } from "../../src/ports/files.ts";
import { createScreens, type DoorParts, type JourneyDoor, type OpenJourneyDoor, type Shown } from "./journey-door.ts";

interface Button {
  readonly label: string;
  readonly say: string;
  readonly aim?: { readonly walk: string; readonly fact: string };
}

/** The local web chat, as its page speaks with the server. */
export const openWebJourney: OpenJourneyDoor = async (parts) => {
  const screens = createScreens<Button>();
  let door = await openOn(parts);
  let count = 0;

  const post = (path: string, type: string, body: string | Uint8Array<ArrayBuffer>) =>
    fetch(`${door.url}${path}`, {
      method: "POST",
      headers: { "content-type": type, origin: new URL(door.url).origin },
      body,
    });
  const send = async (who: string, said: object): Promise<Shown> => {
    count += 1;
    const message = { delivery: `delivery-${count}`, conversation: `conversation-${who}`, user: who, ...said };
    const response = await post("messages", "application/json", JSON.stringify(message));
    const lines = (await response.text()).trim().split("\n");
    const last = JSON.parse(lines.at(-1) ?? "{}") as {
      readonly kind: string;
      readonly html?: string;
      readonly text?: string;
    };
    if (last.html === undefined) throw new Error(`the web answered ${last.kind}: ${last.text ?? ""}`);
    return screens.show(who, readHtml(last.html), buttonsIn(last.html));
  };
  const journey: JourneyDoor = {
    door: "web",
    async say(who, text, photos = []) {
      const files: { readonly id: string; readonly name: string }[] = [];
      for (const { name, bytes } of photos) {
        const id = `upload-${count}-${files.length}`;
        const { status } = await post(`uploads/${id}?user=${who}`, "image/jpeg", Uint8Array.from(bytes));
        if (status !== 204) throw new Error(`the web took no photo: ${status}`);
        files.push({ id, name });
      }
      return await send(who, { text, ...(files.length > 0 && { files }) });
    },
    press(who, label) {
      const { say, aim } = screens.find(who, label);
      return send(who, { text: say, ...(aim && { aim }) });
    },
    async reopen(next) {
      await door.close();
      door = await openOn(await next());
    },
    close: () => door.close(),
  };
  return journey;
};

async function openOn({ desk, books, readFile, channels, languageOf }: DoorParts) {
  return await openWebDoor({
    desk,
    settings: { host: "127.0.0.1", port: 0 },
    people: books.people.map(({ id, name, role }) => ({ user: id, name, role })),
    log: { error: () => undefined },
    company: books.company,
    languageOf,
    channels,
    files: {
      most_bytes: MOST_FILE_B,
      find: async (caller, hash) => {
        const bytes = await readFile(caller, hash);
        return bytes && { bytes, type: sniffType(bytes) };
      },
    },
  });
}

function buttonsIn(html: string): readonly Button[] {
  return [...bodyOf(html).querySelectorAll("button")].flatMap((button): readonly Button[] => {
    const { say, walk, fact } = button.dataset;
    if (say === undefined) return [];
    return [{ label: tidy(button.textContent ?? ""), say, ...(walk && fact && { aim: { walk, fact } }) }];
  });
}

/** What the page shows, line by line; what can be pressed stands in brackets. */
function readHtml(html: string): string {
  const body = bodyOf(html);
  for (const button of body.querySelectorAll("button")) button.textContent = `\n[${tidy(button.textContent ?? "")}]\n`;
  for (const cell of body.querySelectorAll("td, th, dt")) cell.append(" | ");
  return (body.textContent ?? "")
    .split("\n")
    .map(tidy)
    .filter((line: string) => line !== "")
    .join("\n");
}

function tidy(text: string): string {
  return text.replace(/\s+/g, " ").replace(/^[| ]+|[| ]+$/g, "");
}

function bodyOf(html: string) {
  return parseHTML(`<!doctype html><html><body>${html}</body></html>`).document.body;
}
