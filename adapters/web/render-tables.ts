import type { ChartBlock, Row, RowsBlock, TableBlock } from "../../src/messages/card.ts";
import { html, type SafeHtml } from "./html.ts";
import type { Place } from "./place.ts";

/** A longer table stands folded, so that a thumb need not travel past it. */
const MOST_OPEN_ROWS = 20;
/** More columns do not fit beside each other on a phone, where each row becomes a small list. */
const MOST_PHONE_COLUMNS = 4;
/** A cell that is nothing but a bar drawn in blocks; the number beside it says the same. */
const BAR = /^[█░]+$/;

/** Label and value pairs. */
export function renderRows(block: RowsBlock): SafeHtml {
  const list = html`<dl class="rows">${block.rows.map(renderRow)}</dl>`;
  if (block.heading === undefined) return list;
  return html`<div class="rows-section">
<h3 class="block-heading" dir="auto">${block.heading}</h3>
${list}
</div>`;
}

function renderRow({ label, value, note }: Row): SafeHtml {
  const remark = note === undefined ? undefined : html`<dd class="note" dir="auto">${note}</dd>`;
  return html`<div class="row"><dt dir="auto">${label}</dt><dd class="value" dir="auto">${value}</dd>${remark}</div>`;
}

/** A table that can be scrolled sideways by touch and by keyboard when it is wider than the screen. */
export function renderTable(block: TableBlock, { id, texts }: Place): SafeHtml {
  if (block.rows.length <= MOST_OPEN_ROWS) return renderGrid(block, id);
  return html`<details class="fold" aria-labelledby="${id}-fold">
<summary id="${id}-fold"><span dir="auto">${block.caption}</span> <span class="note">(${texts.rowCount(block.rows.length)})</span></summary>
${renderGrid(block, id)}
</details>`;
}

/** The roles are written out, because a table that is laid out as lists would lose them. */
export function renderGrid({ caption, columns, rows }: TableBlock, id: string): SafeHtml {
  const head = columns.map((column) => html`<th scope="col" role="columnheader" dir="auto">${column}</th>`);
  const body = rows.map(([first = "", ...rest]) => {
    const cells = rest.map((cell, index) => renderCell(cell, columns[index + 1] ?? ""));
    return html`<tr role="row"><th scope="row" role="rowheader" data-label="${columns[0] ?? ""}" dir="auto">${first}</th>${cells}</tr>`;
  });
  const look = columns.length > MOST_PHONE_COLUMNS ? "table-wide" : "table-narrow";
  return html`<div class="table-frame" role="region" tabindex="0" aria-labelledby="${id}-caption">
<table class="${look}" role="table">
<caption id="${id}-caption" dir="auto">${caption}</caption>
<thead role="rowgroup"><tr role="row">${head}</tr></thead>
<tbody role="rowgroup">${body}</tbody>
</table>
</div>`;
}

function renderCell(cell: string, column: string): SafeHtml {
  if (BAR.test(cell)) return html`<td role="cell" class="bar"><span aria-hidden="true">${cell}</span></td>`;
  return html`<td role="cell" data-label="${column}" dir="auto">${cell}</td>`;
}

/** What a picture shows, in words and in numbers. */
export function renderChart(block: ChartBlock, { id, texts, pictureOf }: Place): SafeHtml {
  return html`<figure class="chart" aria-labelledby="${id}-title">
<figcaption class="block-heading" id="${id}-title" dir="auto">${block.title}</figcaption>
${
  pictureOf
    ? html`<div class="chart-frame" role="region" tabindex="0" aria-labelledby="${id}-title"><img class="chart-picture" src="${pictureOf(block)}" alt="${block.alt}"></div>`
    : html`<p class="chart-alt" dir="auto">${block.alt}</p>`
}
<details class="fold" aria-labelledby="${id}-fold">
<summary id="${id}-fold">${texts.numbers}</summary>
${renderGrid(block.table, id)}
</details>
</figure>`;
}
