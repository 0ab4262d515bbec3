import { createChangeDocument } from "../../src/cases/change-document.ts";
import type { Decisions } from "../../src/cases/commit.ts";
import { createCommit } from "../../src/cases/commit.ts";
import { openDirectory } from "../../src/cases/directory.ts";
import type { DocumentStore } from "../../src/cases/ports.ts";
import type { PlannedEffect } from "../../src/domain/effects.ts";
import { createMemoryStore } from "../../src/store/memory-store.ts";
import { createFakeTimers } from "./fake-timers.ts";

/** The cases layer over a store, with a clock that stands still. */
export async function createOfficeParts(store: DocumentStore = createMemoryStore()) {
  const timers = createFakeTimers();
  const directory = await openDirectory(store);
  const change = createChangeDocument(store, directory);
  const commit = createCommit({ change, directory, clock: timers });
  return { store, timers, directory, change, commit };
}
export type OfficeParts = Awaited<ReturnType<typeof createOfficeParts>>;

/** The decision that opens a case. */
export const opening = (effects: readonly PlannedEffect[] = []): Decisions["case"] => ({
  by: "op",
  happenings: [
    {
      type: "case.opened",
      operator: "op",
      name: "Ann",
      chat: "11",
      language: "en",
      knowledge: "k1",
      seed: 7,
    },
  ],
  effects,
});

/** The decision that notes some words. */
export const words = (text: string, effects: readonly PlannedEffect[] = []): Decisions["case"] => ({
  by: "op",
  happenings: [{ type: "words.said", text }],
  effects,
});

/** A plain message to a chat. */
export const say = (text: string, chat = "11", slot?: string): PlannedEffect => ({
  effect: {
    do: "say",
    to: { chat },
    language: "en",
    message: { lines: [{ say: { raw: text } }] },
    ...(slot === undefined ? {} : { slot }),
  },
});

export const revise = (text: string, slot: string, chat = "11"): PlannedEffect => ({
  effect: {
    do: "revise",
    to: { chat },
    language: "en",
    message: { lines: [{ say: { raw: text } }] },
    slot,
  },
});
