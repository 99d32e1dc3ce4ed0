import { expect, test } from "vitest";
import { answered, DESKTOP, PHONE, readLog, sayTyped, withBrowser } from "./browser-page.ts";
import { noteCard, openTestDoor, ScriptedDesk } from "./scripted-desk.ts";
import { walkDesk } from "./walk-desk.ts";

const usePage = withBrowser();
const WAITING = "Waiting for signal, will send again.";

test("without signal a message waits in the log, survives a reload, and is sent when signal is back", async () => {
  const desk = new ScriptedDesk();
  await usePage(desk, PHONE, async ({ page }) => {
    await page.route("**/messages", (route) => route.abort("internetdisconnected"));
    await sayTyped(page, "mix 135 to 120");
    await sayTyped(page, "and with 45 in");
    await page.locator(".state", { hasText: WAITING }).first().waitFor();
    expect(await page.getByRole("status").textContent()).toBe(WAITING);
    expect(await page.locator('.entry[data-state="no-signal"] .gauge').count()).toBe(1);
    await page.reload();
    await page.locator(".state", { hasText: WAITING }).first().waitFor();
    expect((await readLog(page)).map((entry) => entry.said)).toEqual(["mix 135 to 120", "and with 45 in"]);
    await page.unroute("**/messages");
    await page.evaluate("window.dispatchEvent(new Event('online'))");
    await answered(page, 2);
  });
  expect(desk.worked.map((inbound) => inbound.text)).toEqual(["mix 135 to 120", "and with 45 in"]);
});

test("a message is sent again by itself, under the same delivery id", async () => {
  const desk = new ScriptedDesk();
  const sent: string[] = [];
  await usePage(desk, DESKTOP, async ({ page }) => {
    await page.clock.install();
    await page.route("**/messages", async (route) => {
      sent.push(route.request().postDataJSON().delivery);
      await (sent.length < 3 ? route.abort("connectionreset") : route.continue());
    });
    await sayTyped(page, "mix");
    for (const tries of [1, 2]) {
      await expect.poll(() => sent.length, { interval: 10 }).toBe(tries);
      await page.locator(".state", { hasText: WAITING }).first().waitFor();
      await page.clock.fastForward(tries * 1200);
    }
    await answered(page, 1);
  });
  expect(sent.length).toBe(3);
  expect(new Set(sent).size).toBe(1);
});

test("a person need not wait: one button sends it now", async () => {
  const desk = new ScriptedDesk();
  await usePage(desk, PHONE, async ({ page }) => {
    await page.route("**/messages", (route) => route.abort("connectionrefused"), { times: 1 });
    await page.clock.install();
    await sayTyped(page, "mix");
    await page.tap("text=Send now");
    await answered(page, 1);
  });
  expect(desk.worked.length).toBe(1);
});

test("a server that goes away in the middle of the work is found again, and the message is answered once", async () => {
  const desk = walkDesk();
  await usePage(desk, DESKTOP, async ({ page, door }) => {
    desk.hold();
    await sayTyped(page, "expansion");
    await page.getByText("Working…").waitFor();
    desk.signal?.addEventListener("abort", () => desk.release());
    await door.close();
    await page.locator(".state", { hasText: WAITING }).first().waitFor();
    const port = Number(new URL(door.url).port);
    const again = await openTestDoor(desk, { settings: { host: "127.0.0.1", port } });
    try {
      await answered(page, 1);
      expect((await readLog(page))[0]?.answer).toContain("How big is the tank?");
    } finally {
      await page.close();
      await again.close();
    }
  });
  expect(desk.received.map((inbound) => inbound.delivery)).toHaveLength(2);
  expect(desk.worked).toHaveLength(1);
});

test("an answer that was cut off before its card is asked for again and shown once", async () => {
  const desk = new ScriptedDesk();
  await usePage(desk, DESKTOP, async ({ page }) => {
    const cut = `{"kind":"working"}\n{"kind":"card","html":"<p>half`;
    const headers = { "content-type": "application/x-ndjson" };
    await page.route(
      "**/messages",
      async (route) => {
        await route.fetch();
        await route.fulfill({ status: 200, headers, body: cut });
      },
      { times: 1 },
    );
    await sayTyped(page, "mix");
    await answered(page, 1);
    expect((await readLog(page)).map((entry) => entry.answer)).toEqual(["Note You said: mix"]);
  });
  expect(desk.received).toHaveLength(2);
  expect(desk.worked).toHaveLength(1);
});

test("a connection that stays silent for 15 s is given up and tried again", async () => {
  const desk = new ScriptedDesk();
  await usePage(desk, DESKTOP, async ({ page }) => {
    await page.clock.install();
    await page.route("**/messages", () => {}, { times: 1 });
    await sayTyped(page, "mix");
    await page.getByText("Sending…").waitFor();
    await page.clock.fastForward(14_000);
    expect(await page.locator(".state", { hasText: WAITING }).count()).toBe(0);
    await page.clock.fastForward(1000);
    await page.locator(".state", { hasText: WAITING }).first().waitFor();
    await page.clock.fastForward(1200);
    await answered(page, 1);
  });
  expect(desk.worked).toHaveLength(1);
});

test("waits from 0.8 s up to 36 s, twice as long each time until then", async () => {
  await usePage(new ScriptedDesk(), DESKTOP, async ({ page }) => {
    const waits = await page.evaluate(`import("/static/back-off.js").then(({ backOff_ms }) =>
      [[1, 0], [1, 1], [2, 0.5], [3, 0.5], [5, 0.5], [6, 0.5], [50, 0], [5000, 1]].map((args) => Math.round(backOff_ms(...args))))`);
    expect(waits).toEqual([800, 1200, 2000, 4000, 16_000, 30_000, 24_000, 36_000]);
  });
});

test("the same button pressed twice in a row is one message", async () => {
  const desk = walkDesk();
  await usePage(desk, PHONE, async ({ page }) => {
    await sayTyped(page, "expansion");
    await answered(page, 1);
    desk.hold();
    await page.tap(".card >> text=80 gal");
    await page.tap(".card >> text=80 gal");
    desk.release();
    await answered(page, 2);
    expect(await page.locator(".entry").count()).toBe(2);
  });
  expect(desk.received).toHaveLength(2);
});

test("messages typed while one is worked on are answered in order", async () => {
  const desk = new ScriptedDesk();
  await usePage(desk, DESKTOP, async ({ page }) => {
    desk.hold();
    for (const text of ["one", "two", "three"]) await sayTyped(page, text);
    await page.getByText("Working…").waitFor();
    expect(await page.$$eval(".entry .state", (lines) => lines.map((line) => line.textContent?.trim()))).toEqual([
      "Working…",
      "Waits its turn.",
      "Waits its turn.",
    ]);
    expect(desk.received).toHaveLength(1);
    desk.release();
    await answered(page, 3);
  });
  expect(desk.received.map((inbound) => inbound.text)).toEqual(["one", "two", "three"]);
});

test("a new conversation keeps what still waits, and that is answered where it was asked", async () => {
  const desk = new ScriptedDesk();
  await usePage(desk, DESKTOP, async ({ page }) => {
    await sayTyped(page, "before");
    await answered(page, 1);
    await page.route("**/messages", (route) => route.abort());
    await sayTyped(page, "waiting");
    await page.locator(".state", { hasText: WAITING }).first().waitFor();
    await page.click("text=New conversation");
    expect((await readLog(page)).map((entry) => entry.said)).toEqual(["waiting"]);
    await page.unroute("**/messages");
    await page.click("text=Send now");
    await answered(page, 1);
  });
  expect(desk.received[1]?.conversation).toBe(desk.received[0]?.conversation);
});

test("a fault is said with its id, and the same delivery can be sent again", async () => {
  let isBroken = true;
  const desk = new ScriptedDesk(() => {
    if (isBroken) throw new Error("broken");
    return noteCard("mended");
  });
  await usePage(desk, DESKTOP, async ({ page }) => {
    await sayTyped(page, "mix");
    await page.locator('.entry[data-state="failed"]', { hasText: /our side \([0-9a-f]{8}\)/ }).waitFor();
    isBroken = false;
    await page.click("text=Send again");
    await answered(page, 1);
  });
  expect(desk.received[0]?.delivery).toBe(desk.received[1]?.delivery);
});

test("a message that cannot be taken says why, and goes back into the box to be changed", async () => {
  const desk = new ScriptedDesk();
  await usePage(desk, DESKTOP, async ({ page }) => {
    await page.evaluate(`document.querySelector("#message").removeAttribute("maxlength")`);
    await page.fill("#message", "x".repeat(4001));
    await page.press("#message", "Enter");
    await page.locator(".state", { hasText: "Shorten it to 4000" }).waitFor();
    await page.click("text=Change it");
    expect((await page.inputValue("#message")).length).toBe(4001);
    expect(await page.locator(".entry").count()).toBe(0);
  });
  expect(desk.received).toEqual([]);
});

test("a browser that keeps nothing says so, and still answers", async () => {
  await usePage(new ScriptedDesk(), DESKTOP, async ({ page }) => {
    expect(await page.locator("#not-kept").isVisible()).toBe(false);
    await page.addInitScript("Object.defineProperty(window, 'localStorage', { get() { throw new Error('denied'); } })");
    await page.reload();
    expect(await page.locator("#not-kept").isVisible()).toBe(true);
    await sayTyped(page, "mix");
    await answered(page, 1);
  });
});

test("a full browser store drops the oldest answers and never what waits", async () => {
  await usePage(new ScriptedDesk(), DESKTOP, async ({ page }) => {
    const kept = await page.evaluate(`import("/static/log-store.js").then(({ openLogStore }) => {
      const held = new Map();
      const storage = {
        getItem: (name) => held.get(name) ?? null,
        setItem: (name, value) => {
          if (value.length > 6000) throw new Error("full");
          held.set(name, value);
        },
      };
      const store = openLogStore(storage);
      const entry = (id, state) => ({ id, state, text: "x".repeat(1000) });
      store.put(entry("waits", "waiting"));
      for (let i = 0; i < 12; i++) store.put(entry("answer-" + i, "answered"));
      return [store.entries().map((one) => one.id), store.isKept()];
    })`);
    expect(kept).toEqual([["waits", "answer-9", "answer-10", "answer-11"], true]);
  });
});

test("two tabs show the same log", async () => {
  await usePage(new ScriptedDesk(), DESKTOP, async ({ page, door }) => {
    const other = await page.context().newPage();
    await other.goto(door.url);
    await sayTyped(page, "from the first");
    await answered(other, 1);
    await sayTyped(other, "from the second");
    await answered(page, 2);
    expect(await readLog(page)).toEqual(await readLog(other));
  });
});
