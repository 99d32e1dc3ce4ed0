/** A piece of a page that is safe as it stands. Only `html` makes one, so a plain string is always escaped. */
export class SafeHtml {
  readonly #text: string;
  constructor(parts: TemplateStringsArray, values: readonly HtmlValue[]) {
    this.#text = parts.map((part, index) => part + toHtml(values[index])).join("");
  }
  toString(): string {
    return this.#text;
  }
}

type HtmlValue = SafeHtml | readonly SafeHtml[] | string | number | undefined;

/** Writes HTML: everything put in is escaped, for element content and for quoted attributes alike. */
export function html(parts: TemplateStringsArray, ...values: readonly HtmlValue[]): SafeHtml {
  return new SafeHtml(parts, values);
}

function toHtml(value: HtmlValue): string {
  if (value === undefined) return "";
  if (typeof value === "string" || typeof value === "number") return escapeHtml(String(value));
  return value instanceof SafeHtml ? value.toString() : value.join("\n");
}

/** Control characters other than tab and newline, which no page may hold, and halves of characters. */
const UNPRINTABLE = /[^\P{Cc}\t\n]/gu;
const HALF_CHARACTER = /\p{Surrogate}/gu;
const ESCAPES: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};

/** The same text for a reader of the page, whatever characters it holds. */
function escapeHtml(text: string): string {
  return text
    .replace(UNPRINTABLE, "")
    .replace(HALF_CHARACTER, "\uFFFD")
    .replace(/[&<>"']/g, (character) => ESCAPES[character] ?? "");
}
