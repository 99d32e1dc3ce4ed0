import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import type { Card } from "../../src/messages/card.ts";
import { answered, DESKTOP, PHONE, readLog, sayTyped, withBrowser } from "./browser-page.ts";
import { contrastRatio } from "./contrast.ts";
import { openHousePosts } from "./house-posts.ts";
import { openTestDoor, ScriptedDesk } from "./scripted-desk.ts";

const usePage = withBrowser();
const DONE: Card = {
  title: "Job 1003: complete",
  summary: "Job 1003 is complete.",
  blocks: [
    { kind: "text", tone: "plain", text: "All readings accepted." },
    { kind: "buttons", buttons: [{ label: "Open job 1003", say: "job 1003" }] },
  ],
};

/** The page looks again when it hears that signal is back; nothing waits for its clock. */
const look = (page: Page) => page.evaluate("void window.dispatchEvent(new Event('online'))");
const tab = (page: Page, name: RegExp | string) => page.getByRole("tab", { name });
const titles = (page: Page) => page.locator(".channel:visible .posts > .post > div .card-title").allTextContents();

async function person(page: Page, user: string): Promise<void> {
  await page.selectOption("#person", user);
  await page.locator(".tabs:not([hidden])").waitFor();
}

test("one tap leads to what the team posted, and one back to the conversation", async () => {
  const house = await openHousePosts();
  await house.post("p1", DONE);
  await usePage(
    new ScriptedDesk(),
    PHONE,
    async ({ page, faults }) => {
      await tab(page, "Team, 1 new").tap();
      await page.getByText("All readings accepted.").waitFor();
      expect(await page.locator("#composer").isVisible()).toBe(false);
      expect(await page.locator(".post time").textContent()).toBe("25 Nov 14:02");
      await tab(page, "Chat").tap();
      expect(await page.locator("#composer").isVisible()).toBe(true);
      expect(faults).toEqual([]);
    },
    { channels: house.channels, company: { name: "", isInvented: true, timeZone: "America/Chicago" } },
  );
});

test("who may read what shows in the tabs, and goes with the person who speaks", async () => {
  const house = await openHousePosts();
  await house.post("p1", "for managers only", { channel: "managers" });
  await usePage(
    new ScriptedDesk(),
    DESKTOP,
    async ({ page }) => {
      const tabs = () => page.getByRole("tab").allTextContents();
      await person(page, "nadia");
      await tab(page, "Managers, 1 new").click();
      await page.getByText("for managers only").waitFor();
      await page.selectOption("#person", "wilma");
      await expect.poll(tabs, { interval: 20 }).toEqual(["Chat", "Team"]);
      expect(await page.content()).not.toContain("for managers only");
    },
    { channels: house.channels },
  );
});

test("a new post arrives by itself, is counted, said once, and counts as read when it is in sight", async () => {
  const house = await openHousePosts();
  await house.post("p1", "the first");
  await usePage(
    new ScriptedDesk(),
    DESKTOP,
    async ({ page }) => {
      await tab(page, "Team, 1 new").click();
      await page.getByText("the first").waitFor();
      await tab(page, "Chat").click();
      expect(await page.title()).toBe("Oldhand");
      await house.post("p2", "the second");
      await tab(page, "Team, 1 new").waitFor();
      expect(await page.getByRole("status").textContent()).toBe("Team: the second");
      expect(await page.title()).toBe("(1) Oldhand");
      await page.reload();
      await tab(page, "Team, 1 new").click();
      const marks = page.locator(".post", { has: page.locator(".new-mark:visible") });
      expect(await marks.locator(".text").allTextContents()).toEqual(["the second"]);
      expect(await page.getByRole("status").textContent()).toBe("");
      await page.reload();
      await tab(page, "Team").click();
      expect(await marks.count()).toBe(0);
    },
    { channels: house.channels },
  );
});

test("replies are folded under the post that they follow, and the thread with the latest word stands first", async () => {
  const house = await openHousePosts();
  await house.post("p1", { ...DONE, title: "Job 1" });
  await house.post("p2", { ...DONE, title: "Job 2" });
  await house.post("p3", "the drain pan is in", { thread: "p1" });
  await house.post("p4", "and the label", { thread: "p1" });
  await usePage(
    new ScriptedDesk(),
    PHONE,
    async ({ page }) => {
      await tab(page, /Team/).tap();
      await page.getByText("2 replies").waitFor();
      expect(await titles(page)).toEqual(["Job 1", "Job 2"]);
      expect(await page.getByText("the drain pan is in").isVisible()).toBe(false);
      await page.getByText("2 replies").focus();
      await page.keyboard.press("Enter");
      expect(await page.locator(".thread .text").allTextContents()).toEqual(["the drain pan is in", "and the label"]);
    },
    { channels: house.channels },
  );
});

test("a renewed card takes its own place, keeps what was unfolded, and is marked as new", async () => {
  const rows = (value: string): Card => ({
    ...DONE,
    blocks: [{ kind: "rows", isDetail: true, heading: "Readings", rows: [{ label: "Supply", value }] }],
  });
  const house = await openHousePosts();
  await house.post("p1", rows("238 V"));
  await house.post("p2", { ...DONE, title: "Job 2" });
  await usePage(
    new ScriptedDesk(),
    DESKTOP,
    async ({ page }) => {
      await tab(page, /Team/).click();
      await page.locator("summary", { hasText: "Readings" }).click();
      await page.getByText("238 V").waitFor();
      await house.post("p3", rows("241 V"), { updates: "p1" });
      await look(page);
      await page.getByText("241 V").waitFor();
      expect(await page.getByText("238 V").count()).toBe(0);
      expect(await titles(page)).toEqual(["Job 2", "Job 1003: complete"]);
    },
    { channels: house.channels },
  );
});

test("a button of a post speaks in one's own conversation", async () => {
  const house = await openHousePosts();
  await house.post("p1", DONE);
  const desk = new ScriptedDesk();
  await usePage(
    desk,
    PHONE,
    async ({ page }) => {
      await tab(page, /Team/).tap();
      await page.getByRole("button", { name: "Open job 1003" }).tap();
      await answered(page, 1);
      expect(await page.locator("#composer").isVisible()).toBe(true);
      expect((await readLog(page))[0]?.answer).toContain("You said: job 1003");
    },
    { channels: house.channels },
  );
  expect(desk.worked.map(({ text }) => text)).toEqual(["job 1003"]);
});

test("tabs follow the arrow keys, and Tab goes on into what is shown", async () => {
  const house = await openHousePosts();
  await house.post("p1", DONE);
  await usePage(
    new ScriptedDesk(),
    DESKTOP,
    async ({ page }) => {
      await person(page, "nadia");
      await tab(page, "Chat").focus();
      await page.keyboard.press("ArrowLeft");
      expect(await page.locator(":focus").textContent()).toContain("Managers");
      await page.keyboard.press("ArrowLeft");
      const focused = page.locator(":focus");
      expect([await focused.textContent(), await focused.getAttribute("aria-selected")]).toEqual(["Team", "true"]);
      expect(await page.locator("[role=tab][tabindex='0']").count()).toBe(1);
      await page.keyboard.press("Tab");
      expect(await page.locator(":focus").getAttribute("role")).toBe("tabpanel");
      expect(await page.getByRole("tabpanel", { name: /Team/ }).count()).toBe(1);
      await page.keyboard.press("Tab");
      expect(await page.locator(":focus").textContent()).toContain("Open job 1003");
    },
    { channels: house.channels },
  );
});

test("without signal what was seen stays, says so, and goes on when the server is back", async () => {
  const house = await openHousePosts();
  await house.post("p1", "before");
  const options = { channels: house.channels };
  await usePage(
    new ScriptedDesk(),
    DESKTOP,
    async ({ page, door }) => {
      await tab(page, /Team/).click();
      await page.getByText("before").waitFor();
      await door.close();
      await look(page);
      await page.locator(".channel .notice", { hasText: "as it was last seen" }).waitFor();
      expect(await page.getByText("before").isVisible()).toBe(true);
      const port = Number(new URL(door.url).port);
      const again = await openTestDoor(new ScriptedDesk(), { ...options, settings: { host: "127.0.0.1", port } });
      try {
        await house.post("p2", "after");
        await page.getByText("after", { exact: true }).waitFor();
        await expect.poll(() => page.locator(".channel .notice:visible").count(), { interval: 20 }).toBe(0);
      } finally {
        await page.close();
        await again.close();
      }
    },
    options,
  );
});

test.each([320, 390, 1280])("%i px wide, tabs and posts keep within the screen", async (width) => {
  const house = await openHousePosts();
  for (const channel of ["team", "managers", "owner"]) await house.post(`p-${channel}`, DONE, { channel });
  await house.post("reply", { ...DONE, title: "x".repeat(400) }, { thread: "p-team" });
  house.roles.set("nadia", "owner");
  await usePage(
    new ScriptedDesk(),
    { viewport: { width, height: 700 } },
    async ({ page }) => {
      await person(page, "nadia");
      await tab(page, /Team, 2 new/).click();
      await page.evaluate(`for (const one of document.querySelectorAll("details")) one.open = true;`);
      expect(await page.evaluate("document.documentElement.scrollWidth")).toBe(width);
      for (const one of await page.getByRole("tab").all()) {
        const box = await one.boundingBox();
        expect(Math.min(box?.width ?? 0, box?.height ?? 0)).toBeGreaterThanOrEqual(44);
      }
    },
    { channels: house.channels },
  );
});

test.each(["light", "dark"] as const)("in %s tabs and marks stand out 4.5 to 1", async (colorScheme) => {
  const house = await openHousePosts();
  await house.post("p1", DONE);
  await usePage(
    new ScriptedDesk(),
    { ...PHONE, colorScheme },
    async ({ page }) => {
      await tab(page, "Team, 1 new").waitFor();
      const pill = await readColours(page, ".pill");
      await tab(page, /Team/).tap();
      for (const { ink, ground } of [
        pill,
        ...(await Promise.all([".tab", ".new-mark"].map((one) => readColours(page, one)))),
      ])
        expect(contrastRatio(ink, ground)).toBeGreaterThanOrEqual(4.5);
    },
    { channels: house.channels },
  );
});

type Rgb = readonly [number, number, number];
/** The colour of a text and of the nearest ground behind it. */
async function readColours(page: Page, selector: string): Promise<{ readonly ink: Rgb; readonly ground: Rgb }> {
  return await page.evaluate(`(() => {
    const element = document.querySelector("${selector}");
    const parts = (colour) => colour.match(/[0-9.]+/g).map(Number);
    let one = element;
    while (parts(getComputedStyle(one).backgroundColor)[3] === 0) one = one.parentElement;
    const ground = parts(getComputedStyle(one).backgroundColor).slice(0, 3);
    return { ink: parts(getComputedStyle(element).color).slice(0, 3), ground };
  })()`);
}

test("a page without channels has no tabs and asks for none", async () => {
  const asked: string[] = [];
  await usePage(new ScriptedDesk(), DESKTOP, async ({ page }) => {
    page.on("request", (request) => asked.push(new URL(request.url()).pathname));
    await page.reload();
    await sayTyped(page, "mix");
    await answered(page, 1);
    expect(await page.getByRole("tab").count()).toBe(0);
  });
  expect(asked).not.toContain("/posts");
});
