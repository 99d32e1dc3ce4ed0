import type { Language } from "../../src/messages/language.ts";
import type { Role } from "../../src/ports/store.ts";

/** The few words that the page itself says, around the cards. */
export interface DoorTexts {
  /** Said by the server inside a card. */
  readonly card: {
    readonly needed: string;
    readonly notSaid: string;
    readonly show: string;
    readonly cites: string;
    readonly numbers: string;
    readonly choices: string;
    /** Stands in a list of answers before one is picked, and on the button that sends it. */
    readonly pickOne: string;
    readonly sendChoice: string;
    readonly rowCount: (rows: number) => string;
  };
  /** Said when a message cannot be taken; each says what to do instead. */
  readonly refused: {
    readonly malformed: string;
    readonly empty: string;
    readonly tooLong: (most: number) => string;
    readonly unknownPerson: string;
    readonly fault: (id: string) => string;
  };
  readonly roles: Readonly<Record<Role, string>>;
  /** Sent to the browser with the page: plain sentences under stable names. */
  readonly page: PageTexts;
}

export interface PageTexts {
  readonly ask: string;
  readonly shows: string;
  readonly help: string;
  readonly invented: string;
  readonly skip: string;
  readonly setup: string;
  readonly speaking: string;
  readonly fresh: string;
  readonly tryThese: string;
  readonly log: string;
  readonly message: string;
  readonly send: string;
  readonly keys: string;
  readonly queued: string;
  readonly sending: string;
  readonly working: string;
  readonly waiting: string;
  readonly sendNow: string;
  readonly failed: string;
  readonly sendAgain: string;
  readonly refused: string;
  readonly change: string;
  readonly emptied: string;
  readonly notKept: string;
  readonly noScript: string;
}

const en: DoorTexts = {
  card: {
    needed: "needed",
    notSaid: "not known",
    show: "To show it on site:",
    cites: "Source:",
    numbers: "The numbers",
    choices: "Choices",
    pickOne: "Pick one",
    sendChoice: "Answer",
    rowCount: (rows) => (rows === 1 ? "1 row" : `${rows} rows`),
  },
  refused: {
    malformed: "This message arrived damaged. Reload the page and send it again.",
    empty: "There was nothing in it. Type a question, for example “help”.",
    tooLong: (most) => `That is too long. Shorten it to ${most} characters and send it again.`,
    unknownPerson: "I do not know who is speaking. Pick a name from the list and send it again.",
    fault: (id) => `Something went wrong on our side (${id}). What you typed is kept; send it again.`,
  },
  roles: { technician: "technician", dispatcher: "dispatcher", manager: "manager", owner: "owner" },
  page: {
    ask: "Ask about the water heater in front of you. Give the figures you have; what is missing is asked for.",
    shows:
      "Every answer shows what it went by and where that comes from. Local code, the authority having jurisdiction and licensed people decide.",
    help: "Help",
    invented: "Demo company: every name and figure is invented.",
    skip: "Go to the message box",
    setup: "Who is speaking",
    speaking: "Speaking",
    fresh: "New conversation",
    tryThese: "Try one of these",
    log: "Job log",
    message: "Your question or answer",
    send: "Send",
    keys: "Enter sends. Shift and Enter starts a new line.",
    queued: "Waits its turn.",
    sending: "Sending…",
    working: "Working…",
    waiting: "Waiting for signal, will send again.",
    sendNow: "Send now",
    failed: "Not answered.",
    sendAgain: "Send again",
    refused: "This could not be taken. Change it and send it again.",
    change: "Change it",
    emptied: "New conversation. The log is empty.",
    notKept: "This browser keeps nothing: what you type is lost when the page closes.",
    noScript: "This page needs JavaScript to send what you type. Turn it on and reload.",
  },
};

const es: DoorTexts = {
  card: {
    needed: "necesario",
    notSaid: "no se sabe",
    show: "Cómo mostrarlo en obra:",
    cites: "Fuente:",
    numbers: "Los números",
    choices: "Opciones",
    pickOne: "Elegir una",
    sendChoice: "Responder",
    rowCount: (rows) => (rows === 1 ? "1 fila" : `${rows} filas`),
  },
  refused: {
    malformed: "Este mensaje llegó dañado. Recargue la página y envíelo de nuevo.",
    empty: "Llegó vacío. Escriba una pregunta, por ejemplo «ayuda».",
    tooLong: (most) => `Es demasiado largo. Acórtelo a ${most} caracteres y envíelo de nuevo.`,
    unknownPerson: "No sé quién habla. Elija un nombre de la lista y envíelo de nuevo.",
    fault: (id) => `Algo falló de nuestro lado (${id}). Lo que escribió está guardado; envíelo de nuevo.`,
  },
  roles: { technician: "servicio técnico", dispatcher: "despacho", manager: "gerencia", owner: "dirección" },
  page: {
    ask: "Pregunte por el calentador que tiene delante. Dé los datos que tenga; lo que falte se le preguntará.",
    shows:
      "Cada respuesta muestra con qué contó y de dónde sale. Deciden el código local, la autoridad competente y las personas con licencia.",
    help: "Ayuda",
    invented: "Empresa de muestra: todos los nombres y cifras son inventados.",
    skip: "Ir a la casilla del mensaje",
    setup: "Quién habla",
    speaking: "Habla",
    fresh: "Conversación nueva",
    tryThese: "Pruebe con una de estas",
    log: "Bitácora",
    message: "Su pregunta o respuesta",
    send: "Enviar",
    keys: "Intro envía. Mayúsculas e Intro abre otra línea.",
    queued: "Espera su turno.",
    sending: "Enviando…",
    working: "Trabajando…",
    waiting: "Esperando señal; se enviará de nuevo.",
    sendNow: "Enviar ya",
    failed: "Sin respuesta.",
    sendAgain: "Enviar de nuevo",
    refused: "No se pudo recibir. Cámbielo y envíelo de nuevo.",
    change: "Cambiarlo",
    emptied: "Conversación nueva. La bitácora está vacía.",
    notKept: "Este navegador no guarda nada: lo que escriba se pierde al cerrar la página.",
    noScript: "Esta página necesita JavaScript para enviar lo que escriba. Actívelo y recargue.",
  },
};

export const DOOR_TEXTS: Readonly<Record<Language, DoorTexts>> = { en, es };
