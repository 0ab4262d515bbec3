import { createMemoryStore } from "../../src/store/memory-store.ts";
import { storeContract } from "./store-contract.ts";

storeContract("the memory store", async () => createMemoryStore());
