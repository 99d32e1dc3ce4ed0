/**
 * The element with this id; the page always has it.
 * @template {HTMLElement} T
 * @param {string} id
 * @param {new () => T} type
 * @returns {T}
 */
export function find(id, type) {
  const found = document.getElementById(id);
  if (found instanceof type) return found;
  throw new Error(`the page has no ${type.name} "${id}"`);
}

/**
 * The part of a log entry with this name.
 * @template {HTMLElement} T
 * @param {HTMLElement} entry
 * @param {string} name
 * @param {new () => T} type
 * @returns {T}
 */
export function partOf(entry, name, type) {
  const found = entry.querySelector(`[data-part="${name}"]`);
  if (found instanceof type) return found;
  throw new Error(`the entry has no ${type.name} "${name}"`);
}
