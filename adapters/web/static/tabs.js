import { find } from "./find.js";
import { sayWords, word, wordWith } from "./words.js";

/**
 * What the page shows: the conversation, or one of the channels. Arrow keys move between the tabs, Tab leaves them.
 * @typedef {{ id: string, panel: HTMLElement }} View
 * @typedef {object} Tabs
 * @property {(id: string) => void} show
 * @property {() => string} current
 * @property {(others: View[]) => void} offer offers the conversation and these
 * @property {(id: string, count: number) => void} mark says beside a tab how much in it was not read yet
 */

const CHAT = "chat";

/** @param {(id: string) => void} onShow @returns {Tabs} */
export function openTabs(onShow) {
  const list = find("tabs", HTMLElement);
  const chat = { id: CHAT, panel: find("panel-chat", HTMLElement) };
  /** @type {View[]} */
  let views = [chat];
  let current = CHAT;
  /** How far each view was scrolled when it was left. @type {Map<string, number>} */
  const scrolled = new Map();

  /** @param {string} id */
  const show = (id) => {
    if (id === current) return;
    scrolled.set(current, window.scrollY);
    current = id;
    for (const view of views) {
      const isShown = view.id === id;
      view.panel.hidden = !isShown;
      const tab = document.getElementById(tabId(view.id));
      tab?.setAttribute("aria-selected", String(isShown));
      tab?.setAttribute("tabindex", isShown ? "0" : "-1");
    }
    window.scrollTo(0, scrolled.get(id) ?? 0);
    onShow(id);
  };

  list.addEventListener("click", ({ target }) => {
    const view = target instanceof Element ? target.closest("button")?.dataset["view"] : undefined;
    if (view !== undefined) show(view);
  });
  list.addEventListener("keydown", (event) => {
    const at = views.findIndex(({ id }) => id === current);
    const moves = { ArrowLeft: at - 1, ArrowRight: at + 1, Home: 0, End: views.length - 1 };
    const to = Object.entries(moves).find(([key]) => key === event.key)?.[1];
    if (to === undefined) return;
    event.preventDefault();
    const next = views[(to + views.length) % views.length] ?? chat;
    show(next.id);
    document.getElementById(tabId(next.id))?.focus();
  });

  return {
    show,
    current: () => current,
    offer: (others) => {
      show(CHAT);
      views = [chat, ...others];
      scrolled.clear();
      const isUseful = others.length > 0;
      list.hidden = !isUseful;
      list.setAttribute("role", "tablist");
      document.body.classList.toggle("has-tabs", isUseful);
      chat.panel.setAttribute("role", "tabpanel");
      chat.panel.setAttribute("aria-labelledby", tabId(CHAT));
      for (const { id, panel } of others) panel.setAttribute("aria-labelledby", tabId(id));
      list.replaceChildren(...views.map((view) => makeTab(view, view.id === CHAT)));
    },
    mark: (id, count) => {
      const tab = document.getElementById(tabId(id));
      const pill = tab?.querySelector(".pill");
      if (!tab || !(pill instanceof HTMLElement)) return;
      pill.hidden = count === 0;
      pill.textContent = count === 0 ? "" : String(count);
      if (count === 0) tab.removeAttribute("aria-label");
      else tab.setAttribute("aria-label", `${word(id)}, ${sayNew(count)}`);
    },
  };
}

/** "1 new", "4 new". @param {number} count */
export const sayNew = (count) => (count === 1 ? word("newOne") : wordWith("newMany", { n: count }));

/** @param {string} id */
const tabId = (id) => `tab-${id}`;

/** @param {View} view @param {boolean} isShown */
function makeTab({ id, panel }, isShown) {
  const tab = document.createElement("button");
  tab.type = "button";
  tab.id = tabId(id);
  tab.className = "tab";
  tab.dataset["view"] = id;
  tab.setAttribute("role", "tab");
  tab.setAttribute("aria-controls", panel.id);
  tab.setAttribute("aria-selected", String(isShown));
  tab.tabIndex = isShown ? 0 : -1;
  tab.innerHTML = `<span data-word="${id}"></span><span class="pill" aria-hidden="true" hidden></span>`;
  sayWords(tab);
  return tab;
}
