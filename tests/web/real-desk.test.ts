import { randomInt, randomUUID } from "node:crypto";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { loadBooks } from "../../adapters/books/load-books.ts";
import { openStore } from "../../adapters/database/open-store.ts";
import { createFileStore } from "../../adapters/files/file-store.ts";
import { loadLibrary } from "../../adapters/library/load-library.ts";
import type { FindLanguage } from "../../adapters/web/web-people.ts";
import { createInlineRunner } from "../../adapters/workers/inline-runner.ts";
import { createDesk, type Desk } from "../../src/desk.ts";
import type { Store } from "../../src/ports/store.ts";
import { jpegWith } from "../support/picture-files.ts";
import { answered, DESKTOP, PHONE, readLog, sayTyped, withBrowser } from "./browser-page.ts";
import { openTestDoor } from "./scripted-desk.ts";

const usePage = withBrowser();
let folder: string;
let store: Store;
let desk: Desk;
/** A desk as after a restart: it remembers nothing but what the store holds. */
let openDesk: () => Desk;
const people = [
  { user: "ebbe", name: "Ebbe Tarnowell", role: "technician" },
  { user: "marisol", name: "Marisol Vantreaux", role: "technician" },
] as const;
const languageOf: FindLanguage = async (caller) => {
  const workspace = await store.openWorkspace(caller);
  return (await workspace.findPerson(caller)).language;
};

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "oldhand-web-"));
  const books = await loadBooks(new URL("../../seeds", import.meta.url).pathname);
  const library = await loadLibrary();
  store = await openStore({ path: join(folder, "test.sqlite"), books, ownOrganisations: [] });
  openDesk = () =>
    createDesk({
      library,
      books,
      store,
      runner: createInlineRunner(library, books),
      clock: { now_ms: Date.now },
      newId: randomUUID,
      newCode: () => String(randomInt(1_000_000)).padStart(6, "0"),
      faults: { report: ({ error }) => expect.fail(String(error)) },
      files: createFileStore({ folder: join(folder, "files"), keepsPlace: false }),
    });
  desk = openDesk();
});
afterAll(async () => {
  await store?.close();
  await rm(folder, { recursive: true, force: true });
});

test("a question with all its figures is answered with the number first, on a phone", async () => {
  await usePage(
    desk,
    PHONE,
    async ({ page, faults, strays }) => {
      await page.tap(".opening button >> nth=1");
      await answered(page, 1);
      const card = page.locator(".card");
      expect(await card.getAttribute("lang")).toBe("en");
      // Energy balance of mixing: (120 - 50) / (135 - 50) = 82.4 % hot.
      expect(await card.textContent()).toMatch(/82(\.\d)?\s?%/);
      expect(await card.locator(".headline").count()).toBe(1);
      expect([faults, strays]).toEqual([[], []]);
    },
    { people, languageOf },
  );
});

test("a walk by keyboard alone takes the first answer offered to each question and ends in an answer", async () => {
  await usePage(
    desk,
    DESKTOP,
    async ({ page }) => {
      await page.keyboard.type("expansion");
      await page.keyboard.press("Enter");
      await answered(page, 1);
      const last = page.locator(".entry").last();
      let questions = 0;
      while ((await last.locator(".verdict").count()) === 0) {
        questions += 1;
        expect(questions).toBeLessThan(10);
        const offered = await last.locator(".card button").count();
        await page.focus("#message");
        for (let i = 0; i < offered; i++) await page.keyboard.press("Shift+Tab");
        await page.keyboard.press("Enter");
        await answered(page, questions + 1);
      }
      expect(questions).toBeGreaterThan(1);
      expect(await last.locator(".headline").textContent()).toMatch(/\d/);
    },
    { people, languageOf },
  );
});

test("a walk goes on after a reload, and back returns to the question before", async () => {
  await usePage(
    desk,
    PHONE,
    async ({ page }) => {
      await sayTyped(page, "expansion");
      await answered(page, 1);
      const first = await page.locator(".question-prompt").textContent();
      await page.tap(".question button >> nth=0");
      await answered(page, 2);
      await page.reload();
      await answered(page, 2);
      await sayTyped(page, "back");
      await answered(page, 3);
      expect(await page.locator(".question-prompt").last().textContent()).toBe(first);
    },
    { people, languageOf },
  );
});

test("a form is filled, told what is wrong and answered", async () => {
  await usePage(
    desk,
    DESKTOP,
    async ({ page }) => {
      await sayTyped(page, "form mix");
      await answered(page, 1);
      const field = page.locator("form.facts input[type=text]").first();
      for (const needed of await page.locator("form.facts input:required").all()) await needed.fill("110");
      await field.fill("apples");
      await page.locator("form.facts button[type=submit]").click();
      await answered(page, 2);
      expect(await page.locator("[aria-invalid=true]:focus").inputValue()).toBe("apples");
      await page.locator("[aria-invalid=true]:focus").fill("135");
      await page.keyboard.press("Enter");
      await answered(page, 3);
      expect(await page.locator(".entry").last().locator(".headline").count()).toBe(1);
    },
    { people, languageOf },
  );
});

test("a Spanish reader has the page and the answers in Spanish, and a change of language changes both", async () => {
  await usePage(
    desk,
    PHONE,
    async ({ page }) => {
      await page.selectOption("#person", "marisol");
      expect(await page.getAttribute("html", "lang")).toBe("es");
      expect(await page.locator(".examples:visible").getAttribute("lang")).toBe("es");
      await sayTyped(page, "mix 135 to 120 with 50 in");
      await answered(page, 1);
      expect(await page.locator(".card").getAttribute("lang")).toBe("es");
      await sayTyped(page, "english");
      await answered(page, 2);
      expect(await page.locator(".card").last().getAttribute("lang")).toBe("en");
      expect(await page.getAttribute("html", "lang")).toBe("en");
    },
    { people, languageOf },
  );
});

test("the same delivery twice is one exchange in the store and one card in the page", async () => {
  await usePage(
    desk,
    DESKTOP,
    async ({ page }) => {
      await page.route(
        "**/messages",
        async (route) => {
          await route.fetch();
          await route.abort("connectionreset");
        },
        { times: 1 },
      );
      await sayTyped(page, "circuit 4500W at 208V 60 ft");
      await answered(page, 1);
      const [{ answer = "" } = {}] = await readLog(page);
      // Power goes with the square of the voltage: 4500 W x (208 / 240)^2 = 3380 W.
      expect(answer).toContain("3,380 W");
      await sayTyped(page, "undo");
      await answered(page, 2);
      await sayTyped(page, "undo");
      await answered(page, 3);
      const [, first, second] = await readLog(page);
      expect(first?.answer).not.toBe(second?.answer);
    },
    { people, languageOf },
  );
});

test("a server that restarts in the middle of a walk is found again, and the walk goes on where it was", async () => {
  await usePage(
    desk,
    PHONE,
    async ({ page, door }) => {
      await sayTyped(page, "expansion");
      await answered(page, 1);
      await page.locator(".entry").last().locator(".question button").first().tap();
      await answered(page, 2);
      const asked = await page.locator(".question-prompt").allTextContents();
      await door.close();
      await page.locator(".entry").last().locator(".question button").first().tap();
      await page.locator('.entry[data-state="no-signal"]').waitFor();
      const port = Number(new URL(door.url).port);
      const again = await openTestDoor(openDesk(), { people, languageOf, settings: { host: "127.0.0.1", port } });
      try {
        await answered(page, 3);
        const last = page.locator(".entry").last();
        expect(asked).not.toContain(await last.locator(".question-prompt").textContent());
      } finally {
        await page.close();
        await again.close();
      }
    },
    { people, languageOf },
  );
});

/** What a browser sends and hears, without its page. */
async function send(url: string, message: object): Promise<{ readonly html: string; readonly isRepeat: boolean }> {
  const response = await fetch(`${url}messages`, {
    method: "POST",
    headers: { "content-type": "application/json", origin: url.replace(/\/$/, "") },
    body: JSON.stringify({ user: "ebbe", ...message }),
  });
  return JSON.parse((await response.text()).trimEnd().split("\n").at(-1) ?? "");
}
const promptOf = (html: string) => /question-prompt[^>]*>([^<]*)/.exec(html)?.[1];
function firstAnswer(html: string): { readonly text: string; readonly aim: object } {
  const [, text = "", walk, fact] = /data-say="([^"]*)" data-walk="([^"]*)" data-fact="([^"]*)"/.exec(html) ?? [];
  return { text, aim: { walk, fact } };
}

test("deliveries that come twice, late and out of order, also after a restart, leave the walk where it is", async () => {
  const conversation = randomUUID();
  const first = { delivery: randomUUID(), conversation, text: "expansion" };
  const door = await openTestDoor(desk, { people, languageOf });
  const start = await send(door.url, first);
  const second = { delivery: randomUUID(), conversation, ...firstAnswer(start.html) };
  const twice = await Promise.all([send(door.url, second), send(door.url, second)]);
  expect(new Set(twice.map(({ html }) => html)).size).toBe(1);
  const [asked] = twice;
  // The first message comes once more, behind the one that followed it.
  expect(await send(door.url, first)).toMatchObject({ html: start.html, isRepeat: true });
  await door.close();

  const again = await openTestDoor(openDesk(), { people, languageOf });
  try {
    expect(await send(again.url, second)).toMatchObject({ html: asked?.html, isRepeat: true });
    const third = await send(again.url, { delivery: randomUUID(), conversation, ...firstAnswer(asked?.html ?? "") });
    expect(third.isRepeat).toBe(false);
    const prompts = [start.html, asked?.html ?? "", third.html].map(promptOf);
    expect(prompts).not.toContain(undefined);
    expect(new Set(prompts).size).toBe(3);
  } finally {
    await again.close();
  }
});

test("a photo for the open job is in the job once, however often its message comes", async () => {
  const files = { most_bytes: 10_000_000, find: async () => undefined };
  await usePage(
    desk,
    PHONE,
    async ({ page }) => {
      await sayTyped(page, "job 1003");
      await answered(page, 1);
      await page.route(
        "**/messages",
        async (route) => {
          await route.fetch();
          await route.abort("connectionreset");
        },
        { times: 1 },
      );
      await page.setInputFiles("#pick-papers", [
        { name: "panel.jpg", mimeType: "image/jpeg", buffer: jpegWith([Buffer.from([0xff, 0xfe, 0, 3, 7])]) },
      ]);
      await page.locator("#tray-files .chip").waitFor();
      await sayTyped(page, "the panel before we opened it");
      await answered(page, 2);
      expect((await readLog(page))[1]?.answer).toContain("panel.jpg");
      const caller = { door: "web", organisation: "local", user: "ebbe", name: "Ebbe Tarnowell" } as const;
      const history = await (await store.openWorkspace(caller)).jobHistory("1003");
      const kept = history.flatMap(({ change }) => (change.kind === "file" ? [change.file.name] : []));
      expect(kept).toEqual(["panel.jpg"]);
    },
    { people, languageOf, files },
  );
});
