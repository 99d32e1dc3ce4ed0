/**
 * The forms inside cards.
 * @typedef {import("./log-store.js").FilledForm} FilledForm
 */

/**
 * What stands in each field of a form; a choice not made is an empty text.
 * @param {HTMLFormElement} form
 * @returns {FilledForm}
 */
export function readForm(form) {
  /** @type {Record<string, string>} */
  const fields = {};
  for (const field of fieldsOf(form)) {
    const isUnchosen = field instanceof HTMLInputElement && field.type === "radio" && !field.checked;
    fields[field.name] = isUnchosen ? (fields[field.name] ?? "") : field.value;
  }
  return { topic: form.dataset["topic"] ?? "", fields };
}

/**
 * Puts back what was typed into the forms of a card before the page was closed.
 * @param {HTMLElement} card
 * @param {readonly FilledForm[]} typed
 */
export function fillForms(card, typed) {
  for (const form of card.querySelectorAll("form")) {
    const kept = typed.find((one) => one.topic === form.dataset["topic"]);
    for (const field of kept ? fieldsOf(form) : []) {
      const value = kept?.fields[field.name] ?? "";
      if (field instanceof HTMLInputElement && field.type === "radio") field.checked = field.value === value;
      else field.value = value;
    }
  }
}

/**
 * The form in words, for the log: its title and each field that was filled.
 * @param {HTMLFormElement} form
 * @returns {string}
 */
export function describeForm(form) {
  const { fields } = readForm(form);
  const lines = Object.entries(fields).flatMap(([name, value]) =>
    value === "" ? [] : [`${labelOf(form, name)}: ${wordOf(form, name, value)}`],
  );
  return [form.querySelector("h3")?.textContent ?? "", ...lines].join("\n");
}

/** @param {HTMLFormElement} form */
function fieldsOf(form) {
  return [...form.elements].filter(
    (one) => one instanceof HTMLInputElement || one instanceof HTMLSelectElement || one instanceof HTMLTextAreaElement,
  );
}

/** @param {HTMLFormElement} form @param {string} name */
function labelOf(form, name) {
  const field = fieldsOf(form).find((one) => one.name === name);
  const frame = field?.closest(".field");
  return frame?.querySelector("legend > span, label > span")?.textContent ?? name;
}

/** The label of a chosen option, or what was typed. @param {HTMLFormElement} form @param {string} name @param {string} value */
function wordOf(form, name, value) {
  const field = fieldsOf(form).find(
    (one) => one.name === name && (!("checked" in one) || one.type !== "radio" || one.checked),
  );
  if (field instanceof HTMLSelectElement) return field.selectedOptions[0]?.textContent ?? value;
  if (field instanceof HTMLInputElement && field.type === "radio") return field.labels?.[0]?.textContent ?? value;
  return value;
}
