import type { Browser, BrowserContextOptions, Page } from "playwright-core";
import { afterAll, beforeAll, expect } from "vitest";
import type { WebDoor, WebDoorOptions } from "../../adapters/web/open-web-door.ts";
import type { Desk } from "../../src/desk.ts";
import { launchBrowser } from "../support/browser.ts";
import { openTestDoor } from "./scripted-desk.ts";

export const PHONE: BrowserContextOptions = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true };
export const DESKTOP: BrowserContextOptions = { viewport: { width: 1280, height: 900 } };

/** What one test works with: the page in a fresh browser profile, its door, and everything that went wrong in it. */
interface OpenPage {
  readonly page: Page;
  readonly door: WebDoor;
  /** Errors of the page's scripts and refusals of its security policy. */
  readonly faults: string[];
  /** Addresses asked for that are not this door's. */
  readonly strays: string[];
}
export type UsePage = (
  desk: Desk,
  look: BrowserContextOptions,
  use: (open: OpenPage) => Promise<void>,
  options?: Partial<WebDoorOptions>,
) => Promise<void>;

/** One browser for the file; each use has a door and a profile of its own and leaves nothing behind. */
export function withBrowser(): UsePage {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launchBrowser();
  });
  afterAll(async () => {
    await browser?.close();
  });
  return async (desk, look, use, options) => {
    const door = await openTestDoor(desk, options);
    const context = await browser.newContext({ reducedMotion: "reduce", ...look });
    try {
      const page = await context.newPage();
      page.setDefaultTimeout(10_000);
      const faults: string[] = [];
      const strays: string[] = [];
      page.on("pageerror", (error) => faults.push(error.message));
      page.on("console", (line) => /Refused to|Content Security Policy/.test(line.text()) && faults.push(line.text()));
      page.on("request", (request) => request.url().startsWith(door.url) || strays.push(request.url()));
      await page.goto(door.url);
      await use({ page, door, faults, strays });
    } finally {
      await context.close();
      await door.close();
    }
  };
}

/** Waits until this many messages are answered. */
export async function answered(page: Page, count: number): Promise<void> {
  const entries = page.locator('.entry[data-state="answered"]');
  await expect.poll(() => entries.count(), { timeout: 10_000, interval: 20 }).toBe(count);
}

/** What the log shows: what was said, and the titles and texts of the answers. */
export async function readLog(page: Page): Promise<readonly { readonly said: string; readonly answer: string }[]> {
  return await page.$$eval(".entry", (entries) =>
    entries.map((entry) => ({
      said: entry.querySelector(".said")?.textContent ?? "",
      answer: (entry.querySelector(".answer")?.textContent ?? "").replace(/\s+/g, " ").trim(),
    })),
  );
}

export async function sayTyped(page: Page, text: string): Promise<void> {
  await page.fill("#message", text);
  await page.press("#message", "Enter");
}
