import { find, partOf } from "./find.js";
import { sayNew } from "./tabs.js";
import { sayWords, word, wordWith } from "./words.js";

/**
 * Shows the posts of one channel: threads with the latest word first, replies folded under the post that they follow.
 * @typedef {{ id: string, follows?: string, at_ms: number, time: string, stamp: string, summary: string, html: string }} Post
 * @typedef {{ post: Post, replies: Post[] }} Thread
 */

/** @param {string} channel */
export function makeChannel(channel) {
  const panel = copyOf("channel");
  panel.id = `panel-${channel}`;
  const title = partOf(panel, "title", HTMLElement);
  title.dataset["word"] = channel;
  partOf(panel, "about", HTMLElement).dataset["word"] = `${channel}About`;
  sayWords(panel);
  find("announcer", HTMLElement).before(panel);
  /** @type {Map<string, HTMLElement>} */
  const shown = new Map();
  const list = partOf(panel, "posts", HTMLElement);

  return {
    panel,
    /** @param {boolean} isWaiting */
    setWaiting: (isWaiting) => {
      partOf(panel, "wait", HTMLElement).hidden = !isWaiting;
    },
    /** @param {readonly Post[]} posts @param {ReadonlySet<string>} unread stamps */
    show: (posts, unread) => {
      partOf(panel, "empty", HTMLElement).hidden = posts.length > 0;
      for (const [id, element] of shown)
        if (!posts.some((post) => post.id === id)) {
          element.remove();
          shown.delete(id);
        }
      const threads = gatherThreads(posts);
      inOrder(
        list,
        threads.map(({ post, replies }) => {
          const element = showPost(shown, post, unread);
          showReplies(element, shown, replies, unread);
          return element;
        }),
      );
    },
  };
}

/**
 * @param {readonly Post[]} posts
 * @returns {Thread[]}
 */
function gatherThreads(posts) {
  const byId = new Map(posts.map((post) => [post.id, post]));
  /** @param {Post} post @returns {Post} the one that began the thread, as far as it is still there */
  const rootOf = (post) => {
    let root = post;
    const passed = new Set([post.id]);
    for (let next = byId.get(root.follows ?? ""); next && !passed.has(next.id); next = byId.get(next.follows ?? "")) {
      passed.add(next.id);
      root = next;
    }
    return root;
  };
  /** @type {Map<string, Thread>} */
  const threads = new Map();
  for (const post of posts) {
    const root = rootOf(post);
    const thread = threads.get(root.id) ?? { post: root, replies: [] };
    threads.set(root.id, thread);
    if (post !== root) thread.replies.push(post);
  }
  /** @param {Thread} thread */
  const latest = ({ post, replies }) => Math.max(post.at_ms, ...replies.map(({ at_ms }) => at_ms));
  return [...threads.values()].reverse().sort((a, b) => latest(b) - latest(a));
}

/** @param {Map<string, HTMLElement>} shown @param {Post} post @param {ReadonlySet<string>} unread */
function showPost(shown, post, unread) {
  const element = shown.get(post.id) ?? copyOf("post");
  shown.set(post.id, element);
  sayWords(element);
  const time = partOf(element, "time", HTMLTimeElement);
  time.dateTime = new Date(post.at_ms).toISOString();
  time.textContent = post.time;
  partOf(element, "new", HTMLElement).hidden = !unread.has(post.stamp);
  // A reply stands in the list of its thread; where that is gone it says so.
  partOf(element, "orphan", HTMLElement).hidden = post.follows === undefined || shown.has(post.follows);
  showCard(partOf(element, "card", HTMLElement), post.html);
  return element;
}

/** @type {WeakMap<HTMLElement, string>} */
const shownHtml = new WeakMap();

/** The card comes escaped from our own server. What was unfolded in it stays so. @param {HTMLElement} place @param {string} html */
function showCard(place, html) {
  if (shownHtml.get(place) === html) return;
  shownHtml.set(place, html);
  const opened = new Set([...place.querySelectorAll("details[open] > summary")].map((one) => one.textContent));
  place.innerHTML = html;
  for (const one of place.querySelectorAll("details"))
    one.open = opened.has(one.querySelector("summary")?.textContent ?? "");
}

/** @param {HTMLElement} element @param {Map<string, HTMLElement>} shown @param {readonly Post[]} replies @param {ReadonlySet<string>} unread */
function showReplies(element, shown, replies, unread) {
  const found = element.querySelector(":scope > .replies");
  if (replies.length === 0) return found?.remove();
  const fold = found instanceof HTMLElement ? found : copyOf("replies");
  if (fold !== found) element.append(fold);
  const { length } = replies;
  const count = fold.querySelector("summary [data-part=count]");
  if (count) count.textContent = length === 1 ? word("replyOne") : wordWith("replyMany", { n: length });
  const fresh = replies.filter(({ stamp }) => unread.has(stamp)).length;
  const mark = fold.querySelector("summary [data-part=new]");
  if (mark instanceof HTMLElement) {
    mark.hidden = fresh === 0;
    mark.textContent = sayNew(fresh);
  }
  inOrder(
    partOf(fold, "posts", HTMLElement),
    replies.map((reply) => showPost(shown, reply, unread)),
  );
}

/** Moves only what is not in its place, so that the focus and the place of a reader stay. @param {HTMLElement} list @param {readonly HTMLElement[]} wanted */
function inOrder(list, wanted) {
  for (const [at, element] of wanted.entries())
    if (list.children[at] !== element) list.insertBefore(element, list.children[at] ?? null);
}

/** @param {string} id @returns {HTMLElement} */
function copyOf(id) {
  const made = find(id, HTMLTemplateElement).content.cloneNode(true);
  const first = made instanceof DocumentFragment ? made.firstElementChild : null;
  if (first instanceof HTMLElement) return first;
  throw new Error(`the template "${id}" is empty`);
}
