import { createMemoryStore } from "../support/memory-store.ts";
import { describeStoreContract } from "./store-contract.ts";

describeStoreContract({ name: "the store in memory", open: async () => createMemoryStore() });
