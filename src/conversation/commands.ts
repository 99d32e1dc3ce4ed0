import type { Language } from "../messages/language.ts";
import { foldText } from "../units/fold-text.ts";
import type { UnitSystem } from "../units/quantity-kinds.ts";
import { foldWords } from "./fold-words.ts";

/** A word that steers the conversation instead of asking or answering. */
export type Command =
  | { readonly kind: "back" | "skip" | "stop" | "undo" | "again" | "welcome" | "where" }
  | { readonly kind: "help" | "resume" | "how" | "change" | "form" | "link"; readonly what: string }
  | { readonly kind: "units"; readonly units: UnitSystem | undefined }
  | { readonly kind: "language"; readonly language: Language | undefined };

type PlainKind = "back" | "skip" | "stop" | "undo" | "again" | "welcome" | "where";
type KindWithMore = "help" | "resume" | "how" | "change" | "form" | "link";

/** Whole messages, without accents and in lower case; both languages are always understood. */
const WHOLE: Readonly<Record<PlainKind, readonly string[]>> = {
  back: ["back", "go back", "previous", "atras", "volver", "anterior", "regresar"],
  skip: [
    ...["skip", "pass", "idk", "don't know", "dont know", "i don't know", "i dont know", "do not know", "not sure"],
    ...["no idea", "unknown", "omitir", "saltar", "paso", "no se", "no lo se", "no sabemos", "ni idea"],
  ],
  stop: [
    ...["stop", "cancel", "quit", "exit", "parar", "para", "pare", "alto", "detener", "basta", "salir"],
    ...["cancelar", "cancela", "cancele"],
  ],
  undo: ["undo", "take back", "deshacer", "deshaz", "anular"],
  again: ["again", "show again", "repeat", "otra vez", "repetir", "de nuevo"],
  welcome: [
    ...["", "hi", "hello", "hey", "start", "menu", "good morning", "hola", "buenas", "buenos dias", "buenas tardes"],
    "inicio",
  ],
  where: ["where", "where am i", "where are we", "donde", "donde estoy", "donde estamos"],
};
/** Words that may have something after them. */
const WITH_MORE: Readonly<Record<KindWithMore, readonly string[]>> = {
  help: ["help", "ayuda"],
  resume: ["resume", "continue", "go on", "seguir", "sigue", "siga", "continuar", "reanudar"],
  how: ["how", "why", "como", "por que"],
  change: ["change", "cambiar", "cambia", "cambie"],
  form: ["form", "formulario"],
  link: ["link", "enlazar", "enlace"],
};
/** Words that call off work that goes on; while none goes on they stop a guided walk, as above. */
const CANCEL_WORDS = ["cancel", "cancelar", "cancela", "cancele"];
/** A short id of work, as the button on its card says it; other words after "cancel" are no id. */
const WORK_ID = /^[0-9a-f]{8}$/;
const UNITS_WORDS = ["units", "unidades", "use", "usar", "in", "en"];
const UNITS: Readonly<Record<UnitSystem, readonly string[]>> = {
  us: ["us", "us units", "imperial", "inglesas", "americanas", "unidades inglesas", "unidades americanas"],
  si: ["si", "si units", "metric", "metrico", "metricas", "unidades metricas", "unidades si"],
};
/** Systems that may stand alone; "si" may not, because it is also a Spanish yes without its accent. */
const UNITS_ALONE = ["metric", "imperial", "us units", "si units", "unidades metricas", "unidades inglesas"];
const LANGUAGE_WORDS = ["language", "idioma", "lang", "use", "in", "en"];
const LANGUAGE_NAMES: Readonly<Record<Language, readonly string[]>> = {
  en: ["en", "english", "ingles"],
  es: ["es", "spanish", "espanol", "castellano"],
};
const LANGUAGES_ALONE = ["english", "spanish", "espanol"];

/** Reads a message as a command, if it is one. */
export function parseCommand(text: string): Command | undefined {
  const folded = foldWords(text);
  if (/^[?¿\s]*\?$/.test(text)) return { kind: "help", what: "" };
  return parseWhole(folded) ?? parseUnits(folded) ?? parseLanguage(folded) ?? parseWithMore(folded);
}

/**
 * Reads a message that calls off work that goes on.
 * @returns the short id of the work, "" for whatever goes on here, or nothing when the message says something else
 */
export function readCancel(text: string): string | undefined {
  const what = firstMatch(CANCEL_WORDS, (word) => afterWord(foldWords(text), word));
  return what === undefined || what === "" || WORK_ID.test(what) ? what : undefined;
}

function parseWhole(folded: string): Command | undefined {
  const kinds: readonly PlainKind[] = ["back", "skip", "stop", "undo", "again", "welcome", "where"];
  const kind = kinds.find((candidate) => WHOLE[candidate].includes(folded));
  return kind && { kind };
}

function parseWithMore(folded: string): Command | undefined {
  const kinds: readonly KindWithMore[] = ["help", "resume", "how", "change", "form", "link"];
  for (const kind of kinds) {
    const what = firstMatch(WITH_MORE[kind], (word) => afterWord(folded, word));
    if (what !== undefined) return { kind, what };
  }
  return undefined;
}

function parseUnits(folded: string): Command | undefined {
  if (["units", "unidades"].includes(folded)) return { kind: "units", units: undefined };
  const named = UNITS_ALONE.includes(folded) ? folded : firstMatch(UNITS_WORDS, (word) => afterWord(folded, word));
  const systems: readonly UnitSystem[] = ["us", "si"];
  const units = systems.find((system) => named !== undefined && UNITS[system].includes(named));
  return units && { kind: "units", units };
}

function parseLanguage(folded: string): Command | undefined {
  if (["language", "idioma"].includes(folded)) return { kind: "language", language: undefined };
  const named = LANGUAGES_ALONE.includes(folded)
    ? folded
    : firstMatch(LANGUAGE_WORDS, (word) => afterWord(folded, word));
  const languages: readonly Language[] = ["en", "es"];
  const language = languages.find((one) => named !== undefined && LANGUAGE_NAMES[one].includes(named));
  return language && { kind: "language", language };
}

function firstMatch(words: readonly string[], match: (word: string) => string | undefined): string | undefined {
  for (const word of words) {
    const found = match(word);
    if (found !== undefined) return found;
  }
  return undefined;
}

function afterWord(folded: string, word: string): string | undefined {
  if (folded === word) return "";
  return folded.startsWith(`${word} `) ? folded.slice(word.length + 1).trim() : undefined;
}

const FOLLOW_UP_LEADS = [
  ...["what about", "how about", "what if", "and if", "and", "with", "make it", "try", "now", "but"],
  ...["que tal", "y que tal", "que pasa con", "y si", "y con", "y", "con", "ahora", "pruebe", "prueba", "pero"],
];

/** Longest first, so that "what about" is not cut after "what". */
const LEAD = new RegExp(`^[¿\\s]*(?:${[...FOLLOW_UP_LEADS].sort((a, b) => b.length - a.length).join("|")})\\s+(?=\\S)`);

/** The message without words that only say that it follows on: "what about 150F hot" is "150F hot". */
export function dropFollowUpLead(text: string): string {
  return text.slice(LEAD.exec(foldText(text))?.[0].length ?? 0);
}
