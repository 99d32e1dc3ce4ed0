import type { Language } from "../../src/messages/language.ts";

/** The few words that the door itself says, around the cards. */
export interface DoorTexts {
  readonly startWalk: string;
  readonly whichWalk: string;
  readonly start: string;
  readonly cannotWrite: string;
}

export const DOOR_TEXTS: Readonly<Record<Language, DoorTexts>> = {
  en: {
    startWalk: "Start a walk",
    whichWalk: "Which one? I ask in our direct messages.",
    start: "Start",
    cannotWrite: "I could not write to you. Send me a direct message and type the name of the walk.",
  },
  es: {
    startWalk: "Empezar",
    whichWalk: "¿Cuál? Pregunto en nuestros mensajes directos.",
    start: "Empezar",
    cannotWrite: "No pude escribirle. Mándeme un mensaje directo y escriba el nombre de la guía.",
  },
};

/** Shown while it is not known yet which language somebody reads. */
export const ONE_MOMENT = "One moment … · Un momento …";
