import { backOff_ms } from "./back-off.js";
import { find } from "./find.js";
import { makeChannel } from "./posts-view.js";
import { openSeenPosts } from "./seen-posts.js";
import { openTabs, sayNew } from "./tabs.js";
import { word } from "./words.js";

/**
 * The channels of the house, looked at again and again while the page is open.
 * @typedef {import("./posts-view.js").Post} Post
 * @typedef {Omit<Post, "html"> & { html?: string }} SentPost
 * @typedef {{ id: string, posts: SentPost[] }} SentChannel
 * @typedef {{ tag: string, channels: SentChannel[] }} SentPosts
 */

/** How often it is looked while the page is in sight, and while it is not [ms]. */
const EVERY_ms = 5_000;
const EVERY_UNSEEN_ms = 60_000;
/** After an answer, what it posted is there about then [ms]. */
const SOON_ms = 1_500;
const PATIENCE_ms = 15_000;
/** One look that fails is no news yet. */
const FAILS_TOLD = 2;

/**
 * @param {import("./log-store.js").LogStore} store
 * @param {() => { user: string }} current who speaks
 * @param {(text: string) => void} announce
 */
export function openPosts(store, current, announce) {
  const address = find("desk", HTMLElement).dataset["posts"];
  const nothing = () => {};
  if (address === undefined) return { showChat: nothing, lookSoon: nothing, lookNow: nothing, changePerson: nothing };

  const seen = openSeenPosts(store);
  const state = emptyState(current().user);
  /** @type {import("./tabs.js").Tabs} */
  const tabs = openTabs((id) => show(id));

  /** Shows a channel as it is now; what is in sight counts as read, and stays marked as new until it is left. @param {string} id */
  const show = (id) => {
    for (const channel of state.channels) {
      const isShown = channel.id === id && document.visibilityState === "visible";
      const read = seen.of(state.user, channel.id);
      const unread = channel.posts.filter(({ stamp }) => !read.has(stamp)).map(({ stamp }) => stamp);
      channel.marked = new Set(isShown ? [...channel.marked, ...unread] : unread);
      const stamps = channel.posts.map(({ stamp }) => stamp);
      if (isShown && unread.length > 0) seen.keep(state.user, channel.id, stamps);
      channel.view.show(channel.posts, channel.marked);
      channel.unread = isShown ? 0 : unread.length;
      tabs.mark(channel.id, channel.unread);
    }
    const total = state.channels.reduce((sum, { unread }) => sum + unread, 0);
    document.title = total === 0 ? "Oldhand" : `(${total}) Oldhand`;
  };

  /** @param {SentPosts} sent */
  const take = (sent) => {
    const isFirst = state.tag === "";
    const isSame = String(state.channels.map(({ id }) => id)) === String(sent.channels.map(({ id }) => id));
    if (!isSame) offerChannels(state, sent, tabs);
    const known = new Set(state.channels.flatMap(({ posts }) => posts.map(({ stamp }) => stamp)));
    state.tag = sent.tag;
    for (const { posts } of sent.channels)
      for (const { stamp, html } of posts) if (html !== undefined) state.html.set(stamp, html);
    for (const channel of state.channels) {
      const found = sent.channels.find(({ id }) => id === channel.id);
      channel.posts = (found?.posts ?? []).map((post) => ({ ...post, html: state.html.get(post.stamp) ?? "" }));
    }
    const kept = new Set(state.channels.flatMap(({ posts }) => posts.map(({ stamp }) => stamp)));
    for (const stamp of state.html.keys()) if (!kept.has(stamp)) state.html.delete(stamp);
    show(tabs.current());
    if (!isFirst) announceNews(state, known, announce);
  };

  const look = async () => {
    clearTimeout(state.timer);
    if (state.isLooking) return;
    state.isLooking = true;
    const { user } = current();
    try {
      const sent = await ask(address, user, state);
      if (user === current().user && sent) take(sent);
      state.fails = 0;
    } catch {
      state.fails += 1;
    } finally {
      state.isLooking = false;
    }
    for (const { view } of state.channels) view.setWaiting(state.fails >= FAILS_TOLD);
    const every_ms = document.visibilityState === "visible" ? EVERY_ms : EVERY_UNSEEN_ms;
    const wait_ms = state.fails > 0 ? backOff_ms(state.fails, Math.random()) : every_ms;
    state.timer = setTimeout(look, user === current().user ? wait_ms : 0);
  };
  void look();

  return {
    showChat: () => tabs.show("chat"),
    /** Something was answered, which may have been posted too. */
    lookSoon: () => {
      clearTimeout(state.timer);
      state.timer = setTimeout(look, SOON_ms);
    },
    lookNow: () => {
      if (document.visibilityState === "visible") show(tabs.current());
      void look();
    },
    /** Somebody else speaks: nothing that was for the one before stays on the page. */
    changePerson: () => {
      for (const { view } of state.channels) view.panel.remove();
      clearTimeout(state.timer);
      const { isLooking } = state;
      Object.assign(state, emptyState(current().user), { isLooking });
      tabs.offer([]);
      document.title = "Oldhand";
      void look();
    },
  };
}

/**
 * @typedef {object} ShownChannel
 * @property {string} id
 * @property {ReturnType<typeof makeChannel>} view
 * @property {Post[]} posts
 * @property {Set<string>} marked stamps that are marked as new
 * @property {number} unread
 *
 * @typedef {ReturnType<typeof emptyState>} State
 */

/** @param {string} user */
const emptyState = (user) => ({
  user,
  tag: "",
  /** Cards by their stamps. @type {Map<string, string>} */
  html: new Map(),
  /** @type {ShownChannel[]} */
  channels: [],
  isLooking: false,
  fails: 0,
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  timer: undefined,
});

/** @param {State} state @param {SentPosts} sent @param {import("./tabs.js").Tabs} tabs */
function offerChannels(state, sent, tabs) {
  for (const { view } of state.channels) view.panel.remove();
  state.channels = sent.channels.map(({ id }) => ({
    id,
    view: makeChannel(id),
    posts: [],
    marked: new Set(),
    unread: 0,
  }));
  tabs.offer(state.channels.map(({ id, view }) => ({ id, panel: view.panel })));
}

/**
 * @param {string} address @param {string} user @param {State} state
 * @returns {Promise<SentPosts | undefined>} nothing when all is as it was
 */
async function ask(address, user, { tag, html }) {
  const have = [...html.keys()].join(",");
  const response = await fetch(`${address}?${new URLSearchParams({ user, tag, have })}`, {
    credentials: "omit",
    cache: "no-store",
    signal: AbortSignal.timeout(PATIENCE_ms),
  });
  if (response.status === 204) return undefined;
  if (!response.ok) throw new Error(`the posts came with ${response.status}`);
  return await response.json();
}

/** One sentence for all that came, to those who listen. @param {State} state @param {ReadonlySet<string>} known @param {(text: string) => void} announce */
function announceNews({ channels }, known, announce) {
  const told = channels.flatMap(({ id, posts }) => {
    const fresh = posts.filter(({ stamp }) => !known.has(stamp));
    const [only] = fresh;
    if (only === undefined) return [];
    return [`${word(id)}: ${fresh.length === 1 ? only.summary : sayNew(fresh.length)}`];
  });
  if (told.length > 0) announce(told.join(" "));
}
