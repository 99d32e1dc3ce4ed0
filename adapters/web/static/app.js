import { callsOff } from "./cancel.js";
import { openComposer } from "./composer.js";
import { find } from "./find.js";
import { describeForm, readForm } from "./forms.js";
import { findStorage, LOG, newId, openLogStore } from "./log-store.js";
import {
  announce,
  firstProblem,
  followAnswer,
  goTo,
  show,
  showAll,
  showForms,
  showProgress,
  showUnderWay,
} from "./log-view.js";
import { openPeople } from "./people.js";
import { createSender } from "./sender.js";
import { word } from "./words.js";

/** @typedef {import("./log-store.js").Entry} Entry */

const store = openLogStore(findStorage());
const people = openPeople(store);
const composer = openComposer(store, (text) => ask({ text, said: text }));
const sender = createSender(store, {
  onChange: (entry) => {
    show(entry);
    if (entry.state === "waiting" && entry.tries === 1) announce(word("waiting"));
    if (entry.state === "failed" || entry.state === "refused") announce(entry.problem || word(entry.state));
    find("not-kept", HTMLElement).hidden = store.isKept();
  },
  onUnderWay: showUnderWay,
  onProgress: showProgress,
  onAnswer: (entry, { summary, language }) => {
    people.learnLanguage(entry.user, language);
    announce(summary);
    followAnswer(entry);
    if (entry.form) firstProblem(entry)?.focus();
  },
});

/**
 * Puts a message into the log and sends it. The same press again, while the first waits, is the same press.
 * @param {Pick<Entry, "text" | "said" | "aim" | "form">} what
 */
function ask(what) {
  const isTwice = store.entries().some((one) => one.state === "waiting" && isSame(one, what));
  if (isTwice) return;
  /** @type {Entry} */
  const entry = {
    id: newId(),
    conversation: store.conversation(),
    ...people.current(),
    ...what,
    at_ms: Date.now(),
    state: "waiting",
    tries: 0,
  };
  store.put(entry);
  show(entry);
  goTo(entry);
  void (isCallOff(entry) ? sender.sendAhead(entry) : sender.wake());
}

/** @param {Pick<Entry, "text" | "form">} what */
function isCallOff({ text, form }) {
  return form === undefined && callsOff(text);
}

/** @param {Entry} entry @param {Pick<Entry, "text" | "aim" | "form">} what */
function isSame(entry, { text, aim, form }) {
  const key = JSON.stringify([text, aim, form]);
  return (
    (aim !== undefined || form !== undefined || callsOff(text)) &&
    key === JSON.stringify([entry.text, entry.aim, entry.form])
  );
}

/** @param {Element} inside @returns {Entry | undefined} */
function entryOf(inside) {
  const id = inside.closest(".entry")?.id.replace("entry-", "");
  return store.entries().find((entry) => entry.id === id);
}

document.addEventListener("click", ({ target }) => {
  const button = target instanceof Element ? target.closest("button") : null;
  if (button === null) return;
  const { say, walk, fact, act, choice } = button.dataset;
  const aim = walk !== undefined && fact !== undefined ? { aim: { walk, fact } } : {};
  if (say !== undefined) ask({ text: say, said: button.textContent?.trim() ?? say, ...aim });
  if (choice !== undefined) {
    const field = document.getElementById(choice);
    const option = field instanceof HTMLSelectElement ? field.selectedOptions[0] : undefined;
    const value = field instanceof HTMLSelectElement || field instanceof HTMLInputElement ? field.value : "";
    if (value === "") field?.focus();
    else ask({ text: value, said: option?.textContent ?? value, ...aim });
  }
  if (act) takeUp(act, entryOf(button));
});

/** The button beside a message that was not answered. @param {string} act @param {Entry | undefined} entry */
function takeUp(act, entry) {
  if (!entry) return;
  if (act === "sendAgain") store.put({ ...entry, state: "waiting", tries: 0 });
  if (act === "change") {
    store.remove(entry.id);
    composer.restore(entry.text);
  }
  showAll(store.entries());
  void sender.wake();
}

document.addEventListener("submit", (event) => {
  const form = event.target;
  if (!(form instanceof HTMLFormElement) || form.dataset["topic"] === undefined) return;
  event.preventDefault();
  ask({ text: "", said: describeForm(form), form: readForm(form) });
});

document.addEventListener("input", ({ target }) => {
  const form = target instanceof Element ? target.closest("form[data-topic]") : null;
  const entry = form ? entryOf(form) : undefined;
  if (!(form instanceof HTMLFormElement) || !entry) return;
  const others = store.formsOf(entry.id).filter((one) => one.topic !== form.dataset["topic"]);
  store.keepForms(entry.id, [...others, readForm(form)]);
});

find("fresh", HTMLButtonElement).addEventListener("click", () => {
  store.clear();
  showAll(store.entries());
  announce(word("emptied"));
  composer.focus();
});

/** Signal may be back. */
const tryAgain = () => void sender.wake();
window.addEventListener("online", tryAgain);
document.addEventListener("visibilitychange", () => {
  if (document.visibilityState === "visible") tryAgain();
});
/** Another tab of this browser changed the log. */
window.addEventListener("storage", ({ key }) => {
  if (key === LOG || key === null) showAll(store.entries());
});

find("not-kept", HTMLElement).hidden = store.isKept();
showAll(store.entries());
for (const entry of store.entries()) showForms(entry, store.formsOf(entry.id));
const last = store.entries().at(-1);
if (last) goTo(last);
tryAgain();
