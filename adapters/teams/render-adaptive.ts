import type { Block, Card, ChartBlock, TableBlock } from "../../src/messages/card.ts";
import { type Fold, gatherFolds } from "../../src/messages/gather-folds.ts";
import type { Language } from "../../src/messages/language.ts";
import type { AdaptiveCard, AdaptiveElement } from "./adaptive-card.ts";
import { breakUpBlock } from "./break-up-block.ts";
import {
  ENVELOPE_BYTES,
  MOST_ACTIVITY_BYTES,
  MOST_CATALOGUE_WORD_CHARACTERS,
  MOST_SUMMARY_CHARACTERS,
  MOST_TITLE_CHARACTERS,
  measureJson,
} from "./limits.ts";
import { cutText, paragraphs, plainLine, run, takeStart } from "./plain-text.ts";
import type { CardMessage } from "./port.ts";
import { renderButtons } from "./render-buttons.ts";
import { renderChoice, renderDayPick } from "./render-choice.ts";
import { renderFold } from "./render-fold.ts";
import { renderForm } from "./render-form.ts";
import { renderRows, renderTable } from "./render-rows.ts";
import {
  headingElements,
  renderCaution,
  renderHeadline,
  renderProgress,
  renderQuestion,
  renderTextBlock,
} from "./render-text.ts";
import { VERDICT_SIGNS } from "./signs.ts";
import type { Ask, Asker } from "./submit-data.ts";

export interface RenderOptions {
  readonly language: Language;
  /** Set in groups only: the person whose questions and forms these are. */
  readonly asker?: Asker;
}

/** A card as one message, or as several where one would be larger than Teams takes. */
export function renderAdaptive(card: Card, options: RenderOptions): readonly [CardMessage, ...CardMessage[]] {
  const ask = askOf(card, options.asker);
  const summary = plainLine(card.summary) || plainLine(card.title);
  const frame = (body: readonly AdaptiveElement[]) => frameCard(summary, body, options.language);
  const room = MOST_ACTIVITY_BYTES - ENVELOPE_BYTES - measureJson(JSON.stringify(frame([])));
  const [first, ...more] = packParts(listUnits(card, ask), room);
  return [frame(first), ...more.map(frame)];
}

/** A message of these elements; `said` stands for them in notifications and where no card is shown. */
export function frameCard(said: string, body: readonly AdaptiveElement[], language: Language): CardMessage {
  const summary = cutText(plainLine(said), MOST_SUMMARY_CHARACTERS);
  const adaptive: AdaptiveCard = {
    $schema: "http://adaptivecards.io/schemas/adaptive-card.json",
    type: "AdaptiveCard",
    version: "1.5",
    lang: language,
    fallbackText: summary,
    // Spoken text may be read as markup, so the characters of markup are left out.
    speak: summary.replace(/[<>&]/g, " "),
    body,
  };
  return { card: adaptive, summary };
}

/** A card asks when it has a question or a form; its title stands for it when there is nothing else to lose on it. */
function askOf(card: Card, asker: Asker | undefined): Ask | undefined {
  if (!card.blocks.some(({ kind }) => kind === "question" || kind === "form")) return undefined;
  const asksOnly = card.verdict === undefined && card.blocks.every(({ kind }) => ASKING_BLOCKS.has(kind));
  return {
    ...(asksOnly && { title: cutText(plainLine(questionOf(card)), MOST_TITLE_CHARACTERS) }),
    ...(asker && { asker }),
  };
}

const ASKING_BLOCKS: ReadonlySet<Block["kind"]> = new Set(["question", "form", "buttons", "text"]);

function questionOf(card: Card): string {
  for (const block of card.blocks) {
    if (block.kind === "question") return block.prompt;
    if (block.kind === "form") return block.title;
  }
  return card.title;
}

/** What should stay in one message: how to draw it, and how to part it when it is too large. */
interface Unit {
  readonly draw: () => readonly AdaptiveElement[];
  readonly parts: () => readonly Unit[];
  /** Set when it is too large beyond doubt, so that it is not drawn in vain. */
  readonly isHuge?: boolean;
}

function listUnits(card: Card, ask: Ask | undefined): readonly Unit[] {
  const title = takeStart(card.title, MOST_TITLE_CHARACTERS);
  const rest = card.title.slice(title.length);
  const head: Unit = { draw: () => [...headingElements(title), ...verdictElements(card)], parts: () => [] };
  const blocks = rest ? [{ kind: "text", tone: "plain", text: rest } as const, ...card.blocks] : card.blocks;
  const parts = gatherFolds(blocks.flatMap(partChart));
  const units: Unit[] = [head];
  for (let index = 0; index < parts.length; index++) {
    const [part, next] = [parts[index], parts[index + 1]];
    if (part === undefined) continue;
    const unit = part.kind === "fold" ? foldUnit(part, `d${index}`, ask) : unitOf(part, index, ask);
    if (part.kind !== "question" || next?.kind !== "buttons") units.push(unit);
    else {
      units.push(joinUnits(unit, unitOf(next, index, ask)));
      index++;
    }
  }
  return units;
}

/** The numbers of a chart are folded under it. */
function partChart(block: Block): readonly Block[] {
  return block.kind === "chart" ? [block, { ...block.table, isDetail: true }] : [block];
}

/** A fold that is too large becomes one for each of its blocks, and then for each part of a block. */
function foldUnit(fold: Fold, id: string, ask: Ask | undefined): Unit {
  const { title, blocks } = fold;
  const smaller = blocks.length > 1 ? blocks : blocks.flatMap(breakUpBlock);
  return {
    draw: () =>
      renderFold(
        title,
        blocks.flatMap((block, index) => renderFolded(block, index, ask)),
        id,
      ),
    parts: () => smaller.map((block, index) => foldUnit({ ...fold, blocks: [block] }, `${id}_${index}`, ask)),
    isHuge: JSON.stringify(blocks).length > MOST_ACTIVITY_BYTES,
  };
}

/** A table's caption stands on the fold already. */
function renderFolded(block: Block, index: number, ask: Ask | undefined): AdaptiveElement[] {
  return renderBlock(block.kind === "table" ? uncaptioned(block) : block, index, ask);
}

function uncaptioned(table: TableBlock): TableBlock {
  return { ...table, caption: "" };
}

function unitOf(block: Block, index: number, ask: Ask | undefined): Unit {
  return {
    draw: () => renderBlock(block, index, ask),
    parts: () => breakUpBlock(block).map((part) => unitOf(part, index, ask)),
    isHuge: block.kind !== "chart" && JSON.stringify(block).length > MOST_ACTIVITY_BYTES,
  };
}

function joinUnits(...units: readonly Unit[]): Unit {
  return {
    draw: () => units.flatMap(({ draw }) => draw()),
    parts: () => units,
    isHuge: units.some(({ isHuge }) => isHuge),
  };
}

function verdictElements(card: Card): readonly AdaptiveElement[] {
  if (card.verdict === undefined) return [];
  const { shape, style } = VERDICT_SIGNS[card.verdict.kind];
  const word = cutText(plainLine(card.verdict.word), MOST_CATALOGUE_WORD_CHARACTERS);
  const inlines = [run(`${shape} ${word}`, { weight: "bolder", size: "medium" })];
  return [{ type: "Container", style, bleed: true, items: [{ type: "RichTextBlock", inlines }] }];
}

function renderBlock(block: Block, index: number, ask: Ask | undefined): AdaptiveElement[] {
  switch (block.kind) {
    case "headline":
      return renderHeadline(block);
    case "text":
      return renderTextBlock(block);
    case "rows":
      return renderRows(block);
    case "table":
      return renderTable(block);
    case "caution":
      return renderCaution(block);
    case "question":
      return block.day === undefined || ask === undefined
        ? renderQuestion(block)
        : [...renderQuestion(block), ...renderDayPick(block.day, block.prompt, ask, index)];
    case "buttons":
      return [...(renderChoice(block.buttons, ask, index) ?? renderButtons(block.buttons, ask))];
    case "form":
      return renderForm(block, index, ask);
    case "chart":
      return renderChart(block);
    case "progress":
      return renderProgress(block);
    case "file":
      return [...paragraphs(block.text)];
  }
}

/** The title and a text that says the same as the picture, which follows where it can. */
function renderChart({ title, alt }: ChartBlock): AdaptiveElement[] {
  return [...headingElements(title), ...paragraphs(alt)];
}

type Body = readonly AdaptiveElement[];

/** Fills one message after the other; what is too large for a message of its own is broken up first. */
function packParts(units: readonly Unit[], room_B: number): readonly [Body, ...Body[]] {
  const bodies: [AdaptiveElement[], ...AdaptiveElement[][]] = [[]];
  let left_B = room_B;
  const queue = [...units];
  for (let unit = queue.shift(); unit !== undefined; unit = queue.shift()) {
    const elements = unit.isHuge ? [] : unit.draw();
    const size_B = unit.isHuge ? Number.POSITIVE_INFINITY : measureJson(JSON.stringify(elements));
    if (size_B > room_B) queue.unshift(...unit.parts());
    else if (size_B <= left_B) {
      bodies[bodies.length - 1]?.push(...elements);
      left_B -= size_B;
    } else {
      bodies.push([...elements]);
      left_B = room_B - size_B;
    }
  }
  return bodies;
}
