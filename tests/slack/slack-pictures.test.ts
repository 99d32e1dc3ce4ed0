import { afterEach, describe, expect, test } from "vitest";
import type { Card } from "../../src/messages/card.ts";
import { closeOpened, fixture, opened, plainCard, sample, sendEvent, sendForm, slash } from "./slack-harness.ts";

afterEach(closeOpened);

const PNG = Uint8Array.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0xff, 0x00]);
const chartCard: Card = sample("chart");
const chart = chartCard.blocks.find((block) => block.kind === "chart");
if (chart === undefined) throw new Error("the sample has no chart");
const draw = async () => PNG;

describe("the picture of a chart", () => {
  test("follows its answer into the thread, byte for byte, with its title and its text for screen readers", async () => {
    const { door, slack } = await opened(() => chartCard, {}, draw);
    await sendEvent(door, fixture("app-mention"));
    const { body } = await slack.call("files.completeUploadExternal");
    const asked = await slack.call("files.getUploadURLExternal");
    expect(asked.body).toMatchObject({ filename: `${chart.chart.id}.png`, length: "10", alt_txt: chart.alt });
    const put = slack.calls.find(({ method }) => method.startsWith("/upload/"));
    expect(put?.token).toBeUndefined();
    expect(put?.body["bytes"]).toContain(Buffer.from(PNG).toString("hex"));
    const file = `F${put?.method.replace("/upload/", "").padStart(9, "0")}`;
    expect(body).toMatchObject({
      files: [{ id: file, title: chart.title }],
      channel_id: "C1",
      thread_ts: "1767225600.000100",
    });
    expect(slack.calls[0]?.method).toBe("chat.postMessage");
  });

  test("in a direct message stands beside the answer, in no thread", async () => {
    const { door, slack } = await opened(() => chartCard, {}, draw);
    await sendEvent(door, fixture("message-im"));
    const { body } = await slack.call("files.completeUploadExternal");
    expect(body["channel_id"]).toBe("D1");
    expect(body["thread_ts"]).toBeUndefined();
  });

  test("is not waited for: the answer is there while it is still being drawn", async () => {
    let finish: (png: Uint8Array) => void = () => {};
    const drawn = new Promise<Uint8Array>((resolve) => {
      finish = resolve;
    });
    const { door, slack } = await opened(
      () => chartCard,
      {},
      () => drawn,
    );
    await sendEvent(door, fixture("app-mention"));
    const { body } = await slack.call("chat.postMessage");
    expect(JSON.stringify(body["blocks"])).toContain(chart.alt);
    expect(JSON.stringify(body["blocks"])).toContain('"type":"table"');
    finish(PNG);
    await slack.call("files.completeUploadExternal");
  });

  test.each(["files.getUploadURLExternal", "files.completeUploadExternal"])(
    "that Slack refuses at %s costs nothing but a line in the log, which holds no words of the card",
    async (method) => {
      const { door, slack, logged } = await opened(() => chartCard, {}, draw);
      slack.script(method, () => ({ body: { ok: false, error: "not_in_channel" } }));
      await sendForm(door, slash(slack));
      await door.close();
      expect(slack.count("/respond/slash")).toBe(1);
      const [line, ...more] = logged.filter(({ level }) => level !== "info");
      expect(more).toEqual([]);
      expect(line).toMatchObject({ level: "warn", data: { error: { reason: "not_in_channel" } } });
      expect(JSON.stringify(line)).not.toContain(chart.title);
    },
  );

  test("that cannot be drawn is missed by nobody either", async () => {
    const broken = async () => {
      throw new Error("no font");
    };
    const { door, slack, logged } = await opened(() => chartCard, {}, broken);
    await sendEvent(door, fixture("app-mention"));
    await door.close();
    expect(slack.calls.map(({ method }) => method)).toEqual(["chat.postMessage"]);
    expect(logged.filter(({ level }) => level !== "info")).toMatchObject([{ level: "warn" }]);
  });

  test("of a whispered answer is never put where all can see it", async () => {
    const { door, slack } = await opened(() => ({ ...chartCard, isPrivate: true }), {}, draw);
    await sendForm(door, slash(slack));
    await door.close();
    expect(slack.calls.map(({ method }) => method)).toEqual(["/respond/slash"]);
  });

  test("is asked for no more often than the card has charts", async () => {
    const { door, slack } = await opened(() => plainCard("no chart"), {}, draw);
    await sendEvent(door, fixture("app-mention"));
    await door.close();
    expect(slack.calls.map(({ method }) => method)).toEqual(["chat.postMessage"]);
  });
});
