/**
 * Files that were chosen, kept in this browser until their message is answered and a while longer, so that a reload in
 * the middle of sending loses nothing. Where the browser keeps none, they are held until the page closes.
 * @typedef {ReturnType<typeof openBlobStore>} BlobStore
 */

const NAME = "oldhand";
const SHELF = "files";

/** @param {IDBFactory | undefined} factory */
export function openBlobStore(factory) {
  /** @type {Map<string, Blob>} */
  const memory = new Map();
  /** @type {Promise<IDBDatabase | undefined>} */
  const opened = factory ? open(factory) : Promise.resolve(undefined);

  /**
   * @template T
   * @param {IDBTransactionMode} mode
   * @param {(shelf: IDBObjectStore) => IDBRequest<T>} act
   * @returns {Promise<T | undefined>}
   */
  const ask = async (mode, act) => {
    const database = await opened;
    if (!database) return undefined;
    return new Promise((resolve) => {
      try {
        const transaction = database.transaction(SHELF, mode);
        const request = act(transaction.objectStore(SHELF));
        transaction.oncomplete = () => resolve(request.result);
        transaction.onerror = transaction.onabort = () => resolve(undefined);
      } catch {
        resolve(undefined);
      }
    });
  };

  return {
    /** @param {string} key @param {Blob} blob */
    put: async (key, blob) => {
      memory.set(key, blob);
      await ask("readwrite", (shelf) => shelf.put(blob, key));
    },
    /** @param {string} key @returns {Promise<Blob | undefined>} */
    get: async (key) => memory.get(key) ?? (await ask("readonly", (shelf) => shelf.get(key))),
    /** Lets go of everything but these. @param {ReadonlySet<string>} keys */
    keepOnly: async (keys) => {
      for (const key of memory.keys()) if (!keys.has(key)) memory.delete(key);
      const kept = (await ask("readonly", (shelf) => shelf.getAllKeys())) ?? [];
      for (const key of kept) if (!keys.has(String(key))) await ask("readwrite", (shelf) => shelf.delete(key));
    },
  };
}

/** @param {IDBFactory} factory @returns {Promise<IDBDatabase | undefined>} */
function open(factory) {
  return new Promise((resolve) => {
    try {
      const request = factory.open(NAME, 1);
      request.onupgradeneeded = () => request.result.createObjectStore(SHELF);
      request.onsuccess = () => resolve(request.result);
      request.onerror = request.onblocked = () => resolve(undefined);
    } catch {
      resolve(undefined);
    }
  });
}

/** The browser's database, where it has one and allows it. @returns {IDBFactory | undefined} */
export function findDatabase() {
  try {
    return window.indexedDB;
  } catch {
    return undefined;
  }
}
