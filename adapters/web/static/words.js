/**
 * The page's own words in the language of the person who speaks.
 * @typedef {Record<string, string>} Words
 */

/** @type {Record<string, Words>} */
const ALL = JSON.parse(document.body.dataset["words"] ?? "{}");

/** @param {string} name @returns {string} */
export function word(name) {
  return (ALL[currentLanguage()] ?? ALL["en"])?.[name] ?? "";
}

/**
 * A sentence with what belongs in its places, such as `{n}`.
 * @param {string} name @param {Record<string, string | number>} values @returns {string}
 */
export function wordWith(name, values) {
  return word(name).replace(/\{(\w+)\}/g, (place, key) => String(values[key] ?? place));
}

/** @returns {string} */
export function currentLanguage() {
  return document.documentElement.lang;
}

/**
 * Puts the page into a language. The cards keep the language in which they were answered.
 * @param {string} language
 */
export function speak(language) {
  if (ALL[language] === undefined) return;
  document.documentElement.lang = language;
  sayWords(document);
}

/**
 * Fills in the words of a part of the page.
 * @param {ParentNode} inside
 */
export function sayWords(inside) {
  for (const part of inside.querySelectorAll("[data-word]"))
    if (part instanceof HTMLElement) part.textContent = word(part.dataset["word"] ?? "");
  for (const part of inside.querySelectorAll("[data-word-label]"))
    if (part instanceof HTMLElement) part.setAttribute("aria-label", word(part.dataset["wordLabel"] ?? ""));
}
