import { openAttach } from "./attach.js";
import { findDatabase, openBlobStore } from "./blob-store.js";
import { callsOff } from "./cancel.js";
import { smallKey } from "./chips.js";
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
  showFiles,
  showForms,
  showProgress,
  showUnderWay,
  showUpload,
} from "./log-view.js";
import { openPeople } from "./people.js";
import { openPosts } from "./posts.js";
import { createSender } from "./sender.js";
import { word } from "./words.js";

/** @typedef {import("./log-store.js").Entry} Entry */

const store = openLogStore(findStorage());
const blobs = openBlobStore(findDatabase());
const people = openPeople(store);
const attach = openAttach(store, blobs, announce);
const composer = openComposer(
  store,
  () => attach.chosen().length > 0,
  (text) => {
    const files = attach.chosen();
    attach.clear();
    ask({ text, said: text || word("photosSaid"), ...(files.length > 0 && { files }) });
  },
);
const posts = openPosts(store, people.current, announce);
const sender = createSender(store, blobs, {
  filesGone: () => word("filesGone"),
  onUpload: showUpload,
  onChange: (entry) => {
    show(entry);
    showFiles(entry, blobs);
    if (entry.state === "waiting" && entry.tries === 1) announce(word("waiting"));
    if (entry.state === "failed" || entry.state === "refused") announce(entry.problem || word(entry.state));
    find("not-kept", HTMLElement).hidden = store.isKept();
  },
  onUnderWay: showUnderWay,
  onProgress: showProgress,
  onAnswer: (entry, { summary, language }) => {
    people.learnLanguage(entry.user, language);
    announce(summary);
    posts.lookSoon();
    followAnswer(entry);
    if (entry.form) firstProblem(entry)?.focus();
  },
});

/**
 * Puts a message into the log and sends it. The same press again, while the first waits, is the same press.
 * @param {Pick<Entry, "text" | "said" | "aim" | "form" | "files">} what
 */
function ask(what) {
  posts.showChat();
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
  showFiles(entry, blobs);
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
  if (act === "useAgain") return void attach.addAgain(entry.files ?? []).then(composer.focus);
  if (act === "change") {
    store.remove(entry.id);
    composer.restore(entry.text);
    if (entry.files) void attach.addAgain(entry.files);
  }
  showLog();
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

/** The files of the latest messages may be used again; older ones are let go, but never those that still wait. */
const MOST_WITH_FILES = 5;

function dropOldFiles() {
  const withFiles = store.entries().filter((entry) => entry.files);
  const kept = withFiles.filter((entry, at) => entry.state !== "answered" || at >= withFiles.length - MOST_WITH_FILES);
  const files = [...attach.chosen(), ...kept.flatMap((entry) => entry.files ?? [])];
  const small = withFiles.flatMap((entry) => entry.files ?? []);
  void blobs.keepOnly(new Set([...files.map(({ id }) => id), ...[...files, ...small].map(smallKey)]));
}

function showLog() {
  showAll(store.entries());
  for (const entry of store.entries()) showFiles(entry, blobs);
}

find("fresh", HTMLButtonElement).addEventListener("click", () => {
  store.clear();
  showLog();
  dropOldFiles();
  posts.showChat();
  announce(word("emptied"));
  composer.focus();
});

/** Signal may be back. */
const tryAgain = () => {
  void sender.wake();
  posts.lookNow();
};
window.addEventListener("online", tryAgain);
document.addEventListener("visibilitychange", () => {
  if (document.visibilityState === "visible") tryAgain();
});
/** Another tab of this browser changed the log. */
window.addEventListener("storage", ({ key }) => {
  if (key === LOG || key === null) showLog();
});

people.onChange(() => {
  attach.renew();
  posts.changePerson();
});

find("not-kept", HTMLElement).hidden = store.isKept();
showLog();
dropOldFiles();
for (const entry of store.entries()) showForms(entry, store.formsOf(entry.id));
const last = store.entries().at(-1);
if (last) goTo(last);
tryAgain();
