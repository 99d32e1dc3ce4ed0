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
    /** Names of what opens a photo and of what takes a paper along. */
    readonly openPhoto: (text: string) => string;
    readonly download: (text: string, name: string) => string;
  };
  /** Said when a message cannot be taken; each says what to do instead. */
  readonly refused: {
    readonly malformed: string;
    readonly empty: string;
    readonly tooLong: (most: number) => string;
    readonly unknownPerson: string;
    readonly fileTooLarge: (most_MB: number) => string;
    readonly tooManyFiles: (most: number) => string;
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
  readonly chat: string;
  readonly views: string;
  readonly team: string;
  readonly managers: string;
  readonly owner: string;
  readonly teamAbout: string;
  readonly managersAbout: string;
  readonly ownerAbout: string;
  readonly noPosts: string;
  /** `{n}` and the like stand for what the page puts in. */
  readonly newOne: string;
  readonly newMany: string;
  readonly isNew: string;
  readonly replyOne: string;
  readonly replyMany: string;
  readonly earlierGone: string;
  readonly postsWait: string;
  readonly today: string;
  readonly camera: string;
  readonly attach: string;
  readonly tray: string;
  readonly trayOne: string;
  readonly trayMany: string;
  readonly takeAway: string;
  readonly dropHere: string;
  readonly useAgain: string;
  readonly uploading: string;
  readonly fileHeic: string;
  readonly fileLarge: string;
  readonly fileType: string;
  readonly fileEmpty: string;
  readonly filesMany: string;
  readonly filesGone: string;
  readonly photosSaid: string;
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
    openPhoto: (text) => `Open whole in a new tab: ${text}`,
    download: (text, name) => `Download ${name}: ${text}`,
  },
  refused: {
    malformed: "This message arrived damaged. Reload the page and send it again.",
    empty: "There was nothing in it. Type a question, for example “help”.",
    tooLong: (most) => `That is too long. Shorten it to ${most} characters and send it again.`,
    unknownPerson: "I do not know who is speaking. Pick a name from the list and send it again.",
    fileTooLarge: (most) => `A file is larger than ${most} MB. Choose a smaller picture or fewer pages.`,
    tooManyFiles: (most) => `That is more than ${most} files. Send ${most} first, then the rest.`,
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
    chat: "Chat",
    views: "What to read",
    team: "Team",
    managers: "Managers",
    owner: "Owner",
    teamAbout: "What became of the team's jobs. The newest stands first.",
    managersAbout: "What the managers are told. The newest stands first.",
    ownerAbout: "What could not be delivered elsewhere. The newest stands first.",
    noPosts: "Nothing has been posted yet. It appears here by itself.",
    newOne: "1 new",
    newMany: "{n} new",
    isNew: "New",
    replyOne: "1 reply",
    replyMany: "{n} replies",
    earlierGone: "Reply to a post that is no longer shown",
    postsWait: "Waiting for signal. This is as it was last seen.",
    today: "Today",
    camera: "Take a photo",
    attach: "Add photos or papers",
    tray: "Photos and papers to send",
    trayOne: "To send: 1 file, {size}",
    trayMany: "To send: {n} files, {size}",
    takeAway: "Leave out {name}",
    dropHere: "Let go to add it to your message.",
    useAgain: "Use these files again",
    uploading: "Sending files, {done} of {size}",
    fileHeic:
      "{name} is a HEIC or AVIF picture, which cannot be kept. Set the camera to “most compatible”, or send a screenshot of it.",
    fileLarge: "{name} is {size}; the most is {most}. Choose a smaller picture or fewer pages.",
    fileType: "{name} cannot be kept: choose a picture (JPEG, PNG, WebP) or a PDF file.",
    fileEmpty: "{name} is empty. Choose it again.",
    filesMany: "A message takes {n} files. Send these first, then the rest.",
    filesGone: "This browser no longer has the files. Press the button and choose them again.",
    photosSaid: "Files, no words",
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
    openPhoto: (text) => `Abrir completa en otra pestaña: ${text}`,
    download: (text, name) => `Descargar ${name}: ${text}`,
  },
  refused: {
    malformed: "Este mensaje llegó dañado. Recargue la página y envíelo de nuevo.",
    empty: "Llegó vacío. Escriba una pregunta, por ejemplo «ayuda».",
    tooLong: (most) => `Es demasiado largo. Acórtelo a ${most} caracteres y envíelo de nuevo.`,
    unknownPerson: "No sé quién habla. Elija un nombre de la lista y envíelo de nuevo.",
    fileTooLarge: (most) => `Un archivo pesa más de ${most} MB. Elija una foto más pequeña o menos páginas.`,
    tooManyFiles: (most) => `Son más de ${most} archivos. Envíe ${most} primero y después el resto.`,
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
    chat: "Chat",
    views: "Qué leer",
    team: "Equipo",
    managers: "Gerencia",
    owner: "Dirección",
    teamAbout: "Qué pasó con los trabajos del equipo. Lo más nuevo está primero.",
    managersAbout: "Lo que se informa a gerencia. Lo más nuevo está primero.",
    ownerAbout: "Lo que no se pudo entregar en otra parte. Lo más nuevo está primero.",
    noPosts: "Todavía no se ha publicado nada. Aparecerá aquí por sí solo.",
    newOne: "1 sin leer",
    newMany: "{n} sin leer",
    isNew: "Nuevo",
    replyOne: "1 respuesta",
    replyMany: "{n} respuestas",
    earlierGone: "Respuesta a una publicación que ya no se muestra",
    postsWait: "Esperando señal. Así estaba la última vez.",
    today: "Hoy",
    camera: "Tomar una foto",
    attach: "Agregar fotos o documentos",
    tray: "Fotos y documentos por enviar",
    trayOne: "Por enviar: 1 archivo, {size}",
    trayMany: "Por enviar: {n} archivos, {size}",
    takeAway: "Quitar {name}",
    dropHere: "Suelte para agregarlo a su mensaje.",
    useAgain: "Usar estos archivos otra vez",
    uploading: "Enviando archivos, {done} de {size}",
    fileHeic:
      "{name} es una imagen HEIC o AVIF, y no se puede guardar. Ponga la cámara en «más compatible», o envíe una captura de pantalla.",
    fileLarge: "{name} pesa {size}; lo máximo es {most}. Elija una foto más pequeña o menos páginas.",
    fileType: "{name} no se puede guardar: elija una imagen (JPEG, PNG, WebP) o un archivo PDF.",
    fileEmpty: "{name} está vacío. Elíjalo de nuevo.",
    filesMany: "Un mensaje lleva {n} archivos. Envíe estos primero y después el resto.",
    filesGone: "Este navegador ya no tiene los archivos. Toque el botón y elíjalos de nuevo.",
    photosSaid: "Archivos, sin palabras",
  },
};

export const DOOR_TEXTS: Readonly<Record<Language, DoorTexts>> = { en, es };
