import { MOST_TEXT_CHARACTERS } from "../../src/boundary/web-message.ts";
import { LANGUAGES, type Language } from "../../src/messages/language.ts";
import { DOOR_TEXTS, type PageTexts } from "./door-texts.ts";
import { html, type SafeHtml } from "./html.ts";
import type { WebPerson } from "./web-people.ts";

export interface PageOptions {
  readonly people: readonly { readonly person: WebPerson; readonly language: Language }[];
  readonly company: { readonly name: string; readonly isInvented: boolean };
  /** Requests to try, offered as buttons, as a reader of each language would type them. */
  readonly examples: Readonly<Record<Language, readonly string[]>>;
}

/** The page before anything is said, in the language of the first person; the script changes it with the person. */
export function renderPage(options: PageOptions): string {
  const language = options.people[0]?.language ?? "en";
  const words = DOOR_TEXTS[language].page;
  return html`<!doctype html>
<html lang="${language}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1, interactive-widget=resizes-content">
<meta name="color-scheme" content="light dark">
<title>Oldhand</title>
<link rel="icon" href="/static/icon.svg" type="image/svg+xml">
<link rel="stylesheet" href="/static/palette.css">
<link rel="stylesheet" href="/static/page.css">
<link rel="stylesheet" href="/static/log.css">
<link rel="stylesheet" href="/static/card.css">
<script type="module" src="/static/app.js"></script>
</head>
<body class="is-empty" data-words="${JSON.stringify({ en: DOOR_TEXTS.en.page, es: DOOR_TEXTS.es.page })}">
<a class="skip" href="#message" data-word="skip">${words.skip}</a>
${renderRail(options, words, language)}
<div class="tank" aria-hidden="true"></div>
${renderDesk(options.examples, words)}
${renderTemplate()}
</body>
</html>
`.toString();
}

function renderRail({ people, company }: PageOptions, words: PageTexts, language: Language): SafeHtml {
  return html`<header class="rail">
<h1>Oldhand</h1>
<p class="company"><bdi>${company.name}</bdi></p>
${company.isInvented ? html`<p class="invented" data-word="invented">${words.invented}</p>` : undefined}
<button type="button" class="button button-plain" id="fresh" data-word="fresh">${words.fresh}</button>
<div class="setup" role="group" aria-label="${words.setup}" data-word-label="setup">
<label for="person" data-word="speaking">${words.speaking}</label>
<select class="input" id="person" autocomplete="off">${people.map((one) => renderPerson(one, language))}</select>
<button type="button" class="button button-plain" data-say="help" data-word="help">${words.help}</button>
</div>
</header>`;
}

function renderExamples(examples: readonly string[], language: Language): SafeHtml {
  const buttons = examples.map(
    (say) =>
      html`<li><button type="button" class="button button-example" data-say="${say}"><span dir="auto">${say}</span></button></li>`,
  );
  return html`<ul class="examples" role="list" lang="${language}">${buttons}</ul>`;
}

/** Stands where the log will be, until something is said. */
function renderOpening(examples: PageOptions["examples"], words: PageTexts): SafeHtml {
  return html`<section class="opening" aria-labelledby="opening-title">
<h2 id="opening-title" data-word="ask">${words.ask}</h2>
<p data-word="shows">${words.shows}</p>
<h3 class="block-heading" data-word="tryThese">${words.tryThese}</h3>
${LANGUAGES.map((language) => renderExamples(examples[language], language))}
</section>`;
}

function renderPerson({ person, language }: PageOptions["people"][number], pageLanguage: Language): SafeHtml {
  const roles = html` data-role-en="${DOOR_TEXTS.en.roles[person.role]}" data-role-es="${DOOR_TEXTS.es.roles[person.role]}"`;
  return html`<option value="${person.user}" data-name="${person.name}" data-language="${language}"${roles}>${person.name}, ${DOOR_TEXTS[pageLanguage].roles[person.role]}</option>`;
}

function renderDesk(examples: PageOptions["examples"], words: PageTexts): SafeHtml {
  return html`<main class="desk">
<noscript><p class="notice" data-word="noScript">${words.noScript}</p></noscript>
<p class="notice" id="not-kept" data-word="notKept" hidden>${words.notKept}</p>
${renderOpening(examples, words)}
<ol class="log" id="log" role="list" aria-label="${words.log}" data-word-label="log"></ol>
<p id="announcer" class="unseen" role="status" aria-live="polite"></p>
<form class="composer" id="composer">
<label for="message" data-word="message">${words.message}</label>
<textarea class="input" id="message" name="message" rows="1" maxlength="${MOST_TEXT_CHARACTERS}" dir="auto" enterkeyhint="send" autocomplete="off" autocapitalize="off" aria-describedby="keys"></textarea>
<button type="submit" class="button button-primary" data-word="send">${words.send}</button>
<p class="keys" id="keys" data-word="keys">${words.keys}</p>
</form>
</main>`;
}

/** One entry of the log, filled in by the script. */
function renderTemplate(): SafeHtml {
  return html`<template id="entry">
<li class="entry">
<div class="asked">
<p class="who"><bdi data-part="name"></bdi> <time data-part="time"></time></p>
<p class="said" data-part="said" dir="auto"></p>
</div>
<div class="state" data-part="state" hidden>
<span class="gauge" aria-hidden="true"></span>
<p data-part="word"></p>
<button type="button" class="button button-plain" data-part="act" hidden></button>
</div>
<div class="answer" data-part="answer"></div>
</li>
</template>`;
}
