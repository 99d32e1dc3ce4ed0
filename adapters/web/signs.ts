import type { Severity, Verdict } from "../../src/declaration/answer.ts";
import { html, type SafeHtml } from "./html.ts";

/**
 * A little tank beside the verdict's word: full, half, empty and struck out, or with a plain line. The four differ in
 * shape, so that they stay apart without colour and on paper.
 */
export function verdictSign(verdict: Verdict): SafeHtml {
  return html`<svg class="sign" viewBox="0 0 24 24" aria-hidden="true" focusable="false"><rect x="6" y="2.5" width="12" height="19" rx="3.5" class="sign-line"/>${TANK_FILL[verdict]}</svg>`;
}

const LAYERS_FROM_TOP = [5, 9.5, 14].map(
  (y) => html`<rect x="8.5" y="${y}" width="7" height="3.5" class="sign-fill"/>`,
);
const TANK_FILL: Readonly<Record<Verdict, SafeHtml>> = {
  good: html`${LAYERS_FROM_TOP}`,
  caution: html`${LAYERS_FROM_TOP.slice(1)}`,
  no: html`<path d="M2.5 19.5 21.5 4.5" class="sign-line"/>`,
  info: html`<path d="M9 8h6M9 12h6M9 16h3" class="sign-line"/>`,
};

/** A sheet with a folded corner. */
export const paperSign: SafeHtml = html`<svg class="sign" viewBox="0 0 24 24" aria-hidden="true" focusable="false"><path d="M5 2.5h9l5 5v14H5z" class="sign-line"/><path d="M14 2.5v5h5M8.5 12.5h7M8.5 16.5h7" class="sign-line"/></svg>`;
/** A clip that holds papers together. */
export const attachSign: SafeHtml = html`<svg class="sign" viewBox="0 0 24 24" aria-hidden="true" focusable="false"><path d="M17 7v9.5a5 5 0 0 1-10 0V6.5a3.5 3.5 0 0 1 7 0V16a1.75 1.75 0 0 1-3.5 0V8" class="sign-line"/></svg>`;
/** A camera seen from the front. */
export const cameraSign: SafeHtml = html`<svg class="sign" viewBox="0 0 24 24" aria-hidden="true" focusable="false"><path d="M2.5 7.5h5l2-3h5l2 3h5v12h-19z" class="sign-line"/><circle cx="12" cy="13" r="3.5" class="sign-line"/></svg>`;

/** A shape for each weight of a caution, the word for it always stands beside it. */
export function severitySign(severity: Severity): SafeHtml {
  return html`<svg class="sign" viewBox="0 0 24 24" aria-hidden="true" focusable="false">${SEVERITY_SHAPE[severity]}</svg>`;
}

const SEVERITY_SHAPE: Readonly<Record<Severity, SafeHtml>> = {
  stop: html`<path d="M8 2h8l6 6v8l-6 6H8l-6-6V8z" class="sign-fill"/><path d="M6.5 12h11" class="sign-gap"/>`,
  must: html`<path d="M12 2.5 22.5 21h-21z" class="sign-fill"/><path d="M12 9v5.5M12 17v1.5" class="sign-gap"/>`,
  should: html`<path d="M12 2 22 12 12 22 2 12z" class="sign-line"/><path d="M12 8v5M12 15.5v1" class="sign-line"/>`,
  note: html`<circle cx="12" cy="12" r="9.5" class="sign-line"/><path d="M12 11v6M12 7v1" class="sign-line"/>`,
};
