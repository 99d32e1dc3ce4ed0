import { backOff_ms } from "./back-off.js";
import { readLines } from "./read-lines.js";

/**
 * Sends what waits, one message at a time and in order, until each is answered. A message that broke off is sent again
 * under the same delivery id, which the desk answers once.
 *
 * @typedef {import("./log-store.js").Entry} Entry
 * @typedef {{ kind: "working" | "alive" }} QuietLine
 * @typedef {{ kind: "progress" | "card", html: string, summary: string, language: string }} CardLine
 * @typedef {{ kind: "fault" | "refused", text: string }} ProblemLine
 * @typedef {object} SenderEvents
 * @property {(entry: Entry) => void} onChange the entry was stored with a new state
 * @property {(entry: Entry, state: "sending" | "working") => void} onUnderWay it is on its way, or the desk has it
 * @property {(entry: Entry, line: CardLine) => void} onProgress
 * @property {(entry: Entry, line: CardLine) => void} onAnswer
 */

/** A connection on which nothing came for this long is given up; the desk sends a sign of life every 5 s. */
const SILENCE_ms = 15_000;

/**
 * @param {import("./log-store.js").LogStore} store
 * @param {SenderEvents} events
 */
export function createSender(store, events) {
  let isBusy = false;
  /** Ids of the entries that are on their way ahead of the others. */
  const ahead = new Set();
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  let timer;

  /** @param {Entry} entry */
  const keep = (entry) => {
    store.put(entry);
    events.onChange(entry);
  };

  /** Sends everything that waits, now. */
  const wake = async () => {
    if (isBusy) return;
    isBusy = true;
    clearTimeout(timer);
    try {
      for (let next = firstWaiting(store, ahead); next; next = firstWaiting(store, ahead)) {
        if (await attempt(next, keep, events)) continue;
        const tries = next.tries + 1;
        keep({ ...next, tries });
        timer = setTimeout(wake, backOff_ms(tries, Math.random()));
        break;
      }
    } finally {
      isBusy = false;
    }
  };

  /**
   * Sends one entry beside the one that is being worked on, which it calls off; in order when none is.
   * @param {Entry} entry
   */
  const sendAhead = async (entry) => {
    if (isBusy) {
      ahead.add(entry.id);
      const isAnswered = await attempt(entry, keep, events);
      ahead.delete(entry.id);
      if (!isAnswered) keep({ ...entry, tries: entry.tries + 1 });
    }
    await wake();
  };
  return { wake, sendAhead };
}

/** @param {import("./log-store.js").LogStore} store @param {ReadonlySet<string>} ahead */
const firstWaiting = (store, ahead) =>
  store.entries().find((entry) => entry.state === "waiting" && !ahead.has(entry.id));

/**
 * @param {Entry} entry
 * @param {(entry: Entry) => void} keep
 * @param {SenderEvents} events
 * @returns {Promise<boolean>} false when the connection broke before there was an answer
 */
async function attempt(entry, keep, events) {
  // One that broke off before goes on saying that it waits for signal, so that its button stays where it is.
  if (entry.tries === 0) events.onUnderWay(entry, "sending");
  const line = await exchange(entry, events);
  if (line === undefined) return false;
  if (line.kind === "card") {
    keep({ ...entry, state: "answered", answer: { html: line.html, language: line.language } });
    events.onAnswer(entry, line);
    return true;
  }
  keep({ ...entry, state: line.kind === "fault" ? "failed" : "refused", problem: line.text });
  return true;
}

/**
 * @param {Entry} entry
 * @param {SenderEvents} events
 * @returns {Promise<(CardLine & { kind: "card" }) | ProblemLine | undefined>} the line that ends it
 */
async function exchange(entry, events) {
  const stop = new AbortController();
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  let silence;
  const hear = () => {
    clearTimeout(silence);
    silence = setTimeout(() => stop.abort(), SILENCE_ms);
  };
  try {
    hear();
    const response = await post(entry, stop.signal);
    if (!response.body || !isAnswer(response)) return response.status < 500 ? { kind: "refused", text: "" } : undefined;
    for await (const text of readLines(response.body)) {
      hear();
      /** @type {QuietLine | CardLine | ProblemLine} */
      const line = JSON.parse(text);
      if (line.kind === "working") events.onUnderWay(entry, "working");
      if (line.kind === "progress") events.onProgress(entry, line);
      if (line.kind === "card") return { ...line, kind: "card" };
      if (line.kind === "fault" || line.kind === "refused") return line;
    }
    return undefined;
  } catch {
    return undefined;
  } finally {
    clearTimeout(silence);
    stop.abort();
  }
}

/** @param {Entry} entry @param {AbortSignal} signal */
function post({ id, conversation, user, text, aim, form }, signal) {
  return fetch("/messages", {
    method: "POST",
    headers: { "Content-Type": "application/json" },
    body: JSON.stringify({ delivery: id, conversation, user, text, aim, form }),
    credentials: "omit",
    cache: "no-store",
    signal,
  });
}

/** @param {Response} response */
const isAnswer = (response) => response.headers.get("content-type")?.startsWith("application/x-ndjson") === true;
