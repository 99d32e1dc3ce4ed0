import { isInitialsOrNickname } from "../jobs/customer.ts";
import { foldText } from "../units/fold-text.ts";
import type { Scene } from "./turn.ts";

const TOPIC = "job";
/** A number alone, as jobs are called; with fewer figures it is a quantity unless its sign says otherwise. */
const BARE_NUMBER = /^(#\s?\d{3,9}|\d{4,9})[.!?]?$/;
/** What people say of a job without the word for it, at the beginning of a message. */
const OF_A_JOB = /^(?:history|historial|note|nota)\b(?=[\s:,]|$)/i;

/** "job 1003 plan monday ebbe, wren": who stands at the end is who does it. */
const PLANS = /^(?:job|trabajo)\b.*\bplan\b/i;

function sayWho(text: string, people: readonly string[]): string {
  if (!PLANS.test(text) || people.length === 0) return text;
  const name = `(?:${people.join("|")})`;
  const end = new RegExp(`\\s(${name}(?:\\s*(?:,|&|\\+|\\band\\b|\\by\\b)\\s*${name})*)[.!]?$`, "i");
  return text.replace(end, " crew=$1");
}

/**
 * The message as a request about a job, where it is one without saying so: a job's number alone, a note, the history. A
 * number that answers a question, or that nobody has as a job while something else was talked about, stays a number.
 */
export function sayJob(scene: Scene): Scene {
  const { text, state, names, library } = scene;
  if (!library.topics.has(TOPIC)) return scene;
  const begun = sayNewJob(scene);
  if (begun !== undefined) return begun;
  const planned = sayWho(text.trim(), names.person ?? []);
  if (planned !== text.trim()) return { ...scene, text: planned };
  const said: Scene = { ...scene, text: `${TOPIC} ${text}` };
  const about = state.walk?.topic ?? state.last?.topic;
  if (OF_A_JOB.test(text) && state.walk === undefined) return said;
  const [, number] = BARE_NUMBER.exec(text.trim()) ?? [];
  if (number === undefined) return scene;
  const figures = number.replace(/\D/g, "");
  const isKnown = names.job?.includes(figures) === true;
  const named: Scene = { ...scene, text: `${TOPIC} number=${figures}` };
  const isSigned = number !== figures;
  if (isSigned) return isKnown || state.walk === undefined ? named : scene;
  if (state.walk !== undefined) return scene;
  return isKnown || about === undefined || about === TOPIC ? named : scene;
}

const NEW_JOB = /^(?:job|trabajo)\s+(?:new|nuevo)\s+(?:for\s+|para\s+)?([^=]+)$/i;
const DAY = /^\d{4}-\d{2}-\d{2}$/;

/** "job new T. M. Ostrowick 2026-11-27": who it is for, then where and when, as people write it down in one line. */
function sayNewJob(scene: Scene): Scene | undefined {
  const [, told = ""] = NEW_JOB.exec(scene.text.trim()) ?? [];
  const words = told.split(/[\s,]+/).filter((word) => word !== "");
  const day = DAY.test(words.at(-1) ?? "") ? words.pop() : undefined;
  const town = takePlace(words, scene);
  const customer = words.join(" ");
  if (!isInitialsOrNickname(customer)) return undefined;
  const pairs = [`customer=${customer}`, ...(town ? [`town=${town}`] : []), ...(day ? [`day=${day}`] : [])];
  return { ...scene, text: `${TOPIC} new ${pairs.join(" ")}` };
}

/** Takes the name of a place of the books off the end of some words. */
function takePlace(words: string[], { books }: Scene): string | undefined {
  for (const { name } of books?.places ?? []) {
    const own = name.split(" ");
    const last = words.slice(-own.length).join(" ");
    if (words.length <= own.length || foldText(last) !== foldText(name)) continue;
    words.splice(-own.length);
    return name;
  }
  return undefined;
}
