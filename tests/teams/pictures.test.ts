import { afterAll, afterEach, beforeAll, describe, expect, test } from "vitest";
import { createPictures } from "../../adapters/pictures/draw-chart.ts";
import { MOST_ACTIVITY_BYTES } from "../../adapters/teams/limits.ts";
import { type DrawPngWithin, pictureMessage } from "../../adapters/teams/picture-message.ts";
import type { ChartBlock } from "../../src/messages/card.ts";
import { SAMPLE_CARDS } from "../support/sample-cards.ts";
import { CardJudge } from "./card-judge.ts";
import { TENANT_ID } from "./fake-platform.ts";
import { openTestDoor, type TestDoor } from "./open-test-door.ts";

const chartCard = SAMPLE_CARDS["chart"];
const found = chartCard?.blocks.find((block) => block.kind === "chart");
if (chartCard === undefined || found === undefined) throw new Error("the sample has no chart");
const chart: ChartBlock = found;
const pictures = createPictures();
const draw: DrawPngWithin = async (block, most_B) => pictures.drawPngWithin(block, most_B);

let door: TestDoor;
async function ask(drawPng: DrawPngWithin, changes: object = {}, card = chartCard) {
  door = await openTestDoor({ drawPng });
  door.desk.answer = async () => ({ card: card ?? { title: "", summary: "", blocks: [] }, isRepeat: false });
  await door.say(changes);
  return door.platform.messages.map(({ body }) => body.attachments[0].content);
}
afterEach(async () => door?.close());

describe("the picture of a chart", () => {
  const scopes = ["personal", "groupChat", "channel"];
  test.each(scopes)("follows the answer as a message of its own in a chat of kind %s", async (conversationType) => {
    const cards = await ask(draw, { conversation: { id: "19:c", conversationType, tenantId: TENANT_ID } });
    expect(cards).toHaveLength(2);
    expect(JSON.stringify(cards[0])).toContain("Table");
    expect(cards[1].body).toMatchObject([{ type: "Image", altText: chart.alt }]);
    const png = Buffer.from(cards[1].body[0].url.replace("data:image/png;base64,", ""), "base64");
    expect(png.subarray(1, 4).toString()).toBe("PNG");
  });

  test("that does not fit is left to the table", async () => {
    const cards = await ask(async () => undefined);
    expect(cards).toHaveLength(1);
    expect(door.log.map(({ level }) => level)).toEqual(["info"]);
  });

  test("that cannot be drawn costs a line in the log, which holds no words of the card", async () => {
    const cards = await ask(async () => {
      throw new Error("no font");
    });
    expect(cards).toHaveLength(1);
    expect(door.log).toMatchObject([{ level: "warn", data: { chart: "day", message: "no font" } }]);
    expect(JSON.stringify(door.log)).not.toContain(chart.title);
  });

  test("that the platform refuses is not missed: the message counts as answered", async () => {
    door = await openTestDoor({ drawPng: draw });
    door.desk.answer = async () => {
      door.platform.refusals = [];
      return { card: chartCard ?? { title: "", summary: "", blocks: [] }, isRepeat: false };
    };
    const refuseSecond = door.platform
      .until((sent) => sent.length === 1)
      .then(() => {
        door.platform.refusals.push({ status: 400 });
      });
    expect(await door.say()).toMatchObject({ status: 200 });
    await refuseSecond;
    expect(door.log).toMatchObject([{ level: "warn", data: { chart: "day", status: 400 } }]);
    await door.say();
    expect(door.desk.received).toHaveLength(1);
  });
});

test("a message with a picture is given exactly the room that is left in it, and stays within its bytes", async () => {
  let room_B = 0;
  const full: DrawPngWithin = async (_, most_B) => {
    room_B = most_B;
    return new Uint8Array(most_B);
  };
  const message = await pictureMessage(chart, "en", full);
  expect(room_B).toBeGreaterThan(16_000);
  const bytes = Buffer.byteLength(JSON.stringify(message));
  expect(bytes).toBeLessThan(MOST_ACTIVITY_BYTES);
  expect(bytes).toBeGreaterThan(MOST_ACTIVITY_BYTES - 4_000);
});

describe("the official renderer", () => {
  let judge: CardJudge;
  beforeAll(async () => {
    judge = await CardJudge.start();
  });
  afterAll(async () => {
    await judge.stop();
  });

  test("shows the picture at 320 px, has nothing to say against it, and gives its text to screen readers", async () => {
    const message = await pictureMessage(chart, "en", draw);
    if (message === undefined) throw new Error("the picture does not fit");
    const { complaints, unknownProperties, cutOff } = await judge.judge(message.card, 320);
    // What opens a picture to the full screen is an addition of Teams and not in the renderer's schema.
    expect({ complaints, unknownProperties, cutOff }).toEqual({
      complaints: [],
      unknownProperties: ["card.body[0].msteams"],
      cutOff: [],
    });
    const image = (await judge.page(320)).locator("img");
    expect(await image.getAttribute("alt")).toBe(chart.alt);
    const widths = await image.evaluate(
      async (element: { decode(): Promise<void>; naturalWidth: number; clientWidth: number }) => {
        await element.decode();
        return [element.naturalWidth, element.clientWidth];
      },
    );
    expect(widths[0]).toBe(1350);
    expect(widths[1]).toBeGreaterThan(250);
  });
});
