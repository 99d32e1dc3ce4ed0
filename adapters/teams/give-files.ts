import type { Card, FileBlock } from "../../src/messages/card.ts";
import type { Caller } from "../../src/ports/store.ts";
import { BoundedMap } from "./bounded-map.ts";
import { describeError } from "./describe-error.ts";
import { publicAddress, type WebFetch } from "./fetch-file.ts";
import { type Consent, consentMessage, fileMessage, filesOf, photoMessage } from "./file-messages.ts";
import { FILE_TEXTS } from "./file-texts.ts";
import { paragraphs } from "./plain-text.ts";
import type { DoorLog, TeamsEvent, TeamsLine, TeamsMessage } from "./port.ts";
import { frameCard } from "./render-adaptive.ts";

/** Longest wait for a file to be taken. Our own choice. */
const UPLOAD_TIMEOUT_ms = 60_000;
/** How many answers to offers are remembered; beyond them the card that was replaced still shows it. */
const MOST_ANSWERS = 1_000;

export interface FileParts {
  /** A kept file of the caller's workspace; left out where none are kept. */
  readonly readFile?: ((caller: Caller, hash: string) => Promise<Uint8Array | undefined>) | undefined;
  readonly webFetch: WebFetch;
  readonly log: DoorLog;
}
type Send = (message: TeamsMessage) => Promise<unknown>;

/** Hands over the papers and pictures of a card, after it. One that cannot be sent is missed by nobody but the log. */
export async function giveFiles(card: Card, event: TeamsEvent, send: Send, parts: FileParts): Promise<void> {
  const { readFile, log } = parts;
  if (readFile === undefined) return;
  for (const block of filesOf(card)) {
    try {
      const message = await messageFor(block, event, readFile);
      if (message !== undefined) await send(message);
    } catch (error) {
      log.warn({ type: block.file.type, ...describeError(error) }, "a file could not be offered");
    }
  }
}

async function messageFor(
  block: FileBlock,
  { inbound, isGroup, language }: TeamsEvent,
  readFile: NonNullable<FileParts["readFile"]>,
): Promise<TeamsMessage | undefined> {
  const bytes = block.file.type.startsWith("image/") ? await readFile(inbound.caller, block.file.hash) : undefined;
  const photo = bytes && photoMessage(block, bytes, language);
  if (photo !== undefined) return photo;
  // In a channel or a group the card itself says how to get it.
  return isGroup ? undefined : consentMessage(block, language);
}

/** Makes what takes the answers to offers. Each is taken once; the same again puts the same in the same place. */
export function createConsentTaker(parts: FileParts) {
  const taken = new BoundedMap<true>(MOST_ANSWERS);
  return async (consent: Consent, event: TeamsEvent, line: TeamsLine, signal: AbortSignal): Promise<void> => {
    const { conversation, delivery } = event.inbound;
    const key = JSON.stringify([conversation, event.pressedOn ?? delivery, consent.file]);
    if (taken.has(key)) return;
    taken.set(key, true);
    let isTold = false;
    try {
      const { message, isDone } = await takeConsent(consent, event, parts);
      await replace(message, event, line, signal);
      isTold = isDone;
    } finally {
      // What did not arrive, or was not told, may be allowed again.
      if (!isTold) taken.delete(key);
    }
  };
}

async function takeConsent(
  { file, name, language, upload }: Consent,
  { inbound }: TeamsEvent,
  { readFile, webFetch, log }: FileParts,
): Promise<{ readonly message: TeamsMessage; readonly isDone: boolean }> {
  const texts = FILE_TEXTS[language];
  const say = (text: string) => frameCard(text, paragraphs(text), language);
  if (upload === undefined) return { message: say(texts.declined(name)), isDone: true };
  try {
    const bytes = await readFile?.(inbound.caller, file);
    if (bytes === undefined) return { message: say(texts.gone(name)), isDone: true };
    await putFile(upload.uploadUrl, bytes, webFetch);
    return { message: fileMessage(name, upload, language), isDone: true };
  } catch (error) {
    log.warn(describeError(error), "a file could not be put into a person's storage");
    return { message: say(texts.failed(name)), isDone: false };
  }
}

/** @source Microsoft Graph, "Upload large files with an upload session": one range that holds the whole file */
async function putFile(url: string, bytes: Uint8Array, webFetch: WebFetch): Promise<void> {
  const response = await webFetch(publicAddress(url), {
    method: "PUT",
    body: Uint8Array.from(bytes),
    headers: {
      "content-type": "application/octet-stream",
      "content-range": `bytes 0-${bytes.length - 1}/${bytes.length}`,
    },
    redirect: "error",
    signal: AbortSignal.timeout(UPLOAD_TIMEOUT_ms),
  });
  await response.body?.cancel();
  if (!response.ok) throw new Error(`The storage answers ${response.status}.`);
}

/** The offer becomes what came of it, so that it is not pressed again; where it is gone, a message of its own says it. */
async function replace(
  message: TeamsMessage,
  { pressedOn }: TeamsEvent,
  line: TeamsLine,
  signal: AbortSignal,
): Promise<void> {
  if (pressedOn !== undefined) {
    try {
      await line.update(pressedOn, message, signal);
      return;
    } catch {
      // Some clients let no bot change a card of this kind: then it is said beneath.
    }
  }
  await line.send(message, signal);
}
