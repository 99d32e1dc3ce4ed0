import { randomUUID } from "node:crypto";
import type { Desk } from "../../src/desk.ts";
import { buildFaultCard } from "../../src/messages/build-link-card.ts";
import type { Card } from "../../src/messages/card.ts";
import { LANGUAGES } from "../../src/messages/language.ts";
import { COMMON } from "../../src/messages/voice.ts";
import { BoundedMap } from "./bounded-map.ts";
import { closeCard, closedQuestion } from "./close-card.ts";
import { describeError } from "./describe-error.ts";
import { noteFiles } from "./file-messages.ts";
import { createConsentTaker, type FileParts, giveFiles } from "./give-files.ts";
import { notYoursCard } from "./not-yours-card.ts";
import { type DrawPngWithin, pictureMessage } from "./picture-message.ts";
import type { CardMessage, Pause, ServeEvent, TeamsEvent, TeamsLine } from "./port.ts";
import { renderAdaptive } from "./render-adaptive.ts";
import { statusOf } from "./send-patiently.ts";
import { ProgressShow } from "./show-progress.ts";

/** How many deliveries and open questions are remembered; beyond them the desk and the card itself still know. */
const MOST_DELIVERIES = 10_000;
const MOST_OPEN_CARDS = 500;
const ID_CHARACTERS = 8;
const HTTP_NOT_FOUND = 404;

export interface ServiceParts extends FileParts {
  readonly desk: Desk;
  readonly pause: Pause;
  /** Draws charts; without it a chart is its words and numbers. */
  readonly drawPng?: DrawPngWithin | undefined;
}

/** Makes what serves the events of Teams: asks the desk, shows progress, answers, and closes the card that was answered. */
export function createService(parts: ServiceParts): ServeEvent {
  const deliveries = new BoundedMap<true>(MOST_DELIVERIES);
  const cards = new CardsOnScreen();
  const takeConsent = createConsentTaker(parts);
  return async (event, line, signal) => {
    const { delivery } = event.inbound;
    // The desk knows older deliveries too. One that this process has not seen is answered again, because the answer may
    // have been lost with the process that gave it.
    if (deliveries.has(delivery)) return;
    deliveries.set(delivery, true);
    let isAnswered = false;
    try {
      if (event.consent) await takeConsent(event.consent, event, line, signal);
      isAnswered = event.consent !== undefined || (await serveOnce(event, line, signal, parts, cards));
    } finally {
      if (!isAnswered) deliveries.delete(delivery);
    }
  };
}

/** @returns false when nothing was saved and the person was told so: the same may be sent again */
async function serveOnce(
  event: TeamsEvent,
  line: TeamsLine,
  signal: AbortSignal,
  parts: ServiceParts,
  cards: CardsOnScreen,
): Promise<boolean> {
  const { pressed } = event;
  const asker = pressed?.ask?.asker;
  if (asker && asker.id !== event.asker.id) {
    await sendCard(notYoursCard(event.language, asker.name), event, line, signal);
    return true;
  }
  const { log } = parts;
  const progress = new ProgressShow(line, parts.pause, (error) =>
    log.warn(describeError(error), "progress was not shown"),
  );
  const show = (card: Card) => progress.show(renderFor(event, card)[0]);
  const card = await askDesk(event, show, signal, parts);
  const isDone = !signal.aborted && !isFaultCard(card);
  const progressId = await progress.end();
  const sent = await sendCard(card, event, line, signal, progressId);
  for (const [id, message] of sent) cards.remember(event, id, message);
  if (isDone) await closeAnswered(event, line, signal, parts, cards);
  await sendPictures(card, event, line, signal, parts);
  if (!signal.aborted) await giveFiles(card, event, (message) => line.send(message, signal), parts);
  return isDone;
}

/** Sends the pictures of a card after it; nothing waits for them, and one that cannot be sent is missed by nobody. */
async function sendPictures(
  card: Card,
  { language }: TeamsEvent,
  line: TeamsLine,
  signal: AbortSignal,
  { drawPng, log }: ServiceParts,
): Promise<void> {
  if (drawPng === undefined) return;
  for (const block of card.blocks) {
    if (block.kind !== "chart" || signal.aborted) continue;
    try {
      const message = await pictureMessage(block, language, drawPng);
      if (message === undefined) log.info({ chart: block.chart.id }, "a picture is too large for a message");
      else await line.send(message, signal);
    } catch (error) {
      log.warn({ chart: block.chart.id, ...describeError(error) }, "a picture could not be sent; its table was");
    }
  }
}

/** The desk answers even when it fails; should it not, the door says so itself. */
async function askDesk(
  event: TeamsEvent,
  show: (card: Card) => void,
  signal: AbortSignal,
  parts: ServiceParts,
): Promise<Card> {
  try {
    const { card } = await parts.desk.receive(event.inbound, show, signal);
    return card;
  } catch (error) {
    const id = randomUUID().slice(0, ID_CHARACTERS);
    parts.log.error({ id, ...describeError(error) }, "a message was not answered");
    return buildFaultCard(COMMON[event.language], id);
  }
}

/** A card that says that nothing was saved: what was pressed must stay to be pressed again. */
function isFaultCard({ title }: Card): boolean {
  return LANGUAGES.some((language) => title === COMMON[language].faultTitle);
}

function renderFor(event: TeamsEvent, card: Card) {
  const { language, asker, isGroup } = event;
  return renderAdaptive(isGroup ? noteFiles(card, language) : card, { language, ...(isGroup && { asker }) });
}

type Sent = readonly (readonly [id: string, message: CardMessage])[];

/** Sends a card; its first message takes the place of the progress message where there is one. */
async function sendCard(
  card: Card,
  event: TeamsEvent,
  line: TeamsLine,
  signal: AbortSignal,
  progressId?: string,
): Promise<Sent> {
  const [first, ...more] = renderFor(event, card);
  const sent: [string, CardMessage][] = [[await sendOrReplace(first, line, signal, progressId), first]];
  for (const message of more) sent.push([await line.send(message, signal), message]);
  return sent;
}

async function sendOrReplace(
  message: CardMessage,
  line: TeamsLine,
  signal: AbortSignal,
  progressId: string | undefined,
): Promise<string> {
  if (progressId === undefined) return await line.send(message, signal);
  try {
    await line.update(progressId, message, signal);
    return progressId;
  } catch (error) {
    // Somebody deleted the progress message: the answer comes as a message of its own.
    if (statusOf(error) !== HTTP_NOT_FOUND) throw error;
    return await line.send(message, signal);
  }
}

/** Takes the buttons off the card that was answered. A card that cannot be changed any more stays as it is. */
async function closeAnswered(
  event: TeamsEvent,
  line: TeamsLine,
  signal: AbortSignal,
  parts: ServiceParts,
  cards: CardsOnScreen,
): Promise<void> {
  const { pressed, pressedOn } = event;
  if (!pressed?.ask || pressedOn === undefined || !cards.startClosing(event, pressedOn)) return;
  const open = cards.recall(event, pressedOn);
  const closed = open
    ? closeCard(open, pressed)
    : pressed.ask.title && closedQuestion(pressed.ask.title, pressed, event.language);
  if (!closed) return;
  try {
    await line.update(pressedOn, closed, signal);
  } catch (error) {
    parts.log.warn(describeError(error), "an answered card was not closed");
  }
}

/** The cards that can still be answered, and those that were; message ids are unique within a conversation only. */
class CardsOnScreen {
  readonly #open = new BoundedMap<CardMessage>(MOST_OPEN_CARDS);
  readonly #closed = new BoundedMap<true>(MOST_DELIVERIES);

  remember(event: TeamsEvent, id: string, message: CardMessage): void {
    const isOpen = message.card.body.some(({ type }) => type === "ActionSet");
    if (isOpen) this.#open.set(cardKey(event, id), message);
  }

  recall(event: TeamsEvent, id: string): CardMessage | undefined {
    return this.#open.get(cardKey(event, id));
  }

  /** False when this card was closed before: what stands there then is the answer that counted. */
  startClosing(event: TeamsEvent, id: string): boolean {
    const key = cardKey(event, id);
    if (this.#closed.has(key)) return false;
    this.#closed.set(key, true);
    return true;
  }
}

function cardKey(event: TeamsEvent, id: string): string {
  return `${event.inbound.conversation} ${id}`;
}
