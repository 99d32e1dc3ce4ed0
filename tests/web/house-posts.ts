import { createChannelReader } from "../../src/desk/house-channels.ts";
import type { Card } from "../../src/messages/card.ts";
import type { Caller, Role, Store } from "../../src/ports/store.ts";
import { createMemoryStore } from "../support/memory-store.ts";
import { noteCard, PEOPLE } from "./scripted-desk.ts";

/** November 25, 2026, 14:02 in Chicago. */
export const POSTED_ms = Date.UTC(2026, 10, 25, 20, 2);
const ORGANISATION = "local";

/** The channels of the house over a store in memory, with the people of the tests in their roles and an owner. */
export async function openHousePosts() {
  const store = createMemoryStore();
  const roles = new Map<string, Role>(PEOPLE.map(({ user, role }) => [user, role]));
  const known: Store = {
    ...store,
    openWorkspace: async (caller: Caller) => {
      const workspace = await store.openWorkspace(caller);
      const role = roles.get(caller.user) ?? "technician";
      return { ...workspace, findPerson: async (one) => ({ ...(await workspace.findPerson(one)), role }) };
    },
  };
  await store.openWorkspace({ door: "web", organisation: ORGANISATION, user: "nobody", name: "" });
  let at_ms = POSTED_ms;
  return {
    channels: createChannelReader(known, {}),
    roles,
    /** Posts a card, or words; a minute after the one before. */
    post: async (
      id: string,
      said: string | Card,
      more: { channel?: string; thread?: string; updates?: string } = {},
    ) => {
      const { channel = "team", thread, updates } = more;
      await store.houseChat.send({
        workspace: ORGANISATION,
        id,
        channel: { door: "web", id: channel },
        card: typeof said === "string" ? noteCard(said) : said,
        written_ms: at_ms,
        ...(thread !== undefined && { thread }),
        ...(updates !== undefined && { updatesMessage: updates }),
      });
      at_ms += 60_000;
    },
  };
}
