import type { Card } from "../../src/messages/card.ts";
import type { DoorLog } from "./door-log.ts";
import { type RenderedCard, renderCard, type SlackMessage } from "./render-card.ts";
import type { Route, Sent } from "./route.ts";
import type { Pace } from "./settings.ts";

/** One answer as it comes: how far the work is, in one message that is updated, and then the answer in its place. */
export interface AnswerSteps {
  show(card: Card): void;
  finish(card: Card): Promise<void>;
  /** Ends without an answer of its own. */
  cancel(): void;
}

/**
 * @param isWhispered says of a card whether only the asker sees it
 */
export function openAnswerSteps(
  route: Route,
  isWhispered: (card: Card) => boolean,
  pace: Pace,
  log: DoorLog,
): AnswerSteps {
  let latest: Card | undefined;
  let timer: NodeJS.Timeout | undefined;
  let shown: Sent | undefined;
  let sending: Promise<void> = Promise.resolve();
  let isOver = false;

  const render = (card: Card): RenderedCard => {
    const made = renderCard(card);
    if (made.refused.length > 0)
      log.error({ because: `${made.refused.length} of a card` }, "buttons too long for Slack were left out");
    return made;
  };
  const send = async (message: SlackMessage, isPrivate: boolean): Promise<void> => {
    if (shown === undefined) shown = await route.send(message, isPrivate);
    else await route.replace(shown, message, isPrivate);
  };
  const sendProgress = async (card: Card): Promise<void> => {
    try {
      await send(render(card).messages[0], route.whispersProgress || isWhispered(card));
    } catch (error) {
      log.warn({ error }, "progress could not be shown");
    }
  };
  const tick = () => {
    timer = undefined;
    if (latest === undefined || isOver || !route.hasRoomForProgress()) return;
    const card = latest;
    latest = undefined;
    sending = sending.then(() => sendProgress(card));
    timer = setTimeout(tick, pace.progressEvery_ms);
  };
  const stop = () => {
    isOver = true;
    clearTimeout(timer);
  };

  return {
    cancel: stop,
    show(card) {
      latest = card;
      if (!isOver) timer ??= setTimeout(tick, pace.progressAfter_ms);
    },
    async finish(card) {
      stop();
      await sending;
      const [first, ...others] = render(card).messages;
      const isPrivate = isWhispered(card);
      await send(first, isPrivate);
      for (const message of others) await route.send(message, isPrivate, shown);
    },
  };
}
