import type { Member, PersonDocument } from "../domain/documents.ts";
import type { Message, Phrase, PlannedEffect, Press } from "../domain/effects.ts";
import type { Incoming } from "../domain/incoming.ts";
import { line, phrase, say } from "../talk/decision.ts";
import type { Desk } from "../talk/desk.ts";
import { handAllEffects } from "../talk/hand-all.ts";
import { helpMessage, strayWords } from "../talk/lobby.ts";
import { may } from "../talk/rights.ts";
import type { Commit } from "./commit.ts";
import type { Directory } from "./directory.ts";
import { createDuty } from "./duty.ts";
import { SHOP } from "./invites.ts";
import { type Asked, createLists, lookedAfter } from "./lobby-lists.ts";
import { createMembers } from "./lobby-members.ts";
import { type Body, createPersonal } from "./personal.ts";
import type { Chance, Received } from "./ports.ts";

/** What belongs to no case: who people are, their language, invites, lists, help. */
export interface Lobby {
  join(token: string, incoming: Incoming): Promise<Received>;
  command(
    name: string,
    incoming: Incoming,
    given: { readonly member: Member | null; readonly argument: string },
  ): Promise<Received>;
  pressed(press: Press, incoming: Incoming, member: Member | null): Promise<Received>;
  stray(incoming: Incoming, member: Member): Promise<Received>;
  group(incoming: Incoming, member: Member | null): Promise<Received>;
  refuse(incoming: Incoming): Promise<Received>;
  upkeep(incoming: Incoming): Promise<Received>;
  /** Takes words that were asked for something of the person's own; null where none were. */
  written(text: string, incoming: Incoming): Promise<Received> | null;
  /** Keeps the name and chat of whoever writes; once, and when they change. */
  remember(incoming: Incoming, language: string): Promise<void>;
}

export interface LobbyParts {
  readonly directory: Directory;
  readonly commit: Commit;
  readonly chance: Chance;
  readonly desk: (now: number) => Desk;
  readonly languages: readonly string[];
  /** The link that brings somebody here with a token. */
  readonly link: (token: string) => string;
  /** Forgets a person: their document, and their name and words in their cases. */
  readonly forget: (person: string) => Promise<void>;
  /** Everything that is kept of a person, as text. */
  readonly exportOf: (person: string) => Promise<string>;
}

export function createLobby(parts: LobbyParts): Lobby {
  const { directory, commit, languages } = parts;
  const desk = () => parts.desk(0);

  const readerOf = (incoming: Incoming) => {
    const language = directory.person(incoming.from.id)?.language ?? languages[0] ?? "en";
    const { chat, topic } = incoming;
    return topic === undefined ? { chat, language } : { chat, language, topic };
  };

  const bodyOf = (person: PersonDocument | null, incoming: Incoming): Body => ({
    name: person?.name ?? incoming.from.name,
    chat: person?.chat ?? incoming.from.id,
    language: person?.language ?? languages[0] ?? "en",
    machines: person?.machines ?? [],
    reachable: person?.reachable ?? true,
    ...(person?.has === undefined ? {} : { has: person.has }),
    ...(person?.lookedAt === undefined ? {} : { lookedAt: person.lookedAt }),
    ...(person?.noting === undefined ? {} : { noting: person.noting }),
  });

  /** An update without a case commits in the person's own document. */
  async function answer(
    incoming: Incoming,
    effects: readonly PlannedEffect[],
    change: Partial<Body> = {},
  ): Promise<Received> {
    await commit({ kind: "person", id: incoming.from.id }, incoming.update, (person) => ({
      body: { ...bodyOf(person, incoming), ...change },
      effects,
    }));
    return { language: change.language ?? readerOf(incoming).language };
  }

  const tell = (incoming: Incoming, message: Message) =>
    answer(incoming, [say(readerOf(incoming), message)]);

  const toast = (incoming: Incoming, words: Phrase): Received => ({
    toast: words,
    language: readerOf(incoming).language,
  });

  const members = createMembers({ ...parts, readerOf, tell, toast });
  const duty = createDuty({ commit, desk: parts.desk, readerOf, tell, toast });
  const personal = createPersonal({ ...parts, readerOf, answer });
  const forMembers = createLists(directory, desk);

  /** A list for a member; looking at the calls from the beginning is remembered. */
  function show(name: string, incoming: Incoming, asked: Omit<Asked, "lookedAt" | "now">) {
    const list = Object.hasOwn(forMembers, name) ? forMembers[name] : undefined;
    if (list === undefined) return tell(incoming, { lines: [line(phrase("unknown-command"))] });
    const lookedAt = directory.person(incoming.from.id)?.lookedAt ?? 0;
    const message = list({ ...asked, lookedAt, now: incoming.sentAt });
    const looked = name === "calls" && asked.from === 0 ? { lookedAt: incoming.sentAt } : {};
    return answer(incoming, [say(readerOf(incoming), message)], looked);
  }

  /** Everything that a member looks after goes to another, in whose chat it is listed. */
  function handAll(person: string, incoming: Incoming, member: Member) {
    const to = desk().members.find((one) => one.person === person && one.role !== "technician");
    if (to === undefined || !may(member.role, "decide")) {
      return toast(incoming, phrase("nothing-done"));
    }
    return answer(incoming, handAllEffects(lookedAfter(directory, member), member, to));
  }

  async function memberPress(press: Press, incoming: Incoming, member: Member) {
    const value = press.value ?? "";
    if (press.act === "hand-all") return handAll(value, incoming, member);
    if (press.act === "duty") return duty.pressed(value, incoming, member);
    if (press.act === "change-member") return members.change(value, incoming, member);
    if (press.act === "table" || press.act === "member") {
      return show(press.act, incoming, { member, argument: value, from: 0 });
    }
    const [, name = "", from = "", argument = ""] = /^(\w+):(\d+):(.*)$/s.exec(value) ?? [];
    if (press.act !== "page" || name === "") return toast(incoming, phrase("nothing-done"));
    return show(name, incoming, { member, argument, from: Number(from) });
  }

  return {
    join: members.join,

    command(name, incoming, given) {
      if (name === "help") return tell(incoming, helpMessage(given.member, desk().shop));
      const own = personal.command(name, incoming);
      if (own !== null) return own;
      const { member, argument } = given;
      if (member === null) return tell(incoming, { lines: [line(phrase("unknown-command"))] });
      const isShift = name === "duty" && argument.trim() !== "";
      if (isShift) return duty.typed(argument, incoming, member);
      return show(name, incoming, { member, argument, from: 0 });
    },

    async pressed(press, incoming, member) {
      if (press.act === "invite") {
        const role = press.value === "dispatcher" ? "dispatcher" : "technician";
        return members.invite(role, incoming, member);
      }
      const own = personal.pressed(press, incoming);
      if (own !== null) return own;
      return member === null
        ? toast(incoming, phrase("nothing-done"))
        : memberPress(press, incoming, member);
    },

    written: personal.written,

    stray: (incoming, member) => tell(incoming, { lines: strayWords(member.role) }),

    async group(incoming, member) {
      const { what } = incoming;
      if (what.kind !== "command" || what.name !== "counter") return {};
      if (member === null || !may(member.role, "see")) {
        return tell(incoming, { lines: [line(phrase("group-refused"))] });
      }
      const { chat, topic } = incoming;
      const counter = topic === undefined ? { chat } : { chat, topic };
      await commit({ kind: "shop", id: SHOP }, incoming.update, (shop) =>
        shop === null
          ? null
          : {
              body: { ...shop, counter },
              effects: [say(readerOf(incoming), { lines: [line(phrase("counter-here"))] })],
            },
      );
      return {};
    },

    refuse: async (incoming) => toast(incoming, phrase("not-allowed")),

    async upkeep(incoming) {
      const { what } = incoming;
      if (what.kind === "reachable" && incoming.direct) {
        await answer(incoming, [], { reachable: what.reachable });
      }
      return {};
    },

    async remember(incoming, language) {
      const known = directory.person(incoming.from.id);
      if (known !== null && known.name === incoming.from.name) return;
      await commit({ kind: "person", id: incoming.from.id }, null, (person) => ({
        body: {
          ...bodyOf(person, incoming),
          name: incoming.from.name,
          language: person?.language ?? language,
        },
        effects: [],
      }));
    },
  };
}
