import { describe, expect, test } from "vitest";
import type { ConversationReference } from "../../src/ports/conversation-references.ts";
import type { Store } from "../../src/ports/store.ts";

const channel: ConversationReference = {
  tenant: "tenant-one",
  conversation: "19:jobs@thread.tacv2",
  kind: "channel",
  serviceUrl: "https://service.invalid/one/",
  bot: "28:oldhand",
  team: "19:crew@thread.tacv2",
};
const chat: ConversationReference = {
  tenant: "tenant-one",
  conversation: "a:ana",
  kind: "personal",
  serviceUrl: "https://service.invalid/one/",
  bot: "28:oldhand",
};

/** What every store must do with the conversations of Teams. */
export function describeReferencesContract(store: () => Store): void {
  const workspaceOf = async (organisation: string) =>
    (await store().openWorkspace({ door: "teams", organisation, user: "u", name: "" })).workspace;
  const find = async ({ tenant, conversation }: ConversationReference) =>
    await store().conversations.find(await workspaceOf(tenant), conversation);

  describe("conversations of Teams", () => {
    test.each([channel, chat])("come back as they were kept: $kind", async (reference) => {
      await store().conversations.keep(reference);
      expect(await find(reference)).toEqual(reference);
    });

    test("the newest reference takes the place of the one before", async () => {
      const moved = { ...channel, serviceUrl: "https://service.invalid/two/" };
      await store().conversations.keep(channel);
      await store().conversations.keep(moved);
      expect(await find(channel)).toEqual(moved);
    });

    test("nobody finds those of another tenant, nor forgets them", async () => {
      const other = { ...channel, tenant: "tenant-two", serviceUrl: "https://service.invalid/other/" };
      await store().conversations.keep(channel);
      await store().conversations.keep(chat);
      expect(await store().conversations.find(await workspaceOf("tenant-two"), chat.conversation)).toBeUndefined();
      await store().conversations.keep(other);
      await store().conversations.leave({ tenant: "tenant-two", conversation: channel.conversation });
      expect(await find(other)).toBeUndefined();
      expect([await find(channel), await find(chat)]).toEqual([channel, chat]);
    });

    test("one that was refused is forgotten, unless it has moved meanwhile", async () => {
      const moved = { ...channel, serviceUrl: "https://service.invalid/two/" };
      await store().conversations.keep(moved);
      await store().conversations.drop(channel);
      expect(await find(channel)).toEqual(moved);
      await store().conversations.drop(moved);
      expect(await find(channel)).toBeUndefined();
    });

    test("leaving a team forgets all of its channels and nothing else", async () => {
      const general = { ...channel, conversation: "19:crew@thread.tacv2" };
      const elsewhere = { ...channel, conversation: "19:x@thread.tacv2", team: "19:office@thread.tacv2" };
      for (const one of [channel, general, elsewhere, chat]) await store().conversations.keep(one);
      const { tenant, team = "" } = channel;
      await store().conversations.leave({ tenant, conversation: team, team });
      expect([await find(channel), await find(general)]).toEqual([undefined, undefined]);
      expect([await find(elsewhere), await find(chat)]).toEqual([elsewhere, chat]);
    });
  });
}
