import type { Block, CautionBlock, ChartBlock, FormBlock, QuestionBlock, TextBlock } from "../../src/messages/card.ts";
import { type BlockGroup, type Rendered, rendered } from "./block-groups.ts";
import { LIMITS } from "./limits.ts";
import { type ButtonKind, renderButtons, renderDayPick } from "./render-buttons.ts";
import { renderProgress, renderRows } from "./render-rows.ts";
import { mayBeLines, renderTable, renderTableLines } from "./render-table.ts";
import { bold, plain, quietBlocks, richParagraphs, richQuote } from "./rich-text.ts";
import { PROBLEM_SHAPE, SEVERITY_SHAPES, SHOW_ARROW } from "./shapes.ts";
import { fitRaw, splitText } from "./slack-text.ts";

/** The text that asks for a topic's form again, when its button in a message is pressed. */
function sayForForm(form: FormBlock): string {
  return `form ${form.topic}`;
}

/** What a block must know of its card. */
export interface CardContext {
  /** Number of the block's first button, so that every button of a card has its own id. */
  readonly firstButton: number;
  readonly buttonKind: ButtonKind;
  readonly title: string;
}

/** One block of a card in Block Kit. */
export function renderBlock(block: Block, context: CardContext): Rendered {
  switch (block.kind) {
    case "headline":
      return rendered(richParagraphs(block.text, bold));
    case "text":
      return rendered(renderText(block));
    case "rows":
      return rendered(renderRows(block));
    case "table":
      return rendered(...(mayBeLines(block) ? renderTableLines(block) : renderTable(block)));
    case "caution":
      return rendered(renderCaution(block));
    case "question":
      return rendered(renderQuestion(block, context));
    case "buttons":
      return renderButtons(block.buttons, context.firstButton, context.buttonKind);
    case "form":
      return renderFormOffer(block, context);
    case "chart":
      return rendered(renderChart(block));
    case "progress":
      return rendered(renderProgress(block));
    case "file":
      return rendered(richParagraphs(block.text, plain));
  }
}

function renderText({ tone, text }: TextBlock): BlockGroup {
  switch (tone) {
    case "plain":
      return richParagraphs(text, plain);
    case "quiet":
      return quietBlocks(text);
    case "heading":
      return richParagraphs(text, bold);
    case "problem":
      return richParagraphs(`${PROBLEM_SHAPE} ${text}`, plain);
  }
}

/** A caution is never cut: what protects people is spread over as many quotes as it takes. */
function renderCaution({ severity, word, text, show, cites }: CautionBlock): BlockGroup {
  const head = bold(`${SEVERITY_SHAPES[severity]} ${fitRaw(word, LIMITS.rowPart)}\n`);
  const [first = "", ...others] = splitText(text, LIMITS.sectionText - LIMITS.rowPart, false);
  const showing = show === undefined ? [] : splitText(`${SHOW_ARROW} ${show}`, LIMITS.sectionText, false);
  return [
    richQuote([head, plain(first)]),
    ...[...others, ...showing].map((part) => richQuote([plain(part)])),
    ...quietBlocks(cites),
  ];
}

function renderQuestion({ prompt, help, progress, day }: QuestionBlock, context: CardContext): BlockGroup {
  return [
    ...richParagraphs(prompt, bold),
    ...(help === undefined ? [] : quietBlocks(help)),
    ...(progress === undefined ? [] : quietBlocks(progress)),
    ...(day === undefined ? [] : renderDayPick(day, context.firstButton)),
  ];
}

/** In a message a form is a button that opens it. */
function renderFormOffer(form: FormBlock, { firstButton, title }: CardContext): Rendered {
  const problems = form.fields.flatMap(({ label, problem }) =>
    problem === undefined ? [] : richParagraphs(`${PROBLEM_SHAPE} ${label}: ${problem}`, plain),
  );
  const open = renderButtons([{ label: title, say: sayForForm(form), style: "primary" }], firstButton, "say");
  return { groups: [[...richParagraphs(form.title, bold), ...problems, ...open.groups.flat()]], refused: open.refused };
}

/** A chart is its title and what it shows in words; its picture follows where it can, its numbers with the details. */
function renderChart({ title, alt }: ChartBlock): BlockGroup {
  return [...richParagraphs(title, bold), ...richParagraphs(alt, plain)];
}
