import type { Context } from "hono";
import { stream } from "hono/streaming";
import type { Card } from "../../src/messages/card.ts";
import type { Language } from "../../src/messages/language.ts";
import { type HtmlOptions, renderHtml } from "./render-html.ts";
import type { Outcome, RunningDelivery } from "./running-deliveries.ts";

/** One line of a streamed answer. `alive` only says that the connection still holds. */
export type AnswerLine =
  | { readonly kind: "working" }
  | { readonly kind: "alive" }
  | { readonly kind: "progress"; readonly html: string; readonly summary: string; readonly language: Language }
  | {
      readonly kind: "card";
      readonly html: string;
      readonly summary: string;
      readonly language: Language;
      readonly isRepeat: boolean;
    }
  /** These files are not here (any more): the browser sends them, and then the message again. */
  | { readonly kind: "missing"; readonly files: readonly string[] }
  | { readonly kind: "fault"; readonly text: string }
  | { readonly kind: "refused"; readonly text: string };

export interface AnswerStreamOptions {
  /** Goes into the ids of the card's elements. */
  readonly delivery: string;
  /** The reader's language at the time of asking. */
  readonly language: () => Promise<Language>;
  /** Logs a fault and says so in the reader's words. */
  readonly wordFault: (error: unknown, language: Language) => string;
  readonly heartbeat_ms: number;
  /** How cards are shown to this person, but for their id and language. */
  readonly look: Omit<HtmlOptions, "id" | "language">;
}

/** Answers line by line: that work began, how far it is, and at last the card. */
export function streamAnswer(c: Context, running: RunningDelivery, options: AnswerStreamOptions): Response {
  c.header("Content-Type", "application/x-ndjson; charset=utf-8");
  c.header("X-Accel-Buffering", "no");
  return stream(c, async (out) => {
    const dropped = new Promise<void>((resolve) => out.onAbort(resolve));
    const send = (line: AnswerLine) => out.writeln(JSON.stringify(line));
    running.join();
    try {
      await send({ kind: "working" });
      await relayProgress(running, dropped, send, () => out.aborted, options);
      const line = running.outcome && (await lineOf(running.outcome, options));
      if (line) await send(line);
    } finally {
      running.leave();
    }
  });
}

type Send = (line: AnswerLine) => Promise<unknown>;

async function relayProgress(
  running: RunningDelivery,
  dropped: Promise<void>,
  send: Send,
  isDropped: () => boolean,
  options: AnswerStreamOptions,
): Promise<void> {
  let shown: Card | undefined;
  while (!running.outcome && !isDropped()) {
    const card = running.progress;
    if (card && card !== shown) {
      shown = card;
      await send(await progressLine(card, options));
      continue;
    }
    if (await isQuiet(options.heartbeat_ms, running.changed(), dropped)) await send({ kind: "alive" });
  }
}

/** True when nothing happened for this long. */
async function isQuiet(time_ms: number, ...events: readonly Promise<void>[]): Promise<boolean> {
  let timer: NodeJS.Timeout | undefined;
  const quiet = new Promise<boolean>((resolve) => {
    timer = setTimeout(() => resolve(true), time_ms);
  });
  const result = await Promise.race([quiet, ...events.map((event) => event.then(() => false))]);
  clearTimeout(timer);
  return result;
}

async function progressLine(card: Card, { delivery, language, look }: AnswerStreamOptions): Promise<AnswerLine> {
  const spoken = await language();
  const html = renderHtml(card, { ...look, id: `${delivery}-so-far`, language: spoken });
  return { kind: "progress", html, summary: card.summary, language: spoken };
}

async function lineOf(outcome: Outcome, options: AnswerStreamOptions): Promise<AnswerLine | undefined> {
  if (outcome.kind === "stopped") return undefined;
  const language = await options.language();
  if (outcome.kind === "fault") return { kind: "fault", text: options.wordFault(outcome.error, language) };
  const { card, isRepeat } = outcome.reply;
  const html = renderHtml(card, { ...options.look, id: options.delivery, language });
  return { kind: "card", html, summary: card.summary, language, isRepeat };
}
