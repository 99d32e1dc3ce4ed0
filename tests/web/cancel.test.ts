import { describe, expect, test } from "vitest";
// @ts-expect-error a script of the page; its own types are checked with the page's
import { callsOff } from "../../adapters/web/static/cancel.js";
import { readCancel } from "../../src/conversation/commands.ts";
import { buildProgressCard } from "../../src/messages/build-progress-card.ts";
import { speakOf, voiceFor } from "../../src/messages/voice.ts";
import { fixtureLibrary } from "../support/fixture-library.ts";
import { CALLED_OFF, LONG_QUESTION, openLongDesk, STOPPED } from "../support/long-desk.ts";
import { answered, DESKTOP, PHONE, readLog, sayTyped, withBrowser } from "./browser-page.ts";
import { noteCard, ScriptedDesk } from "./scripted-desk.ts";

const usePage = withBrowser();

test.each([
  ...["cancel", "Cancelar", "¡cancele!", "cancela.", "cancel 0a1b2c3d", "CANCELAR 0A1B2C3D"],
  ...["cancel schedule", "cancel 0a1b", "stop", "parar", "please cancel", "cancelled", ""],
])("the page and the desk agree whether %j calls off work", (text) => {
  expect(callsOff(text)).toBe(readCancel(text) !== undefined);
});

describe("the button under long work", () => {
  test("goes ahead of the message that it calls off, on a phone", async () => {
    const long = openLongDesk();
    await usePage(long.desk, PHONE, async ({ page, faults }) => {
      await sayTyped(page, LONG_QUESTION);
      await page.getByRole("button", { name: "Cancel", exact: true }).click();
      await answered(page, 2);
      const [asked, cancelled] = await readLog(page);
      expect([asked?.answer, cancelled?.answer]).toEqual([
        expect.stringContaining(STOPPED),
        expect.stringContaining(CALLED_OFF),
      ]);
      expect(faults).toEqual([]);
    });
    expect(long.signals.map(({ aborted }) => aborted)).toEqual([true]);
    expect([long.store.commits, long.faults]).toEqual([[], []]);
  });

  test("is there for those who type as well, and what waits behind is answered afterwards", async () => {
    const long = openLongDesk();
    await usePage(long.desk, DESKTOP, async ({ page }) => {
      await sayTyped(page, LONG_QUESTION);
      await long.begun(1);
      await sayTyped(page, "units si");
      await sayTyped(page, "cancel");
      await answered(page, 3);
      const log = await readLog(page);
      expect(log[0]?.answer).toContain(STOPPED);
      expect(log[1]?.answer).toContain("SI");
      expect(log[2]?.answer).toContain(CALLED_OFF);
    });
  });

  test("keeps the focus while the figure over it changes", async () => {
    const desk = new ScriptedDesk(() => noteCard("done"));
    const voice = speakOf(voiceFor(fixtureLibrary, { language: "en", units: "us" }), "barrel");
    await usePage(desk, DESKTOP, async ({ page }) => {
      desk.hold();
      await sayTyped(page, "size");
      await expect.poll(() => desk.worked.length, { interval: 10 }).toBe(1);
      desk.showProgress(buildProgressCard(voice, 1, 4, "0a1b2c3d"));
      const button = page.getByRole("button", { name: "Cancel", exact: true });
      await button.focus();
      desk.showProgress(buildProgressCard(voice, 3, 4, "0a1b2c3d"));
      await page.locator('progress[value="3"]').waitFor();
      expect(await button.evaluate((element) => element === element.ownerDocument.activeElement)).toBe(true);
      expect(await page.locator("progress").count()).toBe(1);
      desk.release();
      await answered(page, 1);
      expect((await readLog(page))[0]?.answer).toContain("done");
    });
  });
});

test("cancel with nothing under way stops a guided walk, in its order", async () => {
  const long = openLongDesk();
  await usePage(long.desk, DESKTOP, async ({ page }) => {
    await sayTyped(page, "barrel");
    await sayTyped(page, "cancel");
    await answered(page, 2);
    expect((await readLog(page))[1]?.answer).toContain("Stopped: Filling a barrel");
  });
});
