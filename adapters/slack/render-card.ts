import type { HeaderBlock, KnownBlock } from "@slack/types";
import type { Block, Button, Card } from "../../src/messages/card.ts";
import { isDetail } from "../../src/messages/gather-folds.ts";
import type { Rendered } from "./block-groups.ts";
import { LIMITS } from "./limits.ts";
import { renderBlock } from "./render-block.ts";
import { plainObject } from "./rich-text.ts";
import { VERDICT_SHAPES } from "./shapes.ts";
import { fitEscaped, fitRaw } from "./slack-text.ts";
import { capMessages, splitMessages } from "./split-messages.ts";

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

/**
 * A card in Block Kit, in one message or as many as the limits ask for. Details come in messages of their own after it,
 * so that the first one stays short; what asks stays whole, because it is taken away when it is answered.
 */
export function renderCard(card: Card): RenderedCard {
  const { open, details } = partDetails(card.blocks);
  const rendered = renderEach([...open, ...details], card.title);
  const groupsOf = (parts: readonly Rendered[]) => parts.flatMap(({ groups }) => groups);
  const lead = splitMessages([[renderTitle(card)], ...groupsOf(rendered.slice(0, open.length))]);
  const rest = details.length === 0 ? [] : splitMessages(groupsOf(rendered.slice(open.length)));
  const [first = [], ...others] = capMessages([...lead, ...rest]);
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
    refused: rendered.flatMap(({ refused }) => refused),
  };
}

interface Parted {
  readonly open: readonly Block[];
  readonly details: readonly Block[];
}

/** The numbers of a chart, whose picture follows where it can, go with the details where there are any. */
function partDetails(blocks: readonly Block[]): Parted {
  const all = blocks.flatMap(withNumbers);
  if (isDoneWith(blocks)) return { open: all.map(asDetail), details: [] };
  const details = blocks.filter(isDetail);
  const numbers = details.length === 0 ? [] : all.filter((block) => !blocks.includes(block));
  const open = all.filter((block) => !isDetail(block) && !numbers.includes(block));
  const table = open.find(({ kind }) => kind === "table");
  return {
    open: open.map((block) => (block === table ? block : asDetail(block))),
    details: [...details, ...numbers.map(asDetail)],
  };
}

function withNumbers(block: Block): readonly Block[] {
  return block.kind === "chart" ? [block, block.table] : [block];
}

/** One message takes one table: in a card that must stay whole, and after the first table, others are written as lines. */
function asDetail(block: Block): Block {
  return block.kind === "table" ? { ...block, isDetail: true } : block;
}

/** True for a card that is taken away once it is answered, and whose buttons go with it. */
function isDoneWith(blocks: readonly Block[]): boolean {
  return blocks.some(({ kind }) => kind === "question" || kind === "progress");
}

export function renderTitle({ verdict, title }: Card): HeaderBlock {
  const word = verdict === undefined ? "" : `${VERDICT_SHAPES[verdict.kind]} ${verdict.word}: `;
  return { type: "header", text: plainObject(word + title, LIMITS.headerText) };
}

/** All blocks of a card. */
export function renderAll(blocks: readonly Block[], title: string): Rendered {
  const parts = renderEach(blocks, title);
  return { groups: parts.flatMap((part) => part.groups), refused: parts.flatMap((part) => part.refused) };
}

/** Each block of a card; buttons are numbered through, so that no two of one message share an id. */
function renderEach(blocks: readonly Block[], title: string): readonly Rendered[] {
  let firstButton = 0;
  const buttonKind = isDoneWith(blocks) ? "answer" : "say";
  return blocks.map((block) => {
    const part = renderBlock(block, { firstButton, buttonKind, title });
    firstButton += buttonsOf(block);
    return part;
  });
}

function buttonsOf(block: Block): number {
  if (block.kind === "buttons") return block.buttons.length;
  if (block.kind === "question") return block.day === undefined ? 0 : 1;
  return block.kind === "form" ? 1 : 0;
}
