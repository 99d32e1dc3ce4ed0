import { readCancel } from "../conversation/commands.ts";
import type { Inbound, Reply } from "../desk.ts";
import { buildNothingToCancelCard } from "../messages/build-progress-card.ts";
import type { Language } from "../messages/language.ts";
import { COMMON } from "../messages/voice.ts";
import type { Caller } from "../ports/store.ts";
import { normaliseText } from "../units/normalise-text.ts";
import type { DeskRoom } from "./serve.ts";

/** Whose messages are answered one after the other, and who may call off what they asked for. */
export function ownerOf({ door, organisation, user }: Caller): string {
  return JSON.stringify([door, organisation, user]);
}

/**
 * Takes a message that calls off work ahead of all that waits, because what it would wait for is that work.
 * @returns nothing when the message is to be answered in turn like any other
 */
export function callOff(room: DeskRoom, inbound: Inbound): Promise<Reply> | undefined {
  const id = inbound.form ? undefined : readCancel(normaliseText(inbound.text));
  if (id === undefined) return undefined;
  const owner = ownerOf(inbound.caller);
  const delivery = JSON.stringify([owner, inbound.delivery]);
  const given = room.kept.find(delivery);
  if (given !== undefined) return Promise.resolve({ card: given, isRepeat: true });
  const card = room.runs.callOff(owner, inbound.conversation, id);
  // Without an id and without work it stops a guided walk, as ever.
  if (card === undefined) return id === "" ? undefined : sayTooLate(room, inbound.caller);
  room.kept.keep(delivery, card);
  return Promise.resolve({ card, isRepeat: false });
}

async function sayTooLate(room: DeskRoom, caller: Caller): Promise<Reply> {
  return { card: buildNothingToCancelCard(COMMON[await languageOf(room, caller)]), isRepeat: false };
}

async function languageOf(room: DeskRoom, caller: Caller): Promise<Language> {
  try {
    const workspace = await room.store.openWorkspace(caller);
    return (await workspace.findPerson(caller)).language;
  } catch {
    // Nothing was to be saved; the sentence is worth more than the fault.
    return room.books.company.language;
  }
}
