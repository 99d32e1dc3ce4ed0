import type { FileBlock } from "../../src/messages/card.ts";
import { html, type SafeHtml } from "./html.ts";
import type { Place } from "./place.ts";
import { isPicture } from "./send-file.ts";
import { paperSign } from "./signs.ts";

/** A photo small, and whole when it is pressed; anything else as something to take along, with its size. */
export function renderFile({ file, text }: FileBlock, { id, texts, fileOf }: Place): SafeHtml {
  const about = html`<span class="file-text" id="${id}-text" dir="auto">${text}</span> <span class="note"><bdi>${file.name}</bdi>, ${saySize(file.size_B)}</span>`;
  if (fileOf === undefined) return html`<p class="file">${about}</p>`;
  const href = fileOf(file);
  if (isPicture(file))
    return html`<figure class="file file-photo" aria-labelledby="${id}-text">
<a class="photo" href="${href}" target="_blank" rel="noopener" aria-label="${texts.openPhoto(text)}"><img src="${href}" alt="${text}" loading="lazy" decoding="async"></a>
<figcaption>${about}</figcaption>
</figure>`;
  return html`<p class="file"><a class="button paper" href="${href}" download="${file.name}" aria-label="${texts.download(text, file.name)}">${paperSign}<span class="file-about">${about}</span></a></p>`;
}

/** In steps of a thousand, as phones say it. */
export function saySize(size_B: number): string {
  if (size_B < 1000) return `${size_B} B`;
  if (size_B < 999_500) return `${Math.round(size_B / 1000)} kB`;
  return `${(size_B / 1_000_000).toFixed(1)} MB`;
}
