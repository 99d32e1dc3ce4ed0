import type { Block, ButtonsBlock, Card, CautionBlock, ProgressBlock, TextBlock } from "../../src/messages/card.ts";
import { type Fold, gatherFolds } from "../../src/messages/gather-folds.ts";
import type { Language } from "../../src/messages/language.ts";
import { html, type SafeHtml } from "./html.ts";
import { type Place, placeBlock, placeCard } from "./place.ts";
import { renderButtons, renderQuestion } from "./render-buttons.ts";
import { renderFile } from "./render-file.ts";
import { renderForm } from "./render-form.ts";
import { renderChart, renderGrid, renderRows, renderTable } from "./render-tables.ts";
import { severitySign, verdictSign } from "./signs.ts";

export interface HtmlOptions {
  /** Letters, digits, `-` and `_`, different for every card of a page. */
  readonly id: string;
  readonly language: Language;
  /** Where the picture of a chart is found; absent where none are drawn. */
  readonly pictureOf?: NonNullable<Place["pictureOf"]>;
  /** Where a kept file is found; absent where none are handed over. */
  readonly fileOf?: NonNullable<Place["fileOf"]>;
}

/** A card as one article of a page: headings, lists, tables and real buttons, every text escaped. */
export function renderHtml(card: Card, { id, language, ...found }: HtmlOptions): string {
  const place = placeCard(id, language, found);
  const verdict = card.verdict;
  return html`<article class="card" lang="${language}" aria-labelledby="${id}-title">
<header class="card-head">
<h2 class="card-title" id="${id}-title" dir="auto">${card.title}</h2>
${verdict ? html`<p class="verdict verdict-${verdict.kind}">${verdictSign(verdict.kind)}<span dir="auto">${verdict.word}</span></p>` : undefined}
</header>
${renderParts(gatherFolds(card.blocks), place)}
</article>`.toString();
}

type Part = Block | Fold;

function renderParts(parts: readonly Part[], card: Place): readonly SafeHtml[] {
  return parts.flatMap((part, index) => {
    const before = parts[index - 1];
    if (part.kind === "buttons" && before?.kind === "question") return [];
    const place = placeBlock(card, index);
    return [part.kind === "fold" ? renderFold(part, place) : renderBlock(part, answersOf(parts[index + 1]), place)];
  });
}

/** Details under their title, opened by a tap; how many rows a table has stands beside it. */
function renderFold({ title, blocks }: Fold, place: Place): SafeHtml {
  const { id, texts } = place;
  const rows = blocks.flatMap((block) => (block.kind === "table" || block.kind === "rows" ? [block.rows.length] : []));
  const [count] = rows;
  return html`<details class="fold" aria-labelledby="${id}-fold">
<summary id="${id}-fold"><span dir="auto">${title}</span>${count === undefined ? undefined : html` <span class="note">(${texts.rowCount(count)})</span>`}</summary>
<div class="fold-body">${blocks.map((block, index) => renderFolded(block, placeBlock(place, index)))}</div>
</details>`;
}

/** A table is folded already, however long it is. */
function renderFolded(block: Block, place: Place): SafeHtml {
  return block.kind === "table" ? renderGrid(block, place.id) : renderBlock(block, undefined, place);
}

/** The buttons that follow a question are its answers and stand in its group. */
function answersOf(next: Part | undefined): ButtonsBlock | undefined {
  return next?.kind === "buttons" ? next : undefined;
}

function renderBlock(block: Block, answers: ButtonsBlock | undefined, place: Place): SafeHtml {
  switch (block.kind) {
    case "headline":
      return html`<p class="headline" dir="auto">${block.text}</p>`;
    case "text":
      return renderText(block);
    case "rows":
      return renderRows(block);
    case "table":
      return renderTable(block, place);
    case "caution":
      return renderCaution(block, place);
    case "question":
      return renderQuestion(block, answers, place);
    case "buttons":
      return renderButtons(block, place);
    case "form":
      return renderForm(block, place);
    case "chart":
      return renderChart(block, place);
    case "progress":
      return renderProgress(block, place);
    case "file":
      return renderFile(block, place);
  }
}

function renderText({ tone, text }: TextBlock): SafeHtml {
  if (tone === "heading") return html`<h3 class="block-heading" dir="auto">${text}</h3>`;
  return html`<p class="text text-${tone}" dir="auto">${text}</p>`;
}

function renderCaution(block: CautionBlock, { id, texts }: Place): SafeHtml {
  return html`<section class="caution caution-${block.severity}" role="note" aria-labelledby="${id}-word">
<h3 class="caution-word" id="${id}-word">${severitySign(block.severity)}<span dir="auto">${block.word}</span></h3>
<p class="caution-text" dir="auto">${block.text}</p>
${block.show === undefined ? undefined : html`<p class="caution-show"><b>${texts.show}</b> <bdi>${block.show}</bdi></p>`}
<p class="caution-cites">${texts.cites} <cite dir="auto">${block.cites}</cite></p>
</section>`;
}

function renderProgress(block: ProgressBlock, { id }: Place): SafeHtml {
  return html`<div class="progress">
<label for="${id}-bar" dir="auto">${block.text}</label>
<progress id="${id}-bar" value="${block.done}" max="${block.total}"></progress>
</div>`;
}
