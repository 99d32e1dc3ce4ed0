import { saySize } from "./check-file.js";
import { showChips } from "./chips.js";
import { find, partOf } from "./find.js";
import { fillForms } from "./forms.js";
import { currentLanguage, sayWords, word, wordWith } from "./words.js";

/**
 * Shows the log: one entry for each message, in order.
 * @typedef {import("./log-store.js").Entry} Entry
 * @typedef {import("./log-store.js").FilledForm} FilledForm
 * @typedef {import("./sender.js").CardLine} CardLine
 */

const log = find("log", HTMLOListElement);
const template = find("entry", HTMLTemplateElement);
const announcer = find("announcer", HTMLElement);

/** Says something to people who listen to the page. @param {string} text */
export function announce(text) {
  announcer.textContent = text;
}

/** Puts back what was typed into the forms of an answer. @param {Entry} entry @param {FilledForm[]} forms */
export function showForms(entry, forms) {
  fillForms(elementOf(entry), forms);
}

/** Brings the shown log in line with the entries that are kept. @param {Entry[]} entries */
export function showAll(entries) {
  const kept = new Set(entries.map((entry) => elementId(entry)));
  for (const shown of [...log.children]) if (!kept.has(shown.id)) shown.remove();
  for (const entry of entries) show(entry);
  document.body.classList.toggle("is-empty", entries.length === 0);
}

/** Shows one entry as it is now. @param {Entry} entry */
export function show(entry) {
  const element = elementOf(entry);
  element.dataset["state"] = entry.state;
  showState(element, entry);
  if (entry.answer) showAnswer(element, entry.answer.html);
}

/**
 * It is on its way, or the desk has it.
 * @param {Entry} entry
 * @param {"sending" | "working"} state
 */
export function showUnderWay(entry, state) {
  const element = elementOf(entry);
  element.dataset["state"] = state;
  setState(element, { word: state });
}

/** So much of its files is with the server. @param {Entry} entry @param {number} done_B */
export function showUpload(entry, done_B) {
  const element = elementOf(entry);
  const all_B = (entry.files ?? []).reduce((sum, { size_B }) => sum + size_B, 0);
  element.dataset["state"] = "uploading";
  setState(element, {
    text: wordWith("uploading", { done: saySize(done_B), size: saySize(all_B) }),
    word: "uploading",
  });
  partOf(element, "gauge", HTMLElement).style.setProperty("--share", String(all_B === 0 ? 0 : done_B / all_B));
}

/** Shows the files of an entry; once it is answered they may be used again. @param {Entry} entry @param {import("./blob-store.js").BlobStore} blobs */
export function showFiles(entry, blobs) {
  const files = entry.files ?? [];
  showChips(partOf(elementOf(entry), "files", HTMLElement), files, blobs, () => undefined);
  partOf(elementOf(entry), "again", HTMLElement).hidden = files.length === 0 || entry.state === "waiting";
}

/** @param {Entry} entry @param {CardLine} line */
export function showProgress(entry, line) {
  const answer = partOf(elementOf(entry), "answer", HTMLElement);
  const made = document.createElement("template");
  made.innerHTML = line.html;
  const isRenewed = updateAround(answer.querySelector(".buttons"), made.content.querySelector(".buttons"));
  if (isRenewed) shownHtml.set(answer, line.html);
  else showAnswer(elementOf(entry), line.html);
}

/**
 * Renews what stands around buttons that stay as they are, so that a finger or the focus on them is not lost.
 * @param {Element | null} shown
 * @param {Element | null} made
 */
function updateAround(shown, made) {
  const [around, renewed] = [shown?.parentElement, made?.parentElement];
  if (!shown || !made || !around || !renewed || shown.outerHTML !== made.outerHTML) return false;
  for (const old of [...around.children]) if (old !== shown) old.remove();
  let isBehind = false;
  for (const child of [...renewed.children]) {
    if (child === made) isBehind = true;
    else if (isBehind) around.append(child);
    else shown.before(child);
  }
  return true;
}

/** Scrolls to what was just asked. @param {Entry} entry */
export function goTo(entry) {
  elementOf(entry).scrollIntoView({ block: "start" });
}

/**
 * Scrolls so that as much of a new answer as fits is in sight, from its question on. Somebody who reads further up is
 * left there.
 * @param {Entry} entry
 */
export function followAnswer(entry) {
  const element = elementOf(entry);
  const { top, bottom } = element.getBoundingClientRect();
  const isInSight = top < window.innerHeight && bottom > 0;
  if (isInSight && element === log.lastElementChild) goTo(entry);
}

/** The first field of the entry's answer that was not understood. @param {Entry} entry */
export function firstProblem(entry) {
  const wrong = elementOf(entry).querySelector("[aria-invalid=true]");
  const field = wrong instanceof HTMLFieldSetElement ? wrong.querySelector("input") : wrong;
  return field instanceof HTMLElement ? field : undefined;
}

/** @param {Entry} entry */
const elementId = (entry) => `entry-${entry.id}`;

/** @param {Entry} entry @returns {HTMLElement} */
function elementOf(entry) {
  const found = document.getElementById(elementId(entry));
  if (found) return found;
  log.append(template.content.cloneNode(true));
  const made = log.lastElementChild;
  if (!(made instanceof HTMLElement)) throw new Error("the template holds no entry");
  sayWords(made);
  made.id = elementId(entry);
  partOf(made, "name", HTMLElement).textContent = entry.name;
  const time = partOf(made, "time", HTMLTimeElement);
  time.dateTime = new Date(entry.at_ms).toISOString();
  time.textContent = new Intl.DateTimeFormat(currentLanguage(), { hour: "numeric", minute: "2-digit" }).format(
    entry.at_ms,
  );
  partOf(made, "said", HTMLElement).textContent = entry.said;
  document.body.classList.remove("is-empty");
  return made;
}

/** @param {HTMLElement} element @param {Entry} entry */
function showState(element, entry) {
  const { state, problem, tries } = entry;
  if (state === "answered") return setState(element, {});
  if (state === "failed") return setState(element, { text: problem, word: "failed", act: "sendAgain" });
  // What a button or a form sent cannot be put back into the box.
  const act = entry.form || entry.aim ? "sendAgain" : "change";
  if (state === "refused") return setState(element, { text: problem, word: "refused", act });
  if (tries === 0) return setState(element, { word: "queued" });
  element.dataset["state"] = "no-signal";
  return setState(element, { word: "waiting", act: "sendNow" });
}

/**
 * The line under a message that has no answer yet. Words of the page follow its language; a text from the desk stays.
 * @param {HTMLElement} element
 * @param {{ text?: string | undefined, word?: string, act?: string }} what
 */
function setState(element, { text, word: name, act }) {
  partOf(element, "state", HTMLElement).hidden = name === undefined;
  setWord(partOf(element, "word", HTMLElement), text ? undefined : name, text);
  const button = partOf(element, "act", HTMLButtonElement);
  button.hidden = act === undefined;
  button.dataset["act"] = act ?? "";
  setWord(button, act);
}

/** @param {HTMLElement} element @param {string | undefined} name @param {string} [text] */
function setWord(element, name, text = "") {
  if (name === undefined) delete element.dataset["word"];
  else element.dataset["word"] = name;
  element.textContent = name === undefined ? text : word(name);
}

/** What each answer shows, so that an unchanged card is left alone with what is typed and unfolded in it. */
const shownHtml = new WeakMap();

/**
 * The card comes escaped from our own server.
 * @param {HTMLElement} element
 * @param {string} html
 */
function showAnswer(element, html) {
  const answer = partOf(element, "answer", HTMLElement);
  if (shownHtml.get(answer) === html) return;
  shownHtml.set(answer, html);
  answer.innerHTML = html;
}
