import type { Language } from "../../src/messages/language.ts";

interface FileTexts {
  readonly offer: string;
  readonly given: (name: string) => string;
  readonly declined: (name: string) => string;
  readonly gone: (name: string) => string;
  readonly failed: (name: string) => string;
  readonly askInChat: string;
}

export const FILE_TEXTS: Readonly<Record<Language, FileTexts>> = {
  en: {
    offer: "Kept with the job. Allow it, and I put a copy into your OneDrive.",
    given: (name) => `${name} is in your OneDrive.`,
    declined: (name) => `${name} was not sent. It stays with the job; ask again whenever you need it.`,
    gone: (name) => `${name} is not kept here any more.`,
    failed: (name) => `${name} could not be put into your OneDrive. Ask for it again and I will try once more.`,
    askInChat:
      "Teams lets a bot hand over files only in a chat of two. Ask me the same in our own chat and I send them there.",
  },
  es: {
    offer: "Está guardado con el trabajo. Si lo permite, dejo una copia en su OneDrive.",
    given: (name) => `${name} está en su OneDrive.`,
    declined: (name) => `${name} no se envió. Sigue guardado con el trabajo; pídalo de nuevo cuando lo necesite.`,
    gone: (name) => `${name} ya no está guardado aquí.`,
    failed: (name) => `${name} no se pudo dejar en su OneDrive. Pídalo de nuevo y lo intento otra vez.`,
    askInChat:
      "Teams deja que un bot entregue archivos solo en un chat de dos. Pídame lo mismo en nuestro chat y se los envío ahí.",
  },
};
