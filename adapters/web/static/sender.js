import { backOff_ms } from "./back-off.js";
import { readLines } from "./read-lines.js";
import { upload } from "./upload.js";

/**
 * Sends what waits, one message at a time and in order, until each is answered. A message that broke off is sent again
 * under the same delivery id, which the desk answers once.
 *
 * @typedef {import("./log-store.js").Entry} Entry
 * @typedef {{ kind: "working" | "alive" }} QuietLine
 * @typedef {{ kind: "progress" | "card", html: string, summary: string, language: string }} CardLine
 * @typedef {{ kind: "fault" | "refused", text: string }} ProblemLine
 * @typedef {{ kind: "missing", files: string[] }} MissingLine
 * @typedef {object} SenderEvents
 * @property {(entry: Entry) => void} onChange the entry was stored with a new state
 * @property {(entry: Entry, state: "sending" | "working") => void} onUnderWay it is on its way, or the desk has it
 * @property {(entry: Entry, line: CardLine) => void} onProgress
 * @property {(entry: Entry, done_B: number) => void} onUpload so much of its files is there
 * @property {() => string} filesGone says that a file is no longer to be had
 * @property {(entry: Entry, line: CardLine) => void} onAnswer
 */

/** A connection on which nothing came for this long is given up; the desk sends a sign of life every 5 s. */
const SILENCE_ms = 15_000;
/** A server that has lost the files is sent them once more at once, and then as after any break. */
const MOST_ROUNDS = 2;

/**
 * @param {import("./log-store.js").LogStore} store
 * @param {import("./blob-store.js").BlobStore} blobs
 * @param {SenderEvents} events
 */
export function createSender(store, blobs, events) {
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
        if (await attempt(next, { keep, events, store, blobs })) continue;
        const tries = next.tries + 1;
        keep({ ...latest(store, next), tries });
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
      const isAnswered = await attempt(entry, { keep, events, store, blobs });
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
 * The entry with what is known by now of its files.
 * @param {import("./log-store.js").LogStore} store @param {Entry} entry
 */
const latest = (store, entry) => store.entries().find(({ id }) => id === entry.id) ?? entry;

/**
 * @typedef {object} Work
 * @property {(entry: Entry) => void} keep
 * @property {SenderEvents} events
 * @property {import("./log-store.js").LogStore} store
 * @property {import("./blob-store.js").BlobStore} blobs
 */

/**
 * @param {Entry} first
 * @param {Work} work
 * @returns {Promise<boolean>} false when the connection broke before there was an answer
 */
async function attempt(first, work) {
  const { keep, events, store } = work;
  // One that broke off before goes on saying that it waits for signal, so that its button stays where it is.
  if (first.tries === 0) events.onUnderWay(first, "sending");
  /** @type {(CardLine & { kind: "card" }) | ProblemLine | MissingLine | { kind: "broken" } | undefined} */
  let line;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    line = (await sendFiles(latest(store, first), work)) ?? (await exchange(first, events));
    if (line?.kind !== "missing") break;
    markUp(store, first, line.files, false);
  }
  const entry = latest(store, first);
  if (line === undefined || line.kind === "missing" || line.kind === "broken") return false;
  if (line.kind === "card") {
    keep({ ...entry, state: "answered", answer: { html: line.html, language: line.language } });
    events.onAnswer(entry, line);
    return true;
  }
  keep({ ...entry, state: line.kind === "fault" ? "failed" : "refused", problem: line.text });
  return true;
}

/**
 * Sends the files that the server does not have yet, one after the other.
 * @param {Entry} entry
 * @param {Work} work
 * @returns {Promise<ProblemLine | { kind: "broken" } | undefined>} nothing when all of them are there
 */
async function sendFiles(entry, { events, store, blobs }) {
  const files = entry.files ?? [];
  let done_B = files.reduce((sum, { isUp, size_B }) => sum + (isUp ? size_B : 0), 0);
  for (const file of files) {
    if (file.isUp) continue;
    const blob = await blobs.get(file.id);
    if (!blob) return { kind: "refused", text: events.filesGone() };
    const before_B = done_B;
    events.onUpload(entry, before_B);
    const outcome = await upload(file.id, entry.user, blob, (part_B) => events.onUpload(entry, before_B + part_B));
    if (outcome.kind !== "taken") return outcome;
    done_B += file.size_B;
    markUp(store, entry, [file.id], true);
  }
  if (files.length > 0) events.onUnderWay(entry, "sending");
  return undefined;
}

/** @param {import("./log-store.js").LogStore} store @param {Entry} entry @param {string[]} ids @param {boolean} isUp */
function markUp(store, entry, ids, isUp) {
  const now = latest(store, entry);
  store.put({ ...now, files: (now.files ?? []).map((file) => (ids.includes(file.id) ? { ...file, isUp } : file)) });
}

/**
 * @param {Entry} entry
 * @param {SenderEvents} events
 * @returns {Promise<(CardLine & { kind: "card" }) | ProblemLine | MissingLine | undefined>} the line that ends it
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
      /** @type {QuietLine | CardLine | ProblemLine | MissingLine} */
      const line = JSON.parse(text);
      if (line.kind === "working") events.onUnderWay(entry, "working");
      if (line.kind === "progress") events.onProgress(entry, line);
      if (line.kind === "card") return { ...line, kind: "card" };
      if (line.kind === "fault" || line.kind === "refused" || line.kind === "missing") return line;
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
function post({ id, conversation, user, text, aim, form, files }, signal) {
  const told = files?.map((file) => ({ id: file.id, name: file.name }));
  return fetch("/messages", {
    method: "POST",
    headers: { "Content-Type": "application/json" },
    body: JSON.stringify({ delivery: id, conversation, user, text, aim, form, files: told }),
    credentials: "omit",
    cache: "no-store",
    signal,
  });
}

/** @param {Response} response */
const isAnswer = (response) => response.headers.get("content-type")?.startsWith("application/x-ndjson") === true;
