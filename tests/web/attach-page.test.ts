import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import type { WebDoorOptions } from "../../adapters/web/open-web-door.ts";
import { jpegWith } from "../support/picture-files.ts";
import { answered, DESKTOP, PHONE, sayTyped, withBrowser } from "./browser-page.ts";
import { openTestDoor, ScriptedDesk } from "./scripted-desk.ts";

const usePage = withBrowser();
const WAITING = "Waiting for signal, will send again.";
const FILES: Partial<WebDoorOptions> = { files: { most_bytes: 2000, find: async () => undefined } };
const JPEG = jpegWith([]);
const PHOTO = { name: "panel.jpg", mimeType: "image/jpeg", buffer: JPEG };
const PAPER = { name: "permit.pdf", mimeType: "application/pdf", buffer: Buffer.from("%PDF-1.7 permit") };

async function choose(page: Page, ...files: readonly (typeof PHOTO)[]): Promise<void> {
  const before = await page.locator("#tray-files .chip").count();
  await page.setInputFiles("#pick-papers", [...files]);
  await page
    .locator("#tray-files .chip")
    .nth(before + files.length - 1)
    .waitFor();
}
async function heard(desk: ScriptedDesk, at = 0): Promise<readonly (readonly [string, string])[]> {
  const files = desk.worked[at]?.files ?? [];
  return await Promise.all(
    files.map(async ({ name, read }) => [name, Buffer.from(await read()).toString("latin1")] as const),
  );
}

test("photos and papers go with the words, in the order in which they were chosen", async () => {
  const desk = new ScriptedDesk();
  await usePage(
    desk,
    PHONE,
    async ({ page, faults, strays }) => {
      await choose(page, PHOTO, PAPER);
      expect(await page.locator("#tray-total").textContent()).toBe(
        `To send: 2 files, ${JPEG.length + PAPER.buffer.length} B`,
      );
      await sayTyped(page, "before we opened it");
      await answered(page, 1);
      expect(await page.locator("#tray").isVisible()).toBe(false);
      expect(await page.locator(".entry .sent-files .chip-name bdi").allTextContents()).toEqual([
        "panel.jpg",
        "permit.pdf",
      ]);
      expect(await heard(desk)).toEqual([
        ["panel.jpg", JPEG.toString("latin1")],
        ["permit.pdf", "%PDF-1.7 permit"],
      ]);
      expect([faults, strays.filter((url) => !url.startsWith("blob:"))]).toEqual([[], []]);
    },
    FILES,
  );
  expect(desk.worked.map(({ text }) => text)).toEqual(["before we opened it"]);
});

test("a photo needs no words", async () => {
  const desk = new ScriptedDesk();
  await usePage(
    desk,
    PHONE,
    async ({ page }) => {
      await choose(page, PHOTO);
      await page.tap("#composer button[type=submit]");
      await answered(page, 1);
      expect(await page.locator(".said").textContent()).toBe("Files, no words");
    },
    FILES,
  );
  expect(desk.worked.map(({ text, files }) => [text, files?.length])).toEqual([["", 1]]);
});

/** What the desk would refuse is told before anything is sent; see `adapters/files/sniff-type.ts`. */
const EARLY = [
  { name: "a HEIC picture", file: { name: "IMG_1.jpg", buffer: Buffer.from("....ftypheic....") }, says: /HEIC/ },
  { name: "a file called HEIC", file: { name: "IMG_1.HEIC", buffer: Buffer.from("something") }, says: /HEIC/ },
  { name: "a text called a picture", file: { name: "a.jpg", buffer: Buffer.from("hello hello") }, says: /JPEG, PNG/ },
  { name: "one that is empty", file: { name: "a.jpg", buffer: Buffer.alloc(0) }, says: /empty/ },
  {
    name: "one that is too large",
    file: { name: "a.pdf", buffer: Buffer.concat([PAPER.buffer, Buffer.alloc(3000)]) },
    says: /a\.pdf is 3 kB; the most is 2 kB/,
  },
];
test.each(EARLY)("$name is refused at once, by name and with what to do", async ({ file, says }) => {
  const desk = new ScriptedDesk();
  await usePage(
    desk,
    DESKTOP,
    async ({ page }) => {
      await page.setInputFiles("#pick-papers", [{ ...file, mimeType: "image/jpeg" }]);
      await page.locator("#tray-problem", { hasText: says }).waitFor();
      await expect.poll(() => page.getByRole("status").textContent(), { interval: 20 }).toMatch(says);
      expect(await page.locator("#tray-files .chip").count()).toBe(0);
    },
    FILES,
  );
  expect(desk.received).toEqual([]);
});

test("of eleven photos ten are taken, and it says what to do with the rest", async () => {
  await usePage(
    new ScriptedDesk(),
    DESKTOP,
    async ({ page }) => {
      await page.setInputFiles(
        "#pick-papers",
        Array.from({ length: 11 }, (_, at) => ({ ...PHOTO, name: `${at}.jpg` })),
      );
      await page.locator("#tray-problem", { hasText: "A message takes 10 files" }).waitFor();
      expect(await page.locator("#tray-files .chip").count()).toBe(10);
    },
    FILES,
  );
});

test("what was chosen survives a reload, and one can be left out by its name", async () => {
  const desk = new ScriptedDesk();
  await usePage(
    desk,
    DESKTOP,
    async ({ page }) => {
      await choose(page, PHOTO, PAPER);
      await page.reload();
      await page.locator("#tray-files .chip").nth(1).waitFor();
      await page.getByRole("button", { name: "Leave out panel.jpg" }).press("Enter");
      await sayTyped(page, "the permit");
      await answered(page, 1);
      expect((await heard(desk)).map(([name]) => name)).toEqual(["permit.pdf"]);
    },
    FILES,
  );
});

test("in bad signal each file is sent again under its own id until it is there, and the message once", async () => {
  const desk = new ScriptedDesk();
  const tried: string[] = [];
  await usePage(
    desk,
    PHONE,
    async ({ page }) => {
      await page.route("**/uploads/**", async (route) => {
        tried.push(new URL(route.request().url()).pathname);
        await (tried.length === 2 ? route.abort("connectionreset") : route.continue());
      });
      await choose(page, PHOTO, PAPER);
      await sayTyped(page, "both");
      await page.locator(".state", { hasText: WAITING }).waitFor();
      await page.tap("text=Send now");
      await answered(page, 1);
      expect(await heard(desk)).toHaveLength(2);
    },
    FILES,
  );
  // The first went through and is not sent again.
  expect(tried).toHaveLength(3);
  expect(tried[1]).toBe(tried[2]);
  expect(desk.received).toHaveLength(1);
});

test("a reload in the middle of sending loses neither the words nor the photo", async () => {
  const desk = new ScriptedDesk();
  await usePage(
    desk,
    PHONE,
    async ({ page }) => {
      await page.route("**/uploads/**", (route) => route.abort("internetdisconnected"));
      await choose(page, PHOTO);
      await sayTyped(page, "the panel");
      await page.locator(".state", { hasText: WAITING }).waitFor();
      await page.unroute("**/uploads/**");
      await page.reload();
      await answered(page, 1);
      expect(await heard(desk)).toEqual([["panel.jpg", JPEG.toString("latin1")]]);
    },
    FILES,
  );
});

test("a server that restarts before the message comes is sent the photo again, by itself", async () => {
  const desk = new ScriptedDesk();
  await usePage(
    desk,
    DESKTOP,
    async ({ page, door }) => {
      await page.route("**/messages", (route) => route.abort("connectionreset"), { times: 1 });
      await choose(page, PHOTO);
      await sayTyped(page, "the panel");
      await page.locator(".state", { hasText: WAITING }).waitFor();
      await door.close();
      const port = Number(new URL(door.url).port);
      const again = await openTestDoor(desk, { ...FILES, settings: { host: "127.0.0.1", port } });
      try {
        await answered(page, 1);
        expect(await heard(desk)).toEqual([["panel.jpg", JPEG.toString("latin1")]]);
      } finally {
        await page.close();
        await again.close();
      }
    },
    FILES,
  );
  expect(desk.received).toHaveLength(1);
});

test("a photo whose bytes the browser lost is not passed over in silence", async () => {
  const desk = new ScriptedDesk();
  await usePage(
    desk,
    DESKTOP,
    async ({ page }) => {
      await page.route("**/uploads/**", (route) => route.abort());
      await choose(page, PHOTO);
      await sayTyped(page, "the panel");
      await page.locator(".state", { hasText: WAITING }).waitFor();
      await page.evaluate(`new Promise((done) => {
        const opened = indexedDB.open("oldhand");
        opened.onsuccess = () => {
          const change = opened.result.transaction("files", "readwrite");
          change.objectStore("files").clear();
          change.oncomplete = done;
        };
      })`);
      await page.reload();
      await page.locator(".state", { hasText: "choose them again" }).waitFor();
      await page.click("text=Change it");
      expect(await page.inputValue("#message")).toBe("the panel");
    },
    FILES,
  );
  expect(desk.received).toEqual([]);
});

test("files of an answered message can be used again, as when no job was open", async () => {
  const desk = new ScriptedDesk();
  await usePage(
    desk,
    PHONE,
    async ({ page }) => {
      await choose(page, PHOTO);
      await sayTyped(page, "the panel");
      await answered(page, 1);
      await page.reload();
      await page.tap("text=Use these files again");
      await page.locator("#tray-files .chip").waitFor();
      await sayTyped(page, "for job 1003");
      await answered(page, 2);
      expect(await heard(desk, 1)).toEqual(await heard(desk, 0));
    },
    FILES,
  );
});

/** As a desktop hands files over: by a drop, and out of the clipboard. */
const HANDED = [
  { name: "dropped on the page", type: "drop", field: "dataTransfer", event: "DragEvent" },
  { name: "pasted", type: "paste", field: "clipboardData", event: "ClipboardEvent" },
] as const;
test.each(HANDED)("a photo is $name", async ({ type, field, event }) => {
  await usePage(
    new ScriptedDesk(),
    DESKTOP,
    async ({ page }) => {
      await page.evaluate(`{
        const data = new DataTransfer();
        data.items.add(new File([new Uint8Array([0xff, 0xd8, 0xff, 0xe0, 0, 0])], "drop.jpg", { type: "image/jpeg" }));
        document.querySelector("#message").dispatchEvent(new ${event}("${type}", { ${field}: data, bubbles: true, cancelable: true }));
      }`);
      await page.locator("#tray-files", { hasText: "drop.jpg" }).waitFor();
    },
    FILES,
  );
});

test("a phone is offered its camera and its files, each by name and large enough for a glove", async () => {
  await usePage(
    new ScriptedDesk(),
    { ...PHONE, viewport: { width: 320, height: 640 } },
    async ({ page }) => {
      await choose(page, PHOTO);
      for (const name of ["Take a photo", "Add photos or papers", "Leave out panel.jpg"]) {
        const box = await page.getByRole("button", { name }).boundingBox();
        expect(Math.min(box?.width ?? 0, box?.height ?? 0)).toBeGreaterThanOrEqual(44);
      }
      expect(await page.getAttribute("#pick-camera", "capture")).toBe("environment");
      expect(await page.getAttribute("#pick-papers", "capture")).toBe(null);
      expect(await page.evaluate("document.documentElement.scrollWidth")).toBe(320);
    },
    FILES,
  );
});

test("where no files are kept none are asked for", async () => {
  await usePage(new ScriptedDesk(), PHONE, async ({ page }) => {
    expect(await page.locator("input[type=file]").count()).toBe(0);
  });
});
