import { createEngineRoom } from "../../src/cases/engine-room.ts";
import { createExport } from "../../src/cases/export-person.ts";
import { createFollow } from "../../src/cases/follow.ts";
import { createForget } from "../../src/cases/forget-person.ts";
import { createLobby } from "../../src/cases/lobby.ts";
import { createOffice } from "../../src/cases/office.ts";
import type { Received, Tell } from "../../src/cases/ports.ts";
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

/** The office over a memory store, with one ranking for every case: what is tried is who may what. */
export async function openOffice(languages: readonly string[] = ["en"]) {
  const { store, timers, directory, change, commit } = await createOfficeParts();
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
    members: directory.shop()?.members ?? [],
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
  });
  const forget = createForget({ directory, commit, change });
  const exportOf = createExport({ directory, commit });
  const lobby = createLobby({ directory, commit, chance, desk, languages, link, forget, exportOf });
  const { reader } = workshop;
  const office = createOffice({ directory, commit, chance, desk, languages, link, lobby, reader });
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

  return {
    carryOver,
    send,
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
      return (await said(to)).map(
        ({ message, language }) => speech.wording.render(message, language).text,
      );
    },
  };
}
