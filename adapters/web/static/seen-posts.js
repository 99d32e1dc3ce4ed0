/**
 * What each person has read of the channels in this browser. A post whose card was renewed counts as unread again.
 * @typedef {Record<string, Record<string, string[]>>} Seen
 */

const SEEN = "oldhand.seen";

/** @param {import("./log-store.js").LogStore} store */
export function openSeenPosts(store) {
  /** @returns {Seen} */
  const all = () => JSON.parse(store.get(SEEN) ?? "{}");
  return {
    /** @param {string} user @param {string} channel @returns {ReadonlySet<string>} stamps */
    of: (user, channel) => new Set(all()[user]?.[channel] ?? []),
    /** Everything that is there now was read. @param {string} user @param {string} channel @param {string[]} stamps */
    keep: (user, channel, stamps) => {
      const seen = all();
      store.set(SEEN, JSON.stringify({ ...seen, [user]: { ...seen[user], [channel]: stamps } }));
    },
  };
}
