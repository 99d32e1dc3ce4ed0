import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import type { Card } from "../../src/messages/card.ts";
import { cardFullOf, SAMPLE_CARDS } from "../support/sample-cards.ts";
import { answered, DESKTOP, PHONE, readLog, sayTyped, withBrowser } from "./browser-page.ts";
import { contrastRatio } from "./contrast.ts";
import { noteCard, ScriptedDesk } from "./scripted-desk.ts";

const usePage = withBrowser();
const CARDS: Readonly<Record<string, Card>> = {
  ...SAMPLE_CARDS,
  // The browser shapes every change of script by itself; 4,000 of them in each field of a card take it half a minute.
  "nasty-tenThousandNoSpaces": cardFullOf("&<>\u{1F525}".repeat(100)),
};
const sampleDesk = () => new ScriptedDesk((inbound) => CARDS[inbound.text] ?? noteCard(inbound.text));

/** The page as it is where files are kept; the kept ones themselves are not there, so that their words show. */
const FILES = { files: { most_bytes: 10_000_000, find: async () => undefined } };

/** Cards that a person meets; the ones made of nasty texts are looked at for their width only. */
const PLAIN = Object.keys(CARDS).filter((name) => !name.startsWith("nasty") && name !== "big");

async function sayAll(page: Page, names: readonly string[]): Promise<void> {
  for (const [index, name] of names.entries()) {
    await sayTyped(page, name);
    await answered(page, index + 1);
  }
}
async function unfoldAll(page: Page): Promise<void> {
  await page.evaluate(`for (const one of document.querySelectorAll("details")) one.open = true;`);
}

describe.each([320, 390, 768, 1280])("%i px wide", (width) => {
  test("no card makes the page wider than the screen", { timeout: 120_000 }, async () => {
    await usePage(
      sampleDesk(),
      { viewport: { width, height: 800 } },
      async ({ page }) => {
        const widest = () => page.evaluate<number>("document.documentElement.scrollWidth");
        expect(await widest()).toBe(width);
        for (const name of Object.keys(CARDS)) {
          await sayTyped(page, name);
          await answered(page, 1);
          await unfoldAll(page);
          expect([name, await widest()]).toEqual([name, width]);
          await page.click("#fresh");
        }
      },
      FILES,
    );
  });
});

test("everything to touch is at least 44 px high and wide on a phone", async () => {
  await usePage(
    sampleDesk(),
    PHONE,
    async ({ page }) => {
      const measure = () =>
        page.$$eval(
          "button, select, textarea, summary, .radio, input[type=text], input[type=date], input[type=number], a.photo, a.paper",
          (elements) =>
            elements
              .map((element) => ({ box: element.getBoundingClientRect(), name: element.textContent || element.id }))
              .filter(({ box }) => box.width > 0)
              .map(({ box, name }) => ({ name, width: box.width, height: box.height })),
        );
      const opening = await measure();
      await sayAll(page, PLAIN);
      const targets = [...opening, ...(await measure())];
      expect(targets.length).toBeGreaterThan(20);
      expect(targets.filter(({ width, height }) => width < 44 || height < 44)).toEqual([]);
    },
    FILES,
  );
});

interface SeenText {
  readonly text: string;
  readonly ink: readonly [number, number, number];
  readonly ground: readonly [number, number, number];
}
/** Every visible text with its colour and the colour behind it, as the browser works them out. */
const READ_COLOURS = `(() => {
  const parts = (colour) => colour.match(/[0-9.]+/g).map(Number);
  const ground = (element) => {
    for (let one = element; one; one = one.parentElement) {
      const [r, g, b, alpha = 1] = parts(getComputedStyle(one).backgroundColor);
      if (alpha === 1) return [r, g, b];
      if (alpha !== 0) throw new Error("half transparent ground");
    }
    return [255, 255, 255];
  };
  const seen = [];
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const element = node.parentElement;
    if (node.textContent.trim() === "" || !element.checkVisibility()) continue;
    seen.push({ text: node.textContent.trim(), ink: parts(getComputedStyle(element).color).slice(0, 3), ground: ground(element) });
  }
  return seen;
})()`;

test.each(["light", "dark"] as const)("in %s every text stands out 4.5 to 1 from what is behind it", async (scheme) => {
  await usePage(
    sampleDesk(),
    { ...DESKTOP, colorScheme: scheme },
    async ({ page }) => {
      const opening = await page.evaluate<SeenText[]>(READ_COLOURS);
      await sayAll(page, PLAIN);
      await unfoldAll(page);
      const seen = [...opening, ...(await page.evaluate<SeenText[]>(READ_COLOURS))];
      expect(seen.length).toBeGreaterThan(100);
      const [page0] = seen;
      expect(contrastRatio(page0?.ground ?? [0, 0, 0], scheme === "light" ? [255, 255, 255] : [0, 0, 0])).toBeLessThan(
        2,
      );
      const faint = seen.filter(({ ink, ground }) => contrastRatio(ink, ground) < 4.5).map(({ text }) => text);
      expect(faint).toEqual([]);
    },
    FILES,
  );
});

interface AxNode {
  readonly ignored: boolean;
  readonly role?: { readonly value?: string };
  readonly name?: { readonly value?: string };
  readonly properties?: readonly { readonly name: string; readonly value: { readonly value?: unknown } }[];
}
async function readTree(page: Page): Promise<readonly AxNode[]> {
  const session = await page.context().newCDPSession(page);
  const { nodes }: { nodes: readonly AxNode[] } = await session.send("Accessibility.getFullAXTree");
  return nodes.filter((node) => !node.ignored);
}
const NAMED = [
  "button",
  "textbox",
  "combobox",
  "radio",
  "radiogroup",
  "group",
  "region",
  "form",
  "progressbar",
  "article",
  "figure",
  "note",
  "table",
];

test("the browser finds a name for everything that is used or grouped", async () => {
  await usePage(
    sampleDesk(),
    PHONE,
    async ({ page }) => {
      await sayAll(page, PLAIN);
      await unfoldAll(page);
      const nodes = await readTree(page);
      const named = nodes.filter((node) => NAMED.includes(node.role?.value ?? ""));
      expect(new Set(named.map((node) => node.role?.value))).toEqual(new Set(NAMED));
      expect(named.filter((node) => (node.name?.value ?? "").trim() === "").map((node) => node.role?.value)).toEqual(
        [],
      );
    },
    FILES,
  );
});

test("the page has one banner, one main, one first heading, one quiet live region, and no level left out", async () => {
  await usePage(sampleDesk(), DESKTOP, async ({ page }) => {
    await sayAll(page, PLAIN);
    const nodes = await readTree(page);
    const count = (role: string) => nodes.filter((node) => node.role?.value === role).length;
    expect([count("banner"), count("main"), count("status")]).toEqual([1, 1, 1]);
    const levels = await page.$$eval("h1, h2, h3, h4, h5, h6", (headings) =>
      headings.filter((one) => one.checkVisibility()).map((one) => Number(one.localName.slice(1))),
    );
    expect(levels.filter((level) => level === 1)).toEqual([1]);
    const jumps = levels.filter((level, index) => index > 0 && level > (levels[index - 1] ?? 0) + 1);
    expect(jumps).toEqual([]);
    expect(await page.getAttribute("#announcer", "aria-live")).toBe("polite");
  });
});

test("a field that was not understood is said to be invalid, with the reason", async () => {
  await usePage(sampleDesk(), DESKTOP, async ({ page }) => {
    await sayAll(page, ["form"]);
    const field = (await readTree(page)).find((node) => node.name?.value === "Length of the run");
    const properties = Object.fromEntries((field?.properties ?? []).map((one) => [one.name, one.value.value]));
    expect(properties["invalid"]).toBe("true");
    expect(await page.getByLabel("Length of the run").getAttribute("aria-describedby")).toMatch(/-problem$/);
  });
});

test("Tab goes through everything in the order in which it stands, always in sight and ringed", async () => {
  await usePage(
    sampleDesk(),
    { viewport: { width: 390, height: 600 } },
    async ({ page }) => {
      await sayAll(page, ["answer", "question", "form"]);
      await page.evaluate(`{
      const top = document.querySelector("h1");
      top.tabIndex = -1;
      top.focus();
    }`);
      const order: number[] = [];
      for (;;) {
        await page.keyboard.press("Tab");
        const focus = await page.evaluate<{
          place: number;
          ring: number;
          top: number;
          bottom: number;
          roof: number;
          isBox: boolean;
        }>(
          `(() => {
          const one = document.activeElement;
          const ringed = one.closest(".radio") ?? one;
          const box = ringed.getBoundingClientRect();
          const composer = document.querySelector("#composer");
          return {
            place: [...document.querySelectorAll("*")].indexOf(one),
            ring: Number.parseFloat(getComputedStyle(ringed).outlineWidth),
            top: box.top,
            bottom: box.bottom,
            roof: composer.contains(one) ? innerHeight : composer.getBoundingClientRect().top,
            isBox: one.id === "message",
          };
        })()`,
        );
        order.push(focus.place);
        expect(focus.ring).toBeGreaterThanOrEqual(3);
        expect(focus.top).toBeGreaterThanOrEqual(0);
        expect(focus.bottom).toBeLessThanOrEqual(focus.roof);
        if (focus.isBox) break;
      }
      expect(order.length).toBeGreaterThan(15);
      expect(order).toEqual([...order].sort((a, b) => a - b));
    },
    FILES,
  );
});

test("the skip link leads to the message box", async () => {
  await usePage(sampleDesk(), PHONE, async ({ page }) => {
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    expect(await page.locator("#message:focus").count()).toBe(1);
  });
});

test.each([
  { wish: "reduce", moves: "none" },
  { wish: "no-preference", moves: "warm-through" },
] as const)("with motion $wish, work in progress moves: $moves", async ({ wish, moves }) => {
  const desk = new ScriptedDesk();
  desk.hold();
  await usePage(desk, { ...DESKTOP, reducedMotion: wish }, async ({ page }) => {
    await sayTyped(page, "size");
    await page.locator('.entry[data-state="working"]').waitFor();
    const name = await page.evaluate(`getComputedStyle(document.querySelector(".entry .gauge")).animationName`);
    expect(name).toBe(moves);
    desk.release();
  });
});

test("a long answer starts at its question, not at its end", async () => {
  await usePage(sampleDesk(), PHONE, async ({ page }) => {
    await sayAll(page, ["question", "answer"]);
    const top = await page.evaluate<number>(
      `document.querySelector(".entry:last-child .said").getBoundingClientRect().top`,
    );
    expect(top).toBeGreaterThanOrEqual(0);
    expect(top).toBeLessThan(100);
  });
});

test("an answer leaves somebody alone who reads further up", async () => {
  const desk = sampleDesk();
  await usePage(desk, PHONE, async ({ page }) => {
    await sayAll(page, ["answer", "form", "refusal"]);
    desk.hold();
    await sayTyped(page, "question");
    await page.locator('.entry[data-state="working"]').waitFor();
    await page.evaluate("scrollTo(0, 0)");
    desk.release();
    await answered(page, 4);
    expect(await page.evaluate("scrollY")).toBe(0);
  });
});

describe("an answer with more than a phone should show at once", () => {
  test("stands folded under its titles, which a keyboard opens", async () => {
    await usePage(sampleDesk(), PHONE, async ({ page }) => {
      await sayAll(page, ["details"]);
      const folds = page.locator(".card details.fold");
      expect((await folds.locator("summary").allInnerTexts()).map((one) => one.replace(/\s+/g, " "))).toEqual([
        "More numbers (1 row)",
        "How it was counted",
        "What to change, the cheapest first (1 row)",
        "The same unit in closed rooms (1 row)",
        "Assumed (1 row)",
      ]);
      expect(await page.getByText("Louvered door").isVisible()).toBe(true);
      expect(await page.getByText("common practice").isVisible()).toBe(false);
      await folds.last().locator("summary").focus();
      await page.keyboard.press("Enter");
      expect(await page.getByText("common practice").isVisible()).toBe(true);
    });
  });
  test("has no column out of sight on a phone, and still reads as a table", async () => {
    await usePage(sampleDesk(), PHONE, async ({ page }) => {
      await sayAll(page, ["details"]);
      await unfoldAll(page);
      const hidden = await page.$$eval(".table-frame", (frames) =>
        frames.map((frame) => frame.scrollWidth - frame.clientWidth).filter((beyond) => beyond > 0),
      );
      expect(hidden).toEqual([]);
      const wide = page.getByRole("table", { name: "What to change, the cheapest first" });
      expect(await wide.getByRole("columnheader").count()).toBe(6);
      expect(await wide.getByRole("cell").allTextContents()).toContain("Helps, not enough");
    });
  });
  test("draws bars for the eye and says the number to the ear", async () => {
    await usePage(sampleDesk(), PHONE, async ({ page }) => {
      await sayAll(page, ["details"]);
      const names = (await readTree(page)).map(({ name }) => name?.value ?? "");
      expect(names).toContain("79 %");
      expect(names.filter((name) => /[█░]/.test(name))).toEqual([]);
      const widths = await page.$$eval(".bar span", (bars) => bars.map((bar) => bar.getBoundingClientRect().width));
      expect(new Set(widths.map(Math.round)).size).toBe(1);
    });
  });
});

test("a day is picked in a calendar and answers its question", async () => {
  const desk = sampleDesk();
  await usePage(desk, PHONE, async ({ page, faults }) => {
    await sayAll(page, ["dayQuestion"]);
    await page.getByLabel("On which day?").last().fill("2026-12-24");
    await page.tap(".choice >> text=Answer");
    await answered(page, 2);
    expect(faults).toEqual([]);
  });
  expect(desk.received.at(-1)).toMatchObject({ text: "2026-12-24", aim: { walk: "w4", fact: "day" } });
});

test("of many answers one is picked from a list, by its name, and answers that question", async () => {
  const desk = sampleDesk();
  await usePage(desk, PHONE, async ({ page }) => {
    await sayAll(page, ["manyAnswers"]);
    const list = page.getByRole("combobox", { name: "Which of these comes nearest?" });
    const send = page.getByRole("button", { name: "Answer", exact: true });
    await send.click();
    expect(await list.evaluate("document.activeElement.id")).toMatch(/-choice$/);
    expect(desk.received).toHaveLength(1);
    await list.selectOption({ label: "Complaint 4, or something very much like it" });
    await send.click();
    await answered(page, 2);
    expect(desk.received[1]).toMatchObject({ text: "Complaint 4", aim: { walk: "w3", fact: "symptom" } });
    expect((await readLog(page))[1]?.said).toBe("Complaint 4, or something very much like it");
  });
});
