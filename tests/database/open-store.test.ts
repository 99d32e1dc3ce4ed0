import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Database from "better-sqlite3";
import { expect, test } from "vitest";
import { openStore } from "../../adapters/database/open-store.ts";
import { describeStoreContract } from "../contracts/store-contract.ts";
import { BOOKS } from "../support/sample-books.ts";

let folder = "";

describeStoreContract({
  name: "the SQLite store",
  open: async () => {
    folder = await mkdtemp(join(tmpdir(), "oldhand-store-"));
    return await openStore({ path: join(folder, "oldhand.sqlite"), books: BOOKS, ownOrganisations: [] });
  },
  cleanUp: () => rm(folder, { recursive: true }),
});

test("a conversation of Teams that is heard of again is not written again", async () => {
  const path = join(await mkdtemp(join(tmpdir(), "oldhand-store-")), "oldhand.sqlite");
  const store = await openStore({ path, books: BOOKS, ownOrganisations: [] });
  const reference = {
    tenant: "t",
    conversation: "19:a",
    kind: "groupChat",
    serviceUrl: "https://a.invalid",
    bot: "28:o",
  } as const;
  await store.conversations.keep(reference);
  const looking = new Database(path, { readonly: true });
  // Changes whenever another connection has written: SQLite, "PRAGMA data_version".
  const version = () => looking.pragma("data_version", { simple: true });
  const before = version();
  await store.conversations.keep({ ...reference });
  expect(version()).toBe(before);
  await store.conversations.keep({ ...reference, serviceUrl: "https://b.invalid" });
  expect(version()).not.toBe(before);
  looking.close();
  await store.close();
});
