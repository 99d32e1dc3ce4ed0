import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
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
