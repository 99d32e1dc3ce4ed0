/**
 * What was typed and what was answered, kept in this browser until the conversation is cleared. It is kept here and not
 * fetched, so that the last answers can be read and the next question typed where there is no signal at all, and so that
 * a phone that drops the page loses nothing.
 *
 * @typedef {{ walk: string, fact: string }} Aim
 * @typedef {{ topic: string, fields: Record<string, string> }} FilledForm
 * @typedef {{ id: string, name: string, size_B: number, isUp?: boolean }} ChosenFile `isUp`: the server has it
 * @typedef {object} Entry
 * @property {string} id the delivery id: the same entry is never answered twice
 * @property {string} conversation
 * @property {string} user
 * @property {string} name
 * @property {string} text what is sent
 * @property {string} said what is shown: the words on a button, or the text
 * @property {number} at_ms
 * @property {"waiting" | "answered" | "failed" | "refused"} state
 * @property {number} tries sendings that broke off
 * @property {Aim} [aim]
 * @property {FilledForm} [form]
 * @property {ChosenFile[]} [files] photos and papers; what they hold stands in the blob store
 * @property {string} [problem] why it was not answered
 * @property {{ html: string, language: string }} [answer]
 */

/** Where the browser keeps the entries. */
export const LOG = "oldhand.log";
const FORMS = "oldhand.forms";
const CONVERSATION = "oldhand.conversation";
const MOST_ANSWERED = 100;

/** @returns {string} */
export function newId() {
  return crypto.randomUUID();
}

/**
 * @param {Storage | undefined} storage undefined where the browser keeps nothing
 */
export function openLogStore(storage) {
  const keeper = openKeeper(storage);

  /** @returns {Entry[]} */
  const entries = () => {
    const kept = keeper.get(LOG);
    return kept === null ? [] : JSON.parse(kept);
  };
  /** @param {Entry[]} list */
  const save = (list) => {
    let kept = dropOldest(list, MOST_ANSWERED);
    while (!keeper.set(LOG, JSON.stringify(kept))) {
      const answered = countAnswered(kept);
      if (answered === 0) return keeper.stopKeeping(LOG, JSON.stringify(kept));
      kept = dropOldest(kept, Math.floor(answered / 2));
    }
  };

  return {
    entries,
    /** False: what is typed is lost when the page closes. */
    isKept: keeper.isKept,
    /** @param {Entry} entry */
    put: (entry) => {
      const list = entries();
      const at = list.findIndex((one) => one.id === entry.id);
      save(at === -1 ? [...list, entry] : list.with(at, entry));
    },
    /** @param {string} id */
    remove: (id) => save(entries().filter((one) => one.id !== id)),
    /** @returns {string} */
    conversation: () => {
      const kept = keeper.get(CONVERSATION);
      if (kept !== null) return kept;
      const id = newId();
      keeper.set(CONVERSATION, id);
      return id;
    },
    /** Starts a new conversation. What still waits to be sent stays, in its own conversation. */
    clear: () => {
      save(entries().filter((one) => one.state === "waiting"));
      keeper.set(FORMS, "{}");
      keeper.set(CONVERSATION, newId());
    },
    /**
     * What stands in the forms of an entry's answer, not sent yet; kept apart, because every key typed there is kept.
     * @param {string} id
     * @returns {FilledForm[]}
     */
    formsOf: (id) => JSON.parse(keeper.get(FORMS) ?? "{}")[id] ?? [],
    /** @param {string} id @param {FilledForm[]} forms */
    keepForms: (id, forms) => {
      keeper.set(FORMS, JSON.stringify({ ...JSON.parse(keeper.get(FORMS) ?? "{}"), [id]: forms }));
    },
    /** @param {string} name */
    get: (name) => keeper.get(name),
    /** @param {string} name @param {string} value */
    set: (name, value) => {
      keeper.set(name, value);
    },
  };
}

/** @typedef {ReturnType<typeof openLogStore>} LogStore */

/** @param {Entry[]} list */
const countAnswered = (list) => list.filter((one) => one.state === "answered").length;

/** @param {Entry[]} list @param {number} most answered entries to keep */
function dropOldest(list, most) {
  let surplus = countAnswered(list) - most;
  return list.filter((one) => one.state !== "answered" || surplus-- <= 0);
}

/**
 * Storage that may be missing, forbidden or full; what it does not take is held in memory.
 * @param {Storage | undefined} storage
 */
function openKeeper(storage) {
  /** @type {Map<string, string>} */
  const memory = new Map();
  let isKept = storage !== undefined;
  return {
    isKept: () => isKept,
    /** @param {string} name */
    get: (name) => memory.get(name) ?? storage?.getItem(name) ?? null,
    /** @param {string} name @param {string} value @returns {boolean} false when it was full */
    set: (name, value) => {
      if (storage === undefined || memory.has(name)) return memory.set(name, value).has(name);
      try {
        storage.setItem(name, value);
        return true;
      } catch {
        return false;
      }
    },
    /** @param {string} name @param {string} value */
    stopKeeping: (name, value) => {
      isKept = false;
      memory.set(name, value);
    },
  };
}

/** The browser's storage, where it has one and allows it. */
export function findStorage() {
  try {
    const storage = window.localStorage;
    storage.setItem("oldhand.probe", "1");
    storage.removeItem("oldhand.probe");
    return storage;
  } catch {
    return undefined;
  }
}
