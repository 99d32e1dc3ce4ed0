import type { Pause } from "../../adapters/teams/port.ts";
import { type DoorUnderTest, describeDoorContract, type ShownMessage } from "../contracts/door-contract.ts";
import { FakePlatform, messageActivity, type SentCall } from "./fake-platform.ts";
import { openTestDoor, pauseForever, type TestDoor } from "./open-test-door.ts";

/** Progress is shown at once; the turn, the typing sign and what closing waits for take as long as the work does. */
const pause: Pause = (ms, signal) =>
  ms === 1_500 || ms === 2_000 ? new Promise((resolve) => setImmediate(resolve)) : pauseForever(ms, signal);

const teamsDoor: DoorUnderTest = {
  name: "the Teams door",
  openPlatform: async () => {
    const platform = await FakePlatform.start();
    return {
      open: async (desk) => {
        const photos = { bytes: new Uint8Array(), fetched: 0 };
        const webFetch = async () => {
          photos.fetched += 1;
          return new Response(Uint8Array.from(photos.bytes));
        };
        return openRig(await openTestDoor({ desk, platform, pause, webFetch }), photos);
      },
      close: () => platform.stop(),
    };
  },
};
describeDoorContract(teamsDoor);

function openRig(door: TestDoor, photos: { bytes: Uint8Array; fetched: number }) {
  const { platform } = door;
  // The platform does not wait for the answer, only for its own receipt, which comes with it.
  const send = async (changes: object) => {
    const sent = door.say(changes);
    running.push(sent.then(() => {}).catch(() => {}));
    return (await sent).status;
  };
  const running: Promise<void>[] = [];
  /** Starts a delivery; its receipt may come only once the answer is there. */
  const start = async (changes: object) => {
    const status = send(changes);
    return await Promise.race([status, delivered(status)]);
  };
  return {
    say: ({ id, text }: { id: string; text: string }) => start({ id, text }),
    sayAsStranger: async ({ id, text }: { id: string; text: string }) =>
      (await door.post(messageActivity(platform, { id, text }), { authorization: "Bearer a.b.c" })).status,
    async sayWithPhoto({ id, text }: { id: string; text: string }, photo: Uint8Array) {
      photos.bytes = photo;
      const downloadUrl = "https://crew.sharepoint.invalid/label.jpg";
      const contentType = "application/vnd.microsoft.teams.file.download.info";
      await start({ id, text, attachments: [{ contentType, name: "label.jpg", content: { downloadUrl } }] });
      return { fetched: () => photos.fetched };
    },
    press: (label: string, id: string, from = 0) => {
      const withButton = screen(platform).filter((message) => actionOf(message, label) !== undefined);
      const message = withButton.at(-1 - from);
      return start({ id, text: undefined, replyToId: message?.id, value: actionOf(message, label)?.["data"] });
    },
    fillIn: (fields: Readonly<Record<string, string>>, id: string) => {
      const message = screen(platform).findLast((one) => actionOf(one, "Work it out") !== undefined);
      const inputs = walk(message?.body).filter(({ type }) => type === "Input.Text");
      const typed = inputs.map((input, at) => [String(input["id"]), Object.values(fields)[at]]);
      const data = actionOf(message, "Work it out")?.["data"];
      return start({
        id,
        text: undefined,
        replyToId: message?.id,
        value: { ...Object(data), ...Object.fromEntries(typed) },
      });
    },
    shown: () => screen(platform).map(readMessage),
    live: () => platform.messages.flatMap(({ body }) => liveIn(body)),
    close: async () => {
      await door.close();
      await Promise.all(running);
    },
  };
}

/** Lets a delivery reach the door; its own answer may take longer. */
async function delivered(status: Promise<number>): Promise<number> {
  let isOver = false;
  status.then(
    () => {
      isOver = true;
    },
    () => {
      isOver = true;
    },
  );
  for (let turn = 0; turn < 200 && !isOver; turn++) await new Promise((resolve) => setImmediate(resolve));
  return isOver ? await status : 200;
}

type Node = Readonly<Record<string, unknown>>;
interface OnScreen {
  readonly id: string;
  readonly body: unknown;
}

/** The messages as they stand now: what was updated stands in its old place. */
function screen(platform: FakePlatform): readonly OnScreen[] {
  const messages = new Map<string, OnScreen>();
  for (const { method, path, body, id } of platform.messages) {
    const at = method === "PUT" ? decodeURIComponent(path.split("/").at(-1) ?? "") : id;
    messages.set(at, { id: at, body: body.attachments[0].content });
  }
  return [...messages.values()];
}

/** Every object in a card, in order. */
function walk(value: unknown): readonly Node[] {
  if (Array.isArray(value)) return value.flatMap(walk);
  if (typeof value !== "object" || value === null) return [];
  const own: Node = { ...value };
  const { data: _, ...inner } = own;
  return [own, ...Object.values(inner).flatMap(walk)];
}

function actionOf(message: OnScreen | undefined, label: string): Node | undefined {
  return walk(message?.body).find(({ type, title }) => type === "Action.Submit" && title === label);
}

function readMessage({ body }: OnScreen): ShownMessage {
  const nodes = walk(body);
  const lines = nodes.flatMap((node) => {
    if (node["type"] === "TextRun" || node["type"] === "TextBlock") return [String(node["text"])];
    return node["title"] !== undefined && node["value"] !== undefined
      ? [String(node["title"]), String(node["value"])]
      : [];
  });
  return {
    // Places where a word may break, and what keeps a text from being a date, are not seen.
    text: lines.join("\n").replace(/[\u200B\u2060]/g, ""),
    buttons: nodes.filter(({ type }) => type === "Action.Submit").map(({ title }) => String(title)),
  };
}

/** @source Microsoft Teams, "Format cards": Markdown is read in TextBlock and in facts; macros everywhere */
function liveIn(body: SentCall["body"]): readonly string[] {
  const mentions = Array.isArray(body.entities) ? body.entities.map((entity: unknown) => JSON.stringify(entity)) : [];
  const nodes = walk(body.attachments[0].content);
  const marked = nodes.flatMap((node) => {
    return readAsMarkdown(node)
      .map(String)
      .filter((text) => /[*_[\]`<>#~]|&\w+;/.test(text));
  });
  const opened = nodes
    .filter(({ type }) => type === "Action.OpenUrl" || type === "Media")
    .map((node) => JSON.stringify(node));
  const macros = [JSON.stringify(body.attachments[0].content)].filter((text) => text.includes("{{DATE"));
  return [...mentions, ...marked, ...opened, ...macros];
}

function readAsMarkdown(node: Node): readonly unknown[] {
  if (node["type"] === "TextBlock") return [node["text"]];
  return node["type"] === "FactSet" ? walk(node["facts"]).flatMap((fact) => [fact["title"], fact["value"]]) : [];
}
