import type { KnownBlock } from "@slack/types";
import { afterEach, describe, expect, test } from "vitest";
import { blocksAsText } from "../../adapters/slack/blocks-as-text.ts";
import { renderCard } from "../../adapters/slack/render-card.ts";
import { judgeMessage } from "./block-kit-judge.ts";
import { closeOpened, fixture, opened, press, sample, sendEvent, sendPayload } from "./slack-harness.ts";

afterEach(closeOpened);
const read = (blocks: readonly KnownBlock[]) => blocksAsText(blocks);

describe("details of an answer", () => {
  const { messages } = renderCard(sample("details"));
  const [first, ...others] = messages.map(({ blocks }) => read(blocks));

  test("come after a first message that holds the answer and what to do next", () => {
    expect(first).toContain("Make the door louvered");
    expect(first).toContain("› room door=louvred");
    for (const detail of ["More numbers", "well mixed", "What to change", "Assumed", "› change people"]) {
      expect(first).not.toContain(detail);
      expect(others.join("\n")).toContain(detail);
    }
  });
  test("keep the limits, with narrow tables as lines, because a message takes only one table", () => {
    expect(messages.flatMap(judgeMessage)).toEqual([]);
    expect(others.join("\n")).toContain("Volume: Low in the room · COP\n450 ft³: 45 °F · 2.92");
    expect(messages).toHaveLength(2);
  });
  test("go into the thread of the answer in a direct message", async () => {
    const { door, slack } = await opened(() => sample("details"));
    await sendEvent(door, fixture("message-im"));
    await slack.call("chat.postMessage", 1);
    const [answer, detail] = slack.calls.filter(({ method }) => method === "chat.postMessage");
    expect(answer?.body["thread_ts"]).toBeUndefined();
    expect(detail?.body["thread_ts"]).toMatch(/^\d+\.\d+$/);
  });
});

test("a second narrow table of an answer is written as lines, so that its buttons stay in the first message", () => {
  const table = { kind: "table", columns: ["Check", "Seen"], rows: [["Breaker", "Off"]] } as const;
  const buttons = { kind: "buttons", buttons: [{ label: "Done", say: "done" }] } as const;
  const blocks = [{ ...table, caption: "One" }, { ...table, caption: "Two" }, buttons];
  const { messages } = renderCard({ title: "T", summary: "S", blocks });
  expect(messages.map(({ blocks: one }) => read(one))).toEqual([
    "T\nOne\nCheck | Seen\nBreaker | Off\nTwo\nCheck: Seen\nBreaker: Off\n› done",
  ]);
});

describe("a question with more answers than a phone has room for", () => {
  const { messages } = renderCard(sample("manyAnswers"));
  const list = messages[0].blocks.flatMap((block) =>
    block.type === "actions" ? block.elements.filter(({ type }) => type === "static_select") : [],
  )[0];

  test("is one message with a list of them all, and the way out as a button", () => {
    expect(messages).toHaveLength(1);
    expect(messages.flatMap(judgeMessage)).toEqual([]);
    expect(list?.type === "static_select" && list.options?.length).toBe(41);
    expect(read(messages[0].blocks)).toContain("› stop");
  });
  test("hears the choice as an answer to that question", async () => {
    const { door, desk, slack } = await opened();
    const block = messages[0].blocks.find((one) => one.type === "actions");
    const [option] = (list?.type === "static_select" && list.options?.slice(3, 4)) || [];
    const chosen = { type: "static_select", action_id: "answer_0", block_id: block?.block_id, selected_option: option };
    await sendPayload(door, press(slack, "button-in-thread", { actions: [chosen] }));
    await slack.call("/respond/press");
    expect(desk.asked.map(({ text, aim }) => ({ text, aim }))).toEqual([
      { text: "Complaint 4", aim: { walk: "w3", fact: "symptom" } },
    ]);
  });
  test("a list of somebody else's is not heard", async () => {
    const { door, desk, slack } = await opened();
    const foreign = { type: "static_select", action_id: "answer_0", block_id: "b1", selected_option: { value: "x" } };
    await sendPayload(door, press(slack, "button-in-thread", { actions: [foreign] }));
    await sendEvent(door, fixture("message-im", { event: { text: "the next one" } }));
    await slack.call("chat.postMessage");
    expect(desk.asked.map(({ text }) => text)).toEqual(["the next one"]);
  });
});
