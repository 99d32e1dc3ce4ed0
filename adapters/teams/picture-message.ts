import type { ChartBlock } from "../../src/messages/card.ts";
import type { Language } from "../../src/messages/language.ts";
import { ENVELOPE_BYTES, MOST_ACTIVITY_BYTES, MOST_PICTURE_TEXT_CHARACTERS } from "./limits.ts";
import { cutText, plainLine } from "./plain-text.ts";
import type { CardMessage } from "./port.ts";
import { frameCard } from "./render-adaptive.ts";

/** Draws a chart as a PNG file of at most so many bytes; nothing when it does not fit. */
export type DrawPngWithin = (block: ChartBlock, most_B: number) => Promise<Uint8Array | undefined>;

const START = "data:image/png;base64,";

/**
 * A message with the picture of a chart inside of it, which works in personal chats, groups and teams and needs no
 * public address: https://learn.microsoft.com/microsoftteams/platform/bots/how-to/agents-inline-images. That page and
 * "Format your bot messages" leave such pictures out of the limit for a message, but name none for them; so it is kept
 * within the bytes that every message of ours is kept within.
 * @returns nothing when the chart does not fit; its table says the same
 */
export async function pictureMessage(
  block: ChartBlock,
  language: Language,
  draw: DrawPngWithin,
): Promise<CardMessage | undefined> {
  const altText = cutText(plainLine(block.alt), MOST_PICTURE_TEXT_CHARACTERS);
  const frame = (url: string) =>
    frameCard(
      block.title,
      [{ type: "Image", url, altText, size: "stretch", msteams: { allowExpand: true } }],
      language,
    );
  const room_B = MOST_ACTIVITY_BYTES - ENVELOPE_BYTES - Buffer.byteLength(JSON.stringify(frame(START)));
  const png = await draw(block, Math.floor(room_B / 4) * 3);
  return png && frame(`${START}${Buffer.from(png).toString("base64")}`);
}
