import type { IncomingMessage, ServerResponse } from "node:http";
import type { Language } from "../../src/messages/language.ts";

/** How an installation ended. */
export type InstallEnd = "installed" | "cancelled" | "expired" | "organisation" | "failed";
interface PageWords {
  readonly title: string;
  readonly text: string;
}

const STATUS: Readonly<Record<InstallEnd, number>> = {
  installed: 200,
  cancelled: 200,
  expired: 400,
  organisation: 400,
  failed: 502,
};

const WORDS: Readonly<Record<Language, Readonly<Record<InstallEnd, PageWords>>>> = {
  en: {
    installed: {
      title: "Oldhand is installed",
      text: "Go back to Slack, open Oldhand under Apps, and write: help",
    },
    cancelled: { title: "Nothing was installed", text: "You said no in Slack. Oldhand has kept nothing." },
    expired: {
      title: "Start once more",
      text: "This page was opened too late, or in another browser than it was started in. Open /slack/install again.",
    },
    organisation: {
      title: "Choose one workspace",
      text: "Oldhand cannot be installed for a whole organisation. Open /slack/install again and choose a workspace.",
    },
    failed: {
      title: "Oldhand is not installed",
      text: "Slack or Oldhand did not finish. Wait a minute and open /slack/install again.",
    },
  },
  es: {
    installed: {
      title: "Oldhand está instalado",
      text: "Vuelve a Slack, abre Oldhand en Aplicaciones y escribe: ayuda",
    },
    cancelled: { title: "No se instaló nada", text: "Dijiste que no en Slack. Oldhand no guardó nada." },
    expired: {
      title: "Empieza otra vez",
      text: "Esta página se abrió demasiado tarde o en otro navegador. Abre /slack/install de nuevo.",
    },
    organisation: {
      title: "Elige un espacio de trabajo",
      text: "Oldhand no se instala para toda una organización. Abre /slack/install de nuevo y elige un espacio.",
    },
    failed: {
      title: "Oldhand no está instalado",
      text: "Slack u Oldhand no terminaron. Espera un minuto y abre /slack/install de nuevo.",
    },
  },
};

/** The page at the end of an installation. Its address holds a code: nobody may keep it or be told of it. */
export function sendInstallPage(end: InstallEnd, request: IncomingMessage, response: ServerResponse): void {
  const language: Language = /^\s*es\b/i.test(request.headers["accept-language"] ?? "") ? "es" : "en";
  const { title, text } = WORDS[language][end];
  response.writeHead(STATUS[end], {
    "content-type": "text/html; charset=utf-8",
    "content-language": language,
    "cache-control": "no-store",
    "referrer-policy": "no-referrer",
    "content-security-policy": "default-src 'none'; frame-ancestors 'none'",
    "x-content-type-options": "nosniff",
  });
  response.end(
    `<!doctype html><html lang="${language}"><meta charset="utf-8">` +
      `<meta name="viewport" content="width=device-width"><title>${title}</title><h1>${title}</h1><p>${text}</p></html>`,
  );
}
