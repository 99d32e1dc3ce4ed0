import { EMPTY_STATE } from "../conversation/state.ts";
import { buildLinkCodeCard, buildLinkedCard, buildLinkRefusedCard } from "../messages/build-link-card.ts";
import type { Card } from "../messages/card.ts";
import { COMMON } from "../messages/voice.ts";
import type { Caller, Exchange, Person, WorkspaceStore } from "../ports/store.ts";
import type { TryLimit } from "./try-limit.ts";

/** How long a code may be used [ms]. */
export const CODE_LIFE_ms = 10 * 60 * 1000;
const CODE = /^\d{6}$/;

/** What joining two doors needs to know. */
export interface LinkRequest {
  readonly workspace: WorkspaceStore;
  readonly person: Person;
  readonly caller: Caller;
  readonly now_ms: number;
  /** What stood after the command: nothing, or a code. */
  readonly what: string;
  readonly newCode: () => string;
  readonly tries: TryLimit;
}
/** Who speaks from now on, and the card; the state of the conversation is theirs. */
export interface Linked {
  readonly person: Person;
  readonly card: Card;
}

/** Gives a one-time code, or joins this caller to the person whose code it is. */
export async function linkDoors(request: LinkRequest): Promise<Linked> {
  const { workspace, person, caller, now_ms, tries } = request;
  const common = COMMON[person.language];
  if (request.what === "") {
    const code = request.newCode();
    await workspace.offerLink(person.id, code, now_ms + CODE_LIFE_ms);
    return { person, card: buildLinkCodeCard(common, code) };
  }
  const key = JSON.stringify([workspace.workspace, caller.door, caller.organisation, caller.user]);
  if (tries.isOver(key, now_ms)) return { person, card: buildLinkRefusedCard(common, "too-many") };
  const code = request.what.replace(/[\s-]/g, "");
  const joined = CODE.test(code) ? await workspace.acceptLink(caller, code, now_ms) : undefined;
  if (joined !== undefined) return { person: joined, card: buildLinkedCard(COMMON[joined.language], joined.name) };
  tries.countWrong(key, now_ms);
  return { person, card: buildLinkRefusedCard(common, "unknown") };
}

/** The exchange that records a link message: the conversation stays as it was for whoever speaks now. */
export async function recordLink(
  workspace: WorkspaceStore,
  linked: Linked,
  about: Pick<Exchange, "conversation" | "delivery" | "at_ms">,
): Promise<void> {
  const state = (await workspace.loadConversation(linked.person.id, about.conversation)) ?? EMPTY_STATE;
  await workspace.commit({ person: linked.person, state, card: linked.card, ...about });
}
