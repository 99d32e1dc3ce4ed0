import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { closeCard } from "../../adapters/teams/close-card.ts";
import { renderAdaptive } from "../../adapters/teams/render-adaptive.ts";
import { readSubmit } from "../../adapters/teams/submit-data.ts";
import type { Card } from "../../src/messages/card.ts";
import { SAMPLE_CARDS } from "../support/sample-cards.ts";
import { CardJudge } from "./card-judge.ts";

let judge: CardJudge;
beforeAll(async () => {
  judge = await CardJudge.start();
});
afterAll(async () => {
  await judge.stop();
});
function sampleOf(name: string): Card {
  const card = SAMPLE_CARDS[name];
  if (card === undefined) throw new Error(`no sample card ${name}`);
  return card;
}

describe("details of an answer, in the official renderer", () => {
  const messages = renderAdaptive(sampleOf("details"), { language: "en" });

  test.each([320, 640])("at %i px stay hidden until their title is pressed, and then fit", async (width) => {
    const [{ card }] = messages;
    const before = await judge.judge(card, width);
    expect(before.text).toContain("Make the door louvered");
    expect(before.text).toContain("More numbers");
    expect(before.text).not.toContain("81 %");
    const page = await judge.page(width);
    const titles = page.locator("#card div[role=button]");
    expect(await titles.count()).toBe(5);
    for (const title of await titles.all()) {
      expect((await title.boundingBox())?.height).toBeGreaterThanOrEqual(44);
      await title.click();
    }
    for (const detail of ["81 %", "well mixed", "Helps, not enough", "2.92", "common practice"])
      expect(await page.locator("#card").getByText(detail).first().isVisible()).toBe(true);
    expect(await page.evaluate("findCutOff(document.getElementById('card'))")).toEqual([]);
  });
  test("too large for one message stay whole, each part under its title", () => {
    const rows = Array.from({ length: 900 }, (_, index) => [`Way ${index}`, "It is 22 in wide; the door is 21 in."]);
    const table = { kind: "table", caption: "Refused", columns: ["Model", "Reason"], rows, isDetail: true } as const;
    const parts = renderAdaptive({ ...sampleOf("details"), blocks: [table] }, { language: "en" });
    expect(parts.length).toBeGreaterThan(2);
    for (const part of parts) expect(Buffer.byteLength(JSON.stringify(part))).toBeLessThan(28 * 1024);
    const said = JSON.stringify(parts);
    expect(rows.filter(([name]) => !said.includes(`"${name}"`))).toEqual([]);
    const ids = said.match(/"id":"d[\d_]+"/g) ?? [];
    expect(new Set(ids).size).toBe(ids.length);
  });
});

describe("a question with more answers than a phone has room for", () => {
  const [message] = renderAdaptive(sampleOf("manyAnswers"), { language: "en" });

  test("is a list whose choice answers that question", async () => {
    const sent = await judge.press(message.card, "OK", {
      "Which of these comes nearest\\? \\*": "Complaint 4, or something very much like it",
    });
    expect(readSubmit(sent)).toMatchObject({
      kind: "button",
      say: "Complaint 4",
      aim: { walk: "w3", fact: "symptom" },
    });
  });
  test("sends nothing while nothing is chosen, and lets a person stop without choosing", async () => {
    expect(await judge.press(message.card, "OK")).toBeUndefined();
    expect(readSubmit(await judge.press(message.card, "Stop"))).toMatchObject({ say: "stop" });
  });
  test("shows what was chosen when it is closed, and no empty field", () => {
    const closed = closeCard(message, { kind: "button", say: "Complaint 4", label: "Complaint 4" });
    const text = JSON.stringify(closed.card.body);
    expect(text).toContain("✓ Complaint 4");
    expect(text).not.toContain("–");
    expect(text).not.toContain("ChoiceSet");
  });
});
