import { MOST_FILES, MOST_TEXT_CHARACTERS } from "../../src/boundary/web-message.ts";
import { LANGUAGES, type Language } from "../../src/messages/language.ts";
import { DOOR_TEXTS, type PageTexts } from "./door-texts.ts";
import { html, type SafeHtml } from "./html.ts";
import { attachSign, cameraSign } from "./signs.ts";
import type { WebPerson } from "./web-people.ts";

export interface PageOptions {
  readonly people: readonly { readonly person: WebPerson; readonly language: Language }[];
  readonly company: { readonly name: string; readonly isInvented: boolean };
  /** Requests to try, offered as buttons, as a reader of each language would type them. */
  readonly examples: Readonly<Record<Language, readonly string[]>>;
  /** What to type for the day's work; left out where nothing answers it. */
  readonly today?: Readonly<Record<Language, string>> | undefined;
  /** True: there are channels to read beside the conversation. */
  readonly hasPosts?: boolean;
  /** Largest photo or paper [bytes]; left out where none can be sent. */
  readonly mostFile_bytes?: number;
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
<link rel="stylesheet" href="/static/posts.css">
<link rel="stylesheet" href="/static/files.css">
<script type="module" src="/static/app.js"></script>
</head>
<body class="is-empty" data-words="${JSON.stringify({ en: DOOR_TEXTS.en.page, es: DOOR_TEXTS.es.page })}">
<a class="skip" href="#message" data-word="skip">${words.skip}</a>
${renderRail(options, words, language)}
<div class="tank" aria-hidden="true"></div>
${renderDesk(options, words)}
${ENTRY_TEMPLATE}
${renderPostTemplates(words)}
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
function renderOpening({ examples, today }: PageOptions, words: PageTexts): SafeHtml {
  return html`<section class="opening" aria-labelledby="opening-title">
<h2 id="opening-title" data-word="ask">${words.ask}</h2>
<p data-word="shows">${words.shows}</p>
${today && LANGUAGES.map((language) => renderToday(today[language], language))}
<h3 class="block-heading" data-word="tryThese">${words.tryThese}</h3>
${LANGUAGES.map((language) => renderExamples(examples[language], language))}
</section>`;
}

function renderToday(say: string, language: Language): SafeHtml {
  return html`<p class="today" lang="${language}"><button type="button" class="button button-primary" data-say="${say}">${DOOR_TEXTS[language].page.today}</button></p>`;
}

function renderPerson({ person, language }: PageOptions["people"][number], pageLanguage: Language): SafeHtml {
  const roles = html` data-role-en="${DOOR_TEXTS.en.roles[person.role]}" data-role-es="${DOOR_TEXTS.es.roles[person.role]}"`;
  return html`<option value="${person.user}" data-name="${person.name}" data-language="${language}"${roles}>${person.name}, ${DOOR_TEXTS[pageLanguage].roles[person.role]}</option>`;
}

function renderDesk(options: PageOptions, words: PageTexts): SafeHtml {
  return html`<main class="desk" id="desk"${options.hasPosts ? html` data-posts="/posts"` : undefined}>
<noscript><p class="notice" data-word="noScript">${words.noScript}</p></noscript>
<p class="notice" id="not-kept" data-word="notKept" hidden>${words.notKept}</p>
<div class="tabs" id="tabs" aria-label="${words.views}" data-word-label="views" hidden></div>
<div class="panel" id="panel-chat">
${renderOpening(options, words)}
<ol class="log" id="log" role="list" aria-label="${words.log}" data-word-label="log"></ol>
${renderComposer(options, words)}
</div>
<p id="announcer" class="unseen" role="status" aria-live="polite"></p>
</main>`;
}

function renderComposer({ mostFile_bytes }: PageOptions, words: PageTexts): SafeHtml {
  return html`<form class="composer" id="composer">
<div class="composer-head"><label for="message" data-word="message">${words.message}</label>${mostFile_bytes === undefined ? undefined : renderAttach(mostFile_bytes, words)}</div>
${mostFile_bytes === undefined ? undefined : renderTray(words)}
<textarea class="input" id="message" name="message" rows="1" maxlength="${MOST_TEXT_CHARACTERS}" dir="auto" enterkeyhint="send" autocomplete="off" autocapitalize="off" aria-describedby="keys"></textarea>
<button type="submit" class="button button-primary" data-word="send">${words.send}</button>
<p class="keys" id="keys" data-word="keys">${words.keys}</p>
</form>`;
}

/** The camera is offered apart, because what a phone opens for files leaves it out now and then. */
function renderAttach(most_bytes: number, words: PageTexts): SafeHtml {
  return html`<div class="attach" id="attach" data-most-bytes="${most_bytes}" data-most-files="${MOST_FILES}">
<button type="button" class="button button-plain camera" data-pick="camera">${cameraSign}<span class="attach-word" data-word="camera">${words.camera}</span></button>
<button type="button" class="button button-plain" data-pick="papers">${attachSign}<span class="attach-word" data-word="attach">${words.attach}</span></button>
<input type="file" id="pick-camera" accept="image/*" capture="environment" tabindex="-1" aria-hidden="true" hidden>
<input type="file" id="pick-papers" accept="image/*,application/pdf" multiple tabindex="-1" aria-hidden="true" hidden>
</div>`;
}

/** What was chosen and not sent yet. */
function renderTray(words: PageTexts): SafeHtml {
  return html`<div class="tray" id="tray" hidden>
<p class="tray-problem" id="tray-problem" hidden></p>
<ul class="chips" id="tray-files" role="list" aria-label="${words.tray}" data-word-label="tray"></ul>
<p class="note" id="tray-total"></p>
</div>
<p class="drop-here" data-word="dropHere" aria-hidden="true">${words.dropHere}</p>`;
}

/** One entry of the log, filled in by the script. */
const ENTRY_TEMPLATE: SafeHtml = html`<template id="entry">
<li class="entry">
<div class="asked">
<p class="who"><bdi data-part="name"></bdi> <time data-part="time"></time></p>
<p class="said" data-part="said" dir="auto"></p>
<ul class="chips sent-files" data-part="files" role="list" hidden></ul>
<button type="button" class="button button-plain again" data-act="useAgain" data-part="again" data-word="useAgain" hidden></button>
</div>
<div class="state" data-part="state" hidden>
<span class="gauge" data-part="gauge" aria-hidden="true"></span>
<p data-part="word"></p>
<button type="button" class="button button-plain" data-part="act" hidden></button>
</div>
<div class="answer" data-part="answer"></div>
</li>
</template>`;

/** A channel and one post of it, filled in by the script. */
function renderPostTemplates(words: PageTexts): SafeHtml {
  return html`<template id="channel">
<section class="panel channel" role="tabpanel" tabindex="0" hidden>
<h2 class="channel-title" data-part="title"></h2>
<p class="channel-about" data-part="about"></p>
<p class="notice" data-part="wait" data-word="postsWait" hidden>${words.postsWait}</p>
<p class="channel-empty" data-part="empty" data-word="noPosts">${words.noPosts}</p>
<ol class="posts" data-part="posts" role="list"></ol>
</section>
</template>
<template id="post">
<li class="post">
<p class="who"><time data-part="time"></time> <span class="new-mark" data-part="new" data-word="isNew" hidden>${words.isNew}</span></p>
<p class="note" data-part="orphan" data-word="earlierGone" hidden>${words.earlierGone}</p>
<div data-part="card"></div>
</li>
</template>
<template id="replies">
<details class="fold replies">
<summary><span data-part="count"></span> <span class="new-mark" data-part="new" hidden></span></summary>
<ol class="thread" data-part="posts" role="list"></ol>
</details>
</template>`;
}
