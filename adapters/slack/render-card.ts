import type { HeaderBlock, KnownBlock } from "@slack/types";
import type { Block, Button, Card } from "../../src/messages/card.ts";
import type { Rendered } from "./block-groups.ts";
import { LIMITS } from "./limits.ts";
import { renderBlock } from "./render-block.ts";
import { plainObject } from "./rich-text.ts";
import { VERDICT_SHAPES } from "./shapes.ts";
import { fitEscaped, fitRaw } from "./slack-text.ts";
import { splitMessages } from "./split-messages.ts";

/** One message as Slack takes it; `text` is for notifications and screen readers and is escaped. */
export interface SlackMessage {
  readonly text: string;
  readonly blocks: readonly KnownBlock[];
}
export interface RenderedCard {
  readonly messages: readonly [SlackMessage, ...SlackMessage[]];
  /** Buttons left out because Slack would not take what they say: a mistake of ours that the log must show. */
  readonly refused: readonly Button[];
}

/** A card in Block Kit, in one message or as many as the limits ask for. */
export function renderCard(card: Card): RenderedCard {
  const blocks = renderAll(card.blocks, card.title);
  const [first = [], ...others] = splitMessages([[renderTitle(card)], ...blocks.groups]);
  const total = others.length + 1;
  const title = fitRaw(card.title, LIMITS.headerText);
  return {
    messages: [
      { text: fitEscaped(card.summary, LIMITS.messageText), blocks: first },
      ...others.map((part, index) => ({
        text: fitEscaped(`${title} (${index + 2}/${total})`, LIMITS.messageText),
        blocks: part,
      })),
    ],
    refused: blocks.refused,
  };
}

function renderTitle({ verdict, title }: Card): HeaderBlock {
  const word = verdict === undefined ? "" : `${VERDICT_SHAPES[verdict.kind]} ${verdict.word}: `;
  return { type: "header", text: plainObject(word + title, LIMITS.headerText) };
}

/** All blocks of a card; buttons are numbered through, so that no two of one message share an id. */
export function renderAll(blocks: readonly Block[], title: string): Rendered {
  let firstButton = 0;
  const isDoneWith = blocks.some(({ kind }) => kind === "question" || kind === "progress");
  const buttonKind = isDoneWith ? "answer" : "say";
  const parts = blocks.map((block) => {
    const part = renderBlock(block, { firstButton, buttonKind, title });
    firstButton += buttonsOf(block);
    return part;
  });
  return { groups: parts.flatMap((part) => part.groups), refused: parts.flatMap((part) => part.refused) };
}

function buttonsOf(block: Block): number {
  if (block.kind === "buttons") return block.buttons.length;
  return block.kind === "form" ? 1 : 0;
}
