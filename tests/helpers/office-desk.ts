import { createEngineRoom } from "../../src/cases/engine-room.ts";
import { createExport } from "../../src/cases/export-person.ts";
import { createFollow } from "../../src/cases/follow.ts";
import { createForget } from "../../src/cases/forget-person.ts";
import { createLobby } from "../../src/cases/lobby.ts";
import { createOffice } from "../../src/cases/office.ts";
import type { DocumentStore, Received, Tell } from "../../src/cases/ports.ts";
import { createReception } from "../../src/cases/reception.ts";
import { settle } from "../../src/cases/settle.ts";
import type { Member } from "../../src/domain/documents.ts";
import type { Effect, Press } from "../../src/domain/effects.ts";
import { foldCase } from "../../src/domain/fold-case.ts";
import type { Incoming, IncomingContent } from "../../src/domain/incoming.ts";
import type { Triage } from "../../src/domain/triage.ts";
import type { Desk } from "../../src/talk/desk.ts";
import { Dialog, settings, speech, workshop } from "./dialog.ts";
import { createOfficeParts } from "./office-parts.ts";

const first = new Dialog().say("petrol garden tractor, one click, lights stay bright");
const standing: Triage = first.desk.triage(first.state, "technician");
const engine = createEngineRoom({ knowledge: workshop.knowledge });

export const shopMembers: readonly Member[] = [
  { person: "1", name: "Olga", chat: "1", language: "en", role: "owner" },
  { person: "2", name: "Jonas", chat: "2", language: "en", role: "dispatcher" },
  { person: "3", name: "Ilse", chat: "3", language: "en", role: "technician" },
  { person: "4", name: "Piet", chat: "4", language: "en", role: "technician" },
];

/**
 * The office over a memory store, with one ranking for every case: what is tried is who may what.
 * @param more what stands on the desk in place of the usual
 * @param kept where the documents are; a fresh memory when missing
 */
export async function openOffice(
  languages: readonly string[] = ["en"],
  more: Partial<Pick<Desk, "next" | "triage">> = {},
  kept?: DocumentStore,
) {
  const { store, timers, directory, change, commit } = await createOfficeParts(kept);
  let count = 0;
  const link = (token: string) => `https://link/${token}`;
  const next = (): number => {
    count += 1;
    return count;
  };
  const chance = {
    caseId: () => `C${next()}`,
    token: () => `token-${next()}`,
    seed: () => 7,
  };
  const desk = (now: number): Desk => ({
    knowledge: workshop.knowledge,
    shop: { ...settings, languages: [...languages] },
    members: directory.members(),
    duty: directory.shop()?.duty ?? [],
    others: () => directory.cases({ open: true }),
    now,
    next: engine.next,
    triage: () => standing,
    words: speech.wording.phrase,
    read: (text, expecting) =>
      workshop.reader.read(text, {
        languages: ["en"],
        ...(expecting === undefined ? {} : { expecting: { observation: expecting } }),
      }),
    ...more,
  });
  const forget = createForget({ directory, commit, change });
  const exportOf = createExport({ directory, commit });
  const lobby = createLobby({ directory, commit, chance, desk, languages, link, forget, exportOf });
  const { reader } = workshop;
  const office = createOffice({ directory, commit, chance, desk, languages, link, lobby, reader });
  const failures: unknown[] = [];
  const reception = createReception({
    ...{ directory, commit, timers, handle: office, apology: { key: "apology" } },
    quarantine: { put: async () => undefined },
    isStorageTrouble: () => false,
    report: (error) => void failures.push(error),
  });
  await commit({ kind: "shop", id: "shop" }, null, () => ({
    body: { members: shopMembers, invites: [], secret: "s" },
    effects: [],
  }));

  function send(from: string, what: IncomingContent, direct = true): Promise<Received> {
    const update = `u${next()}`;
    const incoming: Incoming = {
      ...{ update, sentAt: timers.now(), direct, what },
      ...{ chat: direct ? from : "-100", from: { id: from, name: `Person ${from}` } },
    };
    return office(incoming);
  }

  async function said(to: string): Promise<Exclude<Effect, { do: "tell" }>[]> {
    const effects: { sequence: number; effect: Effect }[] = [];
    for (const kind of ["case", "person", "shop"] as const) {
      for await (const document of store.all(kind)) effects.push(...document.outbox);
    }
    return effects
      .sort((a, b) => a.sequence - b.sequence)
      .flatMap(({ effect }) => (effect.do !== "tell" && effect.to.chat === to ? [effect] : []));
  }

  const follow = createFollow({ commit, desk, look: async () => "not-checked" });

  /** Carries over what one document has told another and is due, each once. */
  async function carryOver(): Promise<void> {
    const told: { id: string; effect: Tell }[] = [];
    for (const kind of ["case", "person", "shop"] as const) {
      for await (const { outbox } of store.all(kind)) {
        for (const { id, effect, notBefore } of outbox) {
          if (effect.do === "tell" && notBefore <= timers.now()) told.push({ id, effect });
        }
      }
    }
    for (const { id, effect } of told) await follow(effect, id);
  }

  /** What is due for chats since it was asked last, in order; tidings between documents arrive. */
  async function posted(): Promise<Exclude<Effect, { do: "tell" }>[]> {
    const effects: Exclude<Effect, { do: "tell" }>[] = [];
    const due = () =>
      directory
        .lanes()
        .flatMap((lane) =>
          directory.pending(lane).filter(({ entry }) => entry.notBefore <= timers.now()),
        );
    for (let waiting = due(); waiting.length > 0; waiting = due()) {
      for (const { source, entry } of waiting) {
        if (entry.effect.do === "tell") await follow(entry.effect, entry.id);
        else effects.push(entry.effect);
        await change(source, (old) => settle(old, entry.id, { entry: null, sent: null }));
      }
    }
    return effects;
  }

  return {
    carryOver,
    posted,
    /** Takes something in the way the program does: each update once; rejects where it fails. */
    async receive(incoming: Incoming): Promise<void> {
      await reception.receive(incoming);
      const failed = failures.pop();
      if (failed !== undefined) throw failed;
    },
    events: async (id: string) => (await store.load("case", id))?.events ?? [],
    send,
    now: timers.now,
    /** Lets time pass, in milliseconds. */
    wait: (milliseconds: number) => timers.advance(milliseconds),
    directory,
    say: (from: string, text: string) => send(from, { kind: "text", text }),
    command: (from: string, name: string, argument = "") =>
      send(from, { kind: "command", name, argument }),
    press: (from: string, press: Press | null) => send(from, { kind: "press", press }),
    pressIn: (from: string, id: string, act: string, more: Partial<Press> = {}) =>
      send(from, { kind: "press", press: { case: id, revision: 0, act, ...more } }),
    async state(id: string) {
      const document = await store.load("case", id);
      return foldCase(id, document?.events ?? []);
    },
    /** The text that was last sent to a chat as a file. */
    async attached(to: string): Promise<string | undefined> {
      return (await said(to)).findLast(({ message }) => message.attachment)?.message.attachment
        ?.text;
    },
    /** Everything that was said to a chat, in words, oldest first. */
    async heard(to: string): Promise<string[]> {
      // A change without lines only takes the buttons of a message away: nothing is said.
      const spoken = (await said(to)).filter(({ message }) => message.lines.length > 0);
      return spoken.map(({ message, language }) => speech.wording.render(message, language).text);
    },
  };
}
