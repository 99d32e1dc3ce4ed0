import { App, HTTPReceiver, LogLevel } from "@slack/bolt";
import { openSlackDoor } from "../../adapters/slack/open-slack-door.ts";
import { renderCard } from "../../adapters/slack/render-card.ts";
import type { Desk } from "../../src/desk.ts";
import { SAMPLE_CARDS } from "../support/sample-cards.ts";

/*
 * One side of the comparison in a process of its own: `door` or `bare`, and whether an answer is posted after the
 * acknowledgement. Prints its address; ends when its parent does.
 */
const [, , side, mode, secret = "", sinkUrl = ""] = process.argv;
const answers = mode === "answer";
const card = SAMPLE_CARDS["answer"] ?? { title: "", summary: "", blocks: [] };

async function openDoor(): Promise<string> {
  // A repeat is acknowledged and asked of the desk like any other, but nothing is posted.
  const desk: Desk = { receive: async () => ({ card, isRepeat: !answers }) };
  const log = { info: () => {}, warn: () => {}, error: () => {} };
  const settings = { signingSecret: secret, botToken: "xoxb-invented", host: "127.0.0.1", port: 0, apiUrl: sinkUrl };
  return (await openSlackDoor({ desk, settings, log })).url;
}

/** Bolt as its own examples use it: a command that is acknowledged and, if asked, answered by its response address. */
async function openBare(): Promise<string> {
  const receiver = new HTTPReceiver({ signingSecret: secret, logLevel: LogLevel.ERROR });
  const authorize = async () => ({ botToken: "xoxb-invented" });
  const app = new App({ receiver, authorize, logLevel: LogLevel.ERROR });
  const [{ text, blocks }] = renderCard(card).messages;
  app.command("/oldhand", async ({ ack, respond }) => {
    await ack();
    if (answers) await respond({ response_type: "in_channel", text, blocks: [...blocks] });
  });
  const server = await receiver.start({ port: 0, host: "127.0.0.1" });
  const address = server.address();
  return `http://127.0.0.1:${typeof address === "object" ? address?.port : address}`;
}

process.send?.(await (side === "door" ? openDoor() : openBare()));
process.on("disconnect", () => process.exit(0));
