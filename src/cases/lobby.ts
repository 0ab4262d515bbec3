import type { Member, PersonDocument, Role } from "../domain/documents.ts";
import type { Message, Phrase, PlannedEffect, Press } from "../domain/effects.ts";
import type { Incoming } from "../domain/incoming.ts";
import { line, phrase, say } from "../talk/decision.ts";
import type { Desk } from "../talk/desk.ts";
import {
  forgetMessage,
  helpMessage,
  inviteLinkMessage,
  languageMessage,
  strayWords,
} from "../talk/lobby.ts";
import { may } from "../talk/rights.ts";
import type { Commit } from "./commit.ts";
import type { Directory } from "./directory.ts";
import { redeem, withInvite } from "./invites.ts";
import { createLists } from "./lobby-lists.ts";
import type { Chance, Received } from "./ports.ts";

/** What belongs to no case: who people are, their language, invites, lists, help. */
export interface Lobby {
  join(token: string, incoming: Incoming): Promise<Received>;
  command(name: string, incoming: Incoming, member: Member | null): Promise<Received>;
  pressed(press: Press, incoming: Incoming, member: Member | null): Promise<Received>;
  stray(incoming: Incoming, member: Member): Promise<Received>;
  group(incoming: Incoming, member: Member | null): Promise<Received>;
  refuse(incoming: Incoming): Promise<Received>;
  upkeep(incoming: Incoming): Promise<Received>;
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
}

export const SHOP = "shop";

type Body = Pick<PersonDocument, "name" | "chat" | "language" | "machines" | "has" | "reachable">;

export function createLobby(parts: LobbyParts): Lobby {
  const { directory, commit, chance, languages } = parts;
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

  async function invite(role: Role, incoming: Incoming, member: Member | null) {
    if (member === null || !may(member.role, "invite")) {
      return toast(incoming, phrase("not-allowed"));
    }
    const token = chance.token();
    const message = inviteLinkMessage(role, parts.link(token));
    await commit({ kind: "shop", id: SHOP }, incoming.update, (shop, now) =>
      shop === null
        ? null
        : {
            body: withInvite(shop, { token, role, by: member.person }, now),
            effects: [say(readerOf(incoming), message)],
          },
    );
    return {};
  }

  const forMembers = createLists(directory, () => desk().members);

  /**
   * Changes the language of a person's open cases. It is done before the update counts as applied:
   * after a kill it is simply done again.
   */
  async function speakInCases(person: string, language: string): Promise<void> {
    for (const { id } of directory.cases({ operator: person, open: true })) {
      await commit({ kind: "case", id }, null, (open) =>
        open === null
          ? null
          : { by: person, happenings: [{ type: "language.changed", language }], effects: [] },
      );
    }
  }

  return {
    async join(token, incoming) {
      let joined: Role | null = null;
      const { id, name } = incoming.from;
      const { language } = readerOf(incoming);
      const { outcome } = await commit({ kind: "shop", id: SHOP }, incoming.update, (shop, now) => {
        if (shop === null) return null;
        const member = { person: id, name, chat: incoming.chat, language };
        const done = redeem(shop, token, { member, now });
        if (done.outcome !== "joined") return null;
        joined = done.role;
        const full: Member = { ...member, role: done.role };
        const welcome: Message = {
          lines: [
            line(phrase("welcome-member", { role: { phrase: phrase(`role-${done.role}`) } })),
            ...helpMessage(full, desk().shop).lines,
          ],
        };
        return { body: done.shop, effects: [say(readerOf(incoming), welcome)] };
      });
      if (joined !== null || outcome === "repeated") return {};
      return tell(incoming, {
        lines: [line(phrase("link-used-up", { phone: desk().shop.phone }))],
      });
    },

    command(name, incoming, member) {
      if (name === "help") return tell(incoming, helpMessage(member, desk().shop));
      if (name === "language") return tell(incoming, languageMessage(languages));
      if (name === "forget") return tell(incoming, forgetMessage());
      const forMember = forMembers[name];
      if (forMember === undefined || member === null) {
        return tell(incoming, { lines: [line(phrase("unknown-command"))] });
      }
      return tell(incoming, forMember(member));
    },

    async pressed(press, incoming, member) {
      if (press.act === "invite") {
        const role = press.value === "dispatcher" ? "dispatcher" : "technician";
        return invite(role, incoming, member);
      }
      if (press.act === "language" && languages.includes(press.value ?? "")) {
        const language = press.value ?? "en";
        const message = { lines: [line(phrase("language-set"))] };
        const to = { ...readerOf(incoming), language };
        await speakInCases(incoming.from.id, language);
        return answer(incoming, [say(to, message)], { language });
      }
      if (press.act === "forget" && press.value === "yes") {
        const to = readerOf(incoming);
        await parts.forget(incoming.from.id);
        const nobody = { name: "", machines: [], has: [] };
        return answer(incoming, [say(to, { lines: [line(phrase("forgotten"))] })], nobody);
      }
      return toast(incoming, phrase("nothing-done"));
    },

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
