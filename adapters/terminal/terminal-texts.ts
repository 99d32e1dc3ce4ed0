import type { HouseChannel } from "../../src/desk/house-channels.ts";
import type { Language } from "../../src/messages/language.ts";

/** What the terminal itself says, around the cards. */
export interface TerminalTexts {
  /** Said once to somebody who sits there. */
  readonly welcome: string;
  readonly filesTitle: string;
  readonly saveHint: (number: number) => string;
  readonly saved: (path: string) => string;
  readonly saveHow: (most: number) => string;
  readonly notOnScreen: (number: number, most: number) => string;
  readonly isThere: (path: string) => string;
  readonly noFolder: (path: string) => string;
  readonly notWritten: (path: string) => string;
  readonly notKept: string;
  readonly attachHow: string;
  readonly noFile: (path: string) => string;
  readonly isFolder: (path: string) => string;
  readonly notRead: (path: string) => string;
  readonly tooLarge: (path: string, most_MB: number) => string;
  readonly channels: Readonly<Record<HouseChannel, string>>;
  readonly noPosts: string;
  readonly reply: string;
  readonly notForYou: (open: string) => string;
}

const en: TerminalTexts = {
  welcome:
    "Type a question, or help. attach PATH sends a photo or a PDF. team shows what the team posted. exit ends the chat.",
  filesTitle: "Photos and papers",
  saveHint: (number) => `To keep a copy, type: save ${number} ~/Downloads`,
  saved: (path) => `Saved: ${path}`,
  saveHow: (most) => `Type save, the number of the file (1 to ${most}) and where to, such as: save 1 ~/Downloads`,
  notOnScreen: (number, most) =>
    most === 0
      ? `There is no file ${number} on the screen. Ask for the job first; its files are numbered.`
      : `There is no file ${number} on the screen; there are 1 to ${most}.`,
  isThere: (path) => `${path} is there already. Type another name.`,
  noFolder: (path) => `There is no folder for ${path}. Type one that is there, such as: save 1 ~/Downloads`,
  notWritten: (path) => `I may not write to ${path}. Type another place, such as: save 1 ~/Downloads`,
  notKept: "The file is no longer kept here. Ask for the job again to see what it has.",
  attachHow: "Type attach and where the file is, such as: attach ~/photos/panel.jpg",
  noFile: (path) => `There is no file at ${path}. Type attach and where it is, such as: attach ~/photos/panel.jpg`,
  isFolder: (path) => `${path} is a folder. Type the name of a file in it too, such as: attach ~/photos/panel.jpg`,
  notRead: (path) => `I may not read ${path}. Copy it to where you may read it, and attach the copy.`,
  tooLarge: (path, most) => `${path} is larger than ${most} MB. Attach a smaller picture or fewer pages.`,
  channels: { team: "Team", managers: "Managers", owner: "Owner" },
  noPosts: "Nothing has been posted yet.",
  reply: "reply",
  notForYou: (open) => `These posts are not for you. You can type: ${open}`,
};

const es: TerminalTexts = {
  welcome:
    "Escriba una pregunta, o ayuda. adjuntar RUTA envía una foto o un PDF. equipo muestra lo que publicó el equipo. salir termina.",
  filesTitle: "Fotos y papeles",
  saveHint: (number) => `Para guardar una copia, escriba: guardar ${number} ~/Descargas`,
  saved: (path) => `Guardado: ${path}`,
  saveHow: (most) => `Escriba guardar, el número del archivo (1 a ${most}) y dónde, por ejemplo: guardar 1 ~/Descargas`,
  notOnScreen: (number, most) =>
    most === 0
      ? `No hay archivo ${number} en la pantalla. Pida primero el trabajo; sus archivos van numerados.`
      : `No hay archivo ${number} en la pantalla; hay del 1 al ${most}.`,
  isThere: (path) => `${path} ya existe. Escriba otro nombre.`,
  noFolder: (path) => `No hay carpeta para ${path}. Escriba una que exista, por ejemplo: guardar 1 ~/Descargas`,
  notWritten: (path) => `No puedo escribir en ${path}. Escriba otro lugar, por ejemplo: guardar 1 ~/Descargas`,
  notKept: "El archivo ya no está guardado aquí. Pida el trabajo otra vez para ver lo que tiene.",
  attachHow: "Escriba adjuntar y dónde está el archivo, por ejemplo: adjuntar ~/fotos/tablero.jpg",
  noFile: (path) =>
    `No hay archivo en ${path}. Escriba adjuntar y dónde está, por ejemplo: adjuntar ~/fotos/tablero.jpg`,
  isFolder: (path) =>
    `${path} es una carpeta. Escriba también el nombre de un archivo, por ejemplo: adjuntar ~/fotos/tablero.jpg`,
  notRead: (path) => `No puedo leer ${path}. Cópielo a donde pueda leerlo y adjunte la copia.`,
  tooLarge: (path, most) => `${path} pesa más de ${most} MB. Adjunte una foto más pequeña o menos páginas.`,
  channels: { team: "Equipo", managers: "Gerencia", owner: "Dirección" },
  noPosts: "Todavía no se ha publicado nada.",
  reply: "respuesta",
  notForYou: (open) => `Estas publicaciones no son para usted. Puede escribir: ${open}`,
};

export const TERMINAL_TEXTS: Readonly<Record<Language, TerminalTexts>> = { en, es };
