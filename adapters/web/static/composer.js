import { find } from "./find.js";

const DRAFT = "oldhand.draft";

/**
 * The box one types in. What stands in it survives a reload.
 * @param {import("./log-store.js").LogStore} store
 * @param {() => boolean} hasMore true: there is something to send without words
 * @param {(text: string) => void} onSend
 */
export function openComposer(store, hasMore, onSend) {
  const form = find("composer", HTMLFormElement);
  const box = find("message", HTMLTextAreaElement);
  /** @param {string} text */
  const put = (text) => {
    box.value = text;
    store.set(DRAFT, text);
    growBox(box);
  };

  put(store.get(DRAFT) ?? "");
  box.addEventListener("input", () => {
    store.set(DRAFT, box.value);
    growBox(box);
  });
  box.addEventListener("keydown", (event) => {
    // While a word is still being composed (accents, other scripts), Enter ends the word.
    if (event.key !== "Enter" || event.shiftKey || event.isComposing) return;
    event.preventDefault();
    form.requestSubmit();
  });
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    if (box.value.trim() === "" && !hasMore()) return;
    onSend(box.value.trim());
    put("");
  });
  // A page that opens with the keyboard of a phone over it hides the log.
  if (matchMedia("(hover: hover)").matches) box.focus();

  return {
    /** Puts a text back so that it can be changed; what was being typed stays below it. @param {string} text */
    restore: (text) => {
      if (text !== "") put(box.value.trim() === "" ? text : `${text}\n${box.value}`);
      box.focus();
    },
    focus: () => box.focus(),
  };
}

/** As tall as its text; the style sets the limit. @param {HTMLTextAreaElement} box */
function growBox(box) {
  box.style.height = "auto";
  box.style.height = `${box.scrollHeight + box.offsetHeight - box.clientHeight}px`;
}
