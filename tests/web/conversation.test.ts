import { expect, test } from "vitest";
import { NASTY_TEXTS } from "../support/sample-cards.ts";
import { answered, DESKTOP, PHONE, readLog, sayTyped, withBrowser } from "./browser-page.ts";
import { noteCard, ScriptedDesk } from "./scripted-desk.ts";
import { formDesk, walkDesk } from "./walk-desk.ts";

const usePage = withBrowser();

test("a whole walk by keyboard alone: typed, by Tab to a button, and typed again", async () => {
  const desk = walkDesk();
  await usePage(desk, DESKTOP, async ({ page, faults, strays }) => {
    await page.keyboard.type("expansion");
    await page.keyboard.press("Enter");
    await answered(page, 1);
    await page.keyboard.press("Shift+Tab");
    expect(await page.locator(":focus").textContent()).toBe("80 gal");
    await page.keyboard.press("Enter");
    await answered(page, 2);
    await page.keyboard.press("Tab");
    expect(await page.locator(":focus").textContent()).toBe("40 °F");
    await page.keyboard.press("Tab");
    await page.keyboard.press("Tab");
    expect(await page.locator(":focus").getAttribute("id")).toBe("message");
    await page.keyboard.type("52F");
    await page.keyboard.press("Enter");
    await answered(page, 3);
    expect((await readLog(page)).map((entry) => entry.said)).toEqual(["expansion", "80 gal", "52F"]);
    expect((await readLog(page))[2]?.answer).toContain("4.5 gal for 80 gal and 52F");
    expect([faults, strays]).toEqual([[], []]);
  });
  expect(desk.received.map(({ text, aim }) => [text, aim])).toEqual([
    ["expansion", undefined],
    ["80 gal", { walk: "w1", fact: "tank" }],
    ["52F", undefined],
  ]);
  expect(new Set(desk.received.map((inbound) => inbound.conversation)).size).toBe(1);
});

test("a whole walk by taps on a phone", async () => {
  const desk = walkDesk();
  await usePage(desk, PHONE, async ({ page, faults }) => {
    await page.tap("#message");
    await page.fill("#message", "expansion");
    await page.tap("text=Send");
    await answered(page, 1);
    await page.tap(".card >> text=80 gal");
    await answered(page, 2);
    await page.tap(".card >> text=50 °F");
    await answered(page, 3);
    expect((await readLog(page))[2]?.answer).toContain("4.5 gal for 80 gal and 50 °F");
    expect(faults).toEqual([]);
  });
});

test("the box is ready to type into where there is a keyboard, and leaves the keyboard of a phone down", async () => {
  await usePage(new ScriptedDesk(), DESKTOP, async ({ page }) => {
    expect(await page.locator(":focus").getAttribute("id")).toBe("message");
  });
  await usePage(new ScriptedDesk(), PHONE, async ({ page }) => {
    expect(await page.locator("#message:focus").count()).toBe(0);
  });
});

test("Enter sends, Shift and Enter starts a line, digits are digits", async () => {
  const desk = walkDesk();
  await usePage(desk, DESKTOP, async ({ page }) => {
    await sayTyped(page, "expansion");
    await answered(page, 1);
    await page.keyboard.type("12");
    await page.keyboard.press("Shift+Enter");
    await page.keyboard.type("3");
    expect(await page.inputValue("#message")).toBe("12\n3");
    await page.keyboard.press("Enter");
    await answered(page, 2);
    expect(await page.inputValue("#message")).toBe("");
    await page.keyboard.press("Enter");
    await page
      .locator("h1")
      .focus()
      .catch(() => {});
    await page.evaluate("document.activeElement.blur()");
    await page.keyboard.press("1");
  });
  expect(desk.received.map((inbound) => inbound.text)).toEqual(["expansion", "12\n3"]);
});

test("Enter that ends a composed word does not send", async () => {
  const desk = new ScriptedDesk();
  await usePage(desk, DESKTOP, async ({ page }) => {
    await page.fill("#message", "grúa");
    await page.evaluate(
      `document.querySelector("#message").dispatchEvent(new KeyboardEvent("keydown", { key: "Enter", isComposing: true, bubbles: true }))`,
    );
    expect(await page.inputValue("#message")).toBe("grúa");
    await page.press("#message", "Enter");
    await answered(page, 1);
  });
  expect(desk.received.length).toBe(1);
});

test("progress is shown while the desk works, and the answer takes its place", async () => {
  const desk = new ScriptedDesk();
  desk.hold();
  await usePage(desk, DESKTOP, async ({ page }) => {
    await sayTyped(page, "size");
    await page.locator(".entry .state", { hasText: "Working…" }).waitFor();
    for (const done of [50, 150]) {
      desk.showProgress({
        title: "Size",
        summary: `${done} days`,
        blocks: [{ kind: "progress", text: "Days", done, total: 200 }],
      });
      await page.locator(`progress[value="${done}"]`).waitFor();
    }
    desk.release();
    await answered(page, 1);
    expect(await page.locator("progress").count()).toBe(0);
    expect(await page.locator(".entry .state").isVisible()).toBe(false);
  });
});

test("the one-line summary is said to people who listen", async () => {
  await usePage(walkDesk(), DESKTOP, async ({ page }) => {
    await sayTyped(page, "expansion");
    await answered(page, 1);
    expect(await page.getByRole("status").textContent()).toBe("Question 1 of 2: How big is the tank?");
  });
});

test("a reload shows the log again, and its buttons still answer", async () => {
  const desk = walkDesk();
  await usePage(desk, DESKTOP, async ({ page, faults }) => {
    await sayTyped(page, "expansion");
    await answered(page, 1);
    const before = await readLog(page);
    await page.fill("#message", "half a tho");
    await page.reload();
    await answered(page, 1);
    expect(await readLog(page)).toEqual(before);
    expect(await page.inputValue("#message")).toBe("half a tho");
    await page.click(".card >> text=80 gal");
    await answered(page, 2);
    expect(faults).toEqual([]);
  });
  expect(desk.received.map((inbound) => inbound.text)).toEqual(["expansion", "80 gal"]);
  expect(desk.received[0]?.conversation).toBe(desk.received[1]?.conversation);
});

test("a new conversation empties the log and is another conversation", async () => {
  const desk = new ScriptedDesk();
  await usePage(desk, DESKTOP, async ({ page }) => {
    await sayTyped(page, "one");
    await answered(page, 1);
    await page.click("text=New conversation");
    await answered(page, 0);
    expect(await page.locator(".opening").isVisible()).toBe(true);
    await page.keyboard.type("two");
    await page.keyboard.press("Enter");
    await answered(page, 1);
    await page.reload();
    expect((await readLog(page)).map((entry) => entry.said)).toEqual(["two"]);
  });
  expect(desk.received[0]?.conversation).not.toBe(desk.received[1]?.conversation);
});

test("the person who speaks is picked, told to the desk, shown in the log and remembered", async () => {
  const desk = new ScriptedDesk();
  await usePage(desk, DESKTOP, async ({ page }) => {
    await page.selectOption("#person", "oskar");
    await sayTyped(page, "who is ready");
    await answered(page, 1);
    await page.reload();
    await answered(page, 1);
    expect(await page.inputValue("#person")).toBe("oskar");
    expect(await page.locator(".entry .who").textContent()).toContain("Oskar Lind");
  });
  expect(desk.received[0]?.caller).toEqual({ door: "web", organisation: "local", user: "oskar", name: "Oskar Lind" });
});

test("an example on the empty page asks itself", async () => {
  const desk = new ScriptedDesk();
  await usePage(desk, PHONE, async ({ page }) => {
    await page.tap(".opening button >> nth=1");
    await answered(page, 1);
    expect(await page.locator(".opening").isVisible()).toBe(false);
  });
  expect(desk.received.map((inbound) => inbound.text)).toEqual(["mix 135 to 120 with 50 in"]);
});

test("a form is filled by keyboard, told what is wrong at the field, and taken", async () => {
  const desk = formDesk();
  await usePage(desk, DESKTOP, async ({ page, faults }) => {
    await sayTyped(page, "form");
    await answered(page, 1);
    await page.getByLabel("Length of the run").focus();
    await page.keyboard.type("60 apples");
    await page.keyboard.press("Tab");
    await page.keyboard.press("Space");
    await page.keyboard.press("ArrowDown");
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    await answered(page, 2);
    const field = page.locator("[aria-invalid=true]");
    expect(await field.inputValue()).toBe("60 apples");
    expect(await page.locator("[aria-invalid=true]:focus").count()).toBe(1);
    await field.fill("60 ft");
    await page.keyboard.press("Enter");
    await answered(page, 3);
    const log = await readLog(page);
    expect(log[1]?.said).toBe("Electric circuit\nLength of the run: 60 apples\nSupply: 240 V");
    expect(log[2]?.answer).toContain("Run 60 ft at 240");
    expect(faults).toEqual([]);
  });
  expect(desk.received[1]?.form).toEqual({ topic: "circuit", fields: { run: "60 apples", supply: "240" } });
});

test("what stands in a form survives a reload", async () => {
  await usePage(formDesk(), PHONE, async ({ page }) => {
    await sayTyped(page, "form");
    await answered(page, 1);
    await page.getByLabel("Length of the run").fill("60 ft");
    await page.getByText("208 V").tap();
    await page.reload();
    await answered(page, 1);
    expect(await page.getByLabel("Length of the run").inputValue()).toBe("60 ft");
    expect(await page.getByLabel("208 V").isChecked()).toBe(true);
  });
});

test("a form with a field that is needed and empty is not sent", async () => {
  const desk = formDesk();
  await usePage(desk, DESKTOP, async ({ page }) => {
    await sayTyped(page, "form");
    await answered(page, 1);
    await page.click("text=Work it out");
    expect(await page.locator("input:invalid").count()).toBeGreaterThan(0);
    expect(await page.locator(".entry").count()).toBe(1);
  });
  expect(desk.received.length).toBe(1);
});

test.each(Object.entries(NASTY_TEXTS).filter(([, text]) => text.length < 500))(
  "typed and answered as plain text: %s",
  async (_, text) => {
    const desk = new ScriptedDesk((inbound) => noteCard(inbound.text));
    await usePage(desk, DESKTOP, async ({ page, faults, strays }) => {
      await sayTyped(page, text);
      await answered(page, 1);
      expect(await page.locator(".entry :is(script, img, a, b, code)").count()).toBe(0);
      const sent = desk.received[0]?.text ?? "";
      const shown = sent.replace(/[^\P{Cc}\t\n]/gu, "").replace(/\p{Surrogate}/gu, "\uFFFD");
      expect(await page.locator(".text").textContent()).toBe(shown);
      expect([faults, strays]).toEqual([[], []]);
    });
  },
);

test("the page speaks the language of the person's latest answer, and each answer keeps its own", async () => {
  let language: "en" | "es" = "en";
  const desk = new ScriptedDesk((inbound) => {
    if (inbound.text === "español") language = "es";
    return noteCard(inbound.text);
  });
  await usePage(
    desk,
    DESKTOP,
    async ({ page }) => {
      await sayTyped(page, "first");
      await answered(page, 1);
      expect(await page.getAttribute("html", "lang")).toBe("en");
      await sayTyped(page, "español");
      await answered(page, 2);
      expect(await page.getAttribute("html", "lang")).toBe("es");
      expect(await page.locator("#composer button").textContent()).toBe("Enviar");
      expect(await page.locator("#person option").first().textContent()).toBe("Wilma Tarn, servicio técnico");
      expect(await page.$$eval(".card", (cards) => cards.map((card) => card.lang))).toEqual(["en", "es"]);
      await page.reload();
      expect(await page.getAttribute("html", "lang")).toBe("es");
    },
    { languageOf: async () => language },
  );
});
