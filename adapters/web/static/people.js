import { find } from "./find.js";
import { currentLanguage, speak } from "./words.js";

const PERSON = "oldhand.person";

/**
 * Who speaks: picked from the list and remembered.
 * @param {import("./log-store.js").LogStore} store
 */
export function openPeople(store) {
  const list = find("person", HTMLSelectElement);
  const kept = store.get(PERSON);
  if ([...list.options].some((option) => option.value === kept)) list.value = kept ?? "";

  const nameRoles = () => {
    for (const option of list.options) {
      const { name, roleEn, roleEs } = option.dataset;
      option.textContent = `${name}, ${currentLanguage() === "es" ? roleEs : roleEn}`;
    }
  };
  /** @param {string} language */
  const put = (language) => {
    speak(language);
    nameRoles();
  };
  const chosen = () => list.selectedOptions[0];
  const follow = () => put(chosen()?.dataset["language"] ?? "en");
  list.addEventListener("change", () => {
    store.set(PERSON, list.value);
    follow();
    changed();
  });
  /** @type {() => void} */
  let changed = () => {};
  follow();

  return {
    /** Somebody else speaks now. @param {() => void} hear */
    onChange: (hear) => {
      changed = hear;
    },
    current: () => ({ user: list.value, name: chosen()?.dataset["name"] ?? "" }),
    /** The language of a person's latest answer is the one they read. @param {string} user @param {string} language */
    learnLanguage: (user, language) => {
      for (const option of list.options) if (option.value === user) option.dataset["language"] = language;
      follow();
    },
  };
}
