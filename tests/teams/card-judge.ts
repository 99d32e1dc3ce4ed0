import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Browser, Page } from "playwright-core";
import type { AdaptiveCard } from "../../adapters/teams/adaptive-card.ts";
import { launchBrowser } from "../support/browser.ts";

/** What the official renderer makes of a card on a screen of some width. */
export interface Judgement {
  /** What it said while reading and checking the card. */
  readonly complaints: readonly string[];
  /** Properties of the card that the renderer's own schema of that element does not have at version 1.5. */
  readonly unknownProperties: readonly string[];
  /** Texts that went through Markdown. */
  readonly markdownTexts: readonly string[];
  /** What sticks out of the card to the side, or is cut off inside of it. */
  readonly cutOff: readonly string[];
  /** The text that a person sees. */
  readonly text: string;
  /** Labels of the buttons that can be pressed. */
  readonly buttons: readonly string[];
  /** Elements that the renderer left out. */
  readonly height: number;
}

const require = createRequire(import.meta.url);
const RENDERER = readFileSync(require.resolve("adaptivecards/dist/adaptivecards.js"), "utf8");

/** Looks of Teams that matter for what fits: its font size, its margins, and six buttons in a row. */
const HOST = {
  fontFamily: "sans-serif",
  supportsInteractivity: true,
  fontSizes: { small: 12, default: 14, medium: 16, large: 18, extraLarge: 24 },
  spacing: { small: 4, default: 8, medium: 12, large: 20, extraLarge: 28, padding: 12 },
  actions: { maxActions: 6, actionsOrientation: "horizontal", actionAlignment: "left", buttonSpacing: 8 },
  containerStyles: Object.fromEntries(
    Object.entries({
      default: "#FFFFFF",
      emphasis: "#F3F2F1",
      good: "#DFF6DD",
      warning: "#FFF4CE",
      attention: "#FDE7E9",
      accent: "#E8EBFA",
    }).map(([style, backgroundColor]) => [style, { backgroundColor }]),
  ),
  factSet: {
    title: { weight: "Bolder", wrap: true, maxWidth: 150 },
    value: { weight: "Default", wrap: true },
    spacing: 12,
  },
};

/** The official adaptivecards renderer 3.0.6 in a real browser. */
export class CardJudge {
  readonly #browser: Browser;
  readonly #pages = new Map<number, Page>();

  private constructor(browser: Browser) {
    this.#browser = browser;
  }

  static async start(): Promise<CardJudge> {
    return new CardJudge(await launchBrowser());
  }

  async stop(): Promise<void> {
    await this.#browser.close();
  }

  async page(width_px: number): Promise<Page> {
    const known = this.#pages.get(width_px);
    if (known) return known;
    const page = await this.#browser.newPage({ viewport: { width: width_px, height: 800 } });
    await page.setContent(PAGE);
    await page.addScriptTag({ content: RENDERER });
    await page.addScriptTag({ content: `const HOST = ${JSON.stringify(HOST)}; ${JUDGE_SCRIPT}` });
    this.#pages.set(width_px, page);
    return page;
  }

  async judge(card: AdaptiveCard, width_px: number): Promise<Judgement> {
    const page = await this.page(width_px);
    return await page.evaluate((json) => Reflect.get(globalThis, "judgeCard")(json), JSON.parse(JSON.stringify(card)));
  }

  /** Fills the fields of a card and presses one of its buttons. @returns what is sent, or nothing when it was held back */
  async press(card: AdaptiveCard, label: string, typed: Readonly<Record<string, string>> = {}): Promise<unknown> {
    const page = await this.page(320);
    await this.judge(card, 320);
    for (const [field, text] of Object.entries(typed)) {
      // The renderer puts a star after the label of a needed field.
      const input = page.getByLabel(new RegExp(`^${field} ?\\*?$`));
      const isList = (await input.evaluate((element: { tagName: string }) => element.tagName)) === "SELECT";
      if (isList) await input.selectOption({ label: text });
      else await input.fill(text);
    }
    await page.getByRole("button", { name: label, exact: true }).click();
    return await page.evaluate(() => Reflect.get(globalThis, "submitted"));
  }
}

const PAGE = `<!doctype html><html lang="en"><head><style>
  body { margin: 0; font: 14px sans-serif; }
  #card { border: 1px solid #888; }
  .ac-pushButton { padding: 5px 10px; font: 14px sans-serif; border: 1px solid #666; border-radius: 3px; background: #fff; }
  .ac-input { box-sizing: border-box; font: 14px sans-serif; }
</style></head><body><div id="card"></div></body></html>`;

const JUDGE_SCRIPT = `
const AC = AdaptiveCards;
let markdownTexts = [];
// Whatever Markdown would take for a mark is made visible, so that it cannot pass for the text.
AC.AdaptiveCard.onProcessMarkdown = (text, result) => {
  markdownTexts.push(text);
  const span = document.createElement("span");
  span.textContent = text.replace(/[*_\\[\\]\\\\\`~#<>|&]/g, "\\u29BB");
  result.outputHtml = span.outerHTML;
  result.didProcess = true;
};
function schemaNames(instance) {
  const schema = instance.getSchema();
  const names = new Set(["type"]);
  for (let i = 0; i < schema.getCount(); i++) {
    const property = schema.getItemAt(i);
    if (property.targetVersion.compareTo(AC.Versions.v1_5) <= 0) names.add(property.name);
  }
  return names;
}
// Lists that containers read by themselves, outside of their schema.
const LISTS = { AdaptiveCard: ["body", "actions"], Container: ["items"], RichTextBlock: ["inlines"], ActionSet: ["actions"], Table: ["rows"], TableRow: ["cells"], TableCell: ["items"] };
const INSIDE = { facts: () => new AC.Fact(), choices: () => new AC.Choice(), rows: () => new AC.TableRow(), cells: () => new AC.TableCell(), inlines: () => new AC.TextRun() };
function findUnknown(json, instance, path) {
  const names = schemaNames(instance);
  for (const list of LISTS[json.type] ?? []) names.add(list);
  const found = Object.keys(json).filter((key) => !names.has(key)).map((key) => path + "." + key);
  for (const [key, value] of Object.entries(json)) {
    if (key === "data" || !Array.isArray(value)) continue;
    value.forEach((item, i) => {
      const where = path + "." + key + "[" + i + "]";
      const make = key === "columns" ? () => new AC.TableColumnDefinition() : INSIDE[key];
      const registered = AC.GlobalRegistry.elements.findByName(item.type) ?? AC.GlobalRegistry.actions.findByName(item.type);
      const inner = make ? make() : registered && new registered.objectType();
      if (inner) found.push(...findUnknown(item, inner, where));
      else found.push(where + " is a " + item.type);
    });
  }
  return found;
}
function findCutOff(root) {
  const right = root.getBoundingClientRect().right;
  const found = [];
  for (const element of root.querySelectorAll("*")) {
    const box = element.getBoundingClientRect();
    if (box.width === 0 || box.height === 0) continue;
    const name = element.className + ": " + element.textContent.slice(0, 60);
    if (box.right > right + 1) found.push("sticks out " + Math.round(box.right - right) + " px: " + name);
    const hides = getComputedStyle(element).overflowX !== "visible";
    if (hides && !["INPUT", "SELECT", "TEXTAREA"].includes(element.tagName) && element.scrollWidth > element.clientWidth + 1) found.push("cut off: " + name);
  }
  return found;
}
globalThis.judgeCard = (json) => {
  markdownTexts = [];
  globalThis.submitted = undefined;
  const host = document.getElementById("card");
  host.replaceChildren();
  const card = new AC.AdaptiveCard();
  card.hostConfig = new AC.HostConfig(HOST);
  card.onExecuteAction = (action) => { globalThis.submitted = action.data; };
  const context = new AC.SerializationContext(AC.Versions.v1_5);
  // The renderer's own pattern remembers where it stopped, and would refuse the language of every second card.
  AC.AdaptiveCard.langProperty.regEx.lastIndex = 0;
  card.parse(json, context);
  const rendered = card.render();
  if (rendered) host.append(rendered);
  const events = Array.from({ length: context.eventCount }, (_, i) => context.getEventAt(i).message);
  const complaints = [...events, ...card.validateProperties().validationEvents.map((event) => event.message)];
  if (!rendered) complaints.push("nothing was rendered");
  const { $schema, ...own } = json;
  return {
    complaints,
    unknownProperties: findUnknown(own, new AC.AdaptiveCard(), "card"),
    markdownTexts,
    cutOff: [...findCutOff(host), ...(document.documentElement.scrollWidth > innerWidth ? ["the page scrolls to the side"] : [])],
    text: host.innerText,
    buttons: [...host.querySelectorAll("button")].map((button) => button.innerText),
    height: host.getBoundingClientRect().height,
  };
};
`;
