import type { Card, ChartBlock } from "../../src/messages/card.ts";
import type { DoorLog } from "./door-log.ts";
import type { Place } from "./heard.ts";
import type { SlackCalls } from "./slack-calls.ts";

/** Draws a chart as a PNG file. */
export type DrawPng = (block: ChartBlock) => Promise<Uint8Array>;

/**
 * Sends the pictures of a card after it, into the same thread. Nothing waits for them: the card has the title, the text
 * and the table of every chart already, so a picture that cannot be drawn or sent (most often because the bot is no
 * member of the channel) is logged and otherwise not missed. Never throws.
 */
export async function sendPictures(
  card: Card,
  { channel, thread }: Place,
  calls: SlackCalls,
  draw: DrawPng,
  log: DoorLog,
): Promise<void> {
  for (const block of card.blocks) {
    if (block.kind !== "chart") continue;
    try {
      const { alt, title } = block;
      const picture = { name: `${block.chart.id}.png`, title, alt, type: "image/png", bytes: await draw(block) };
      await calls.upload({ channel, ...(thread !== undefined && { thread }) }, picture);
    } catch (error) {
      log.warn({ error, chart: block.chart.id }, "a picture could not be sent; its table was");
    }
  }
}
