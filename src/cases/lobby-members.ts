import type { Member, Role } from "../domain/documents.ts";
import type { Message, Phrase, PlannedEffect } from "../domain/effects.ts";
import type { Incoming } from "../domain/incoming.ts";
import { line, phrase, revise, say } from "../talk/decision.ts";
import type { Desk } from "../talk/desk.ts";
import { tell as tellLater } from "../talk/follow-ups.ts";
import { helpMessage, inviteLinkMessage, memberMessage, removalMessage } from "../talk/lobby.ts";
import { may } from "../talk/rights.ts";
import type { Commit } from "./commit.ts";
import type { Directory } from "./directory.ts";
import { redeem, SHOP, type ShopBody, withChange, withInvite } from "./invites.ts";
import type { Chance, Received } from "./ports.ts";

interface Reader {
  readonly chat: string;
  readonly language: string;
  readonly topic?: number;
}

export interface MembersParts {
  readonly commit: Commit;
  readonly directory: Directory;
  readonly chance: Chance;
  readonly desk: (now: number) => Desk;
  /** The link that brings somebody here with a token. */
  readonly link: (token: string) => string;
  readonly readerOf: (incoming: Incoming) => Reader;
  readonly tell: (incoming: Incoming, message: Message) => Promise<Received>;
  readonly toast: (incoming: Incoming, words: Phrase) => Received;
}

/** Who belongs to the shop: invited by a link, given another role, taken out. */
export function createMembers(parts: MembersParts) {
  const { commit, chance, readerOf, tell, toast } = parts;
  const desk = () => parts.desk(0);

  /** Whoever is taken out is told so, and their open cases go back to the counter. */
  function leaving(shop: ShopBody | null, person: string): PlannedEffect[] {
    const member = shop?.members.find((one) => one.person === person);
    if (member === undefined) return [];
    const words = { lines: [line(phrase("taken-out", { shop: desk().shop.name }))] };
    const event = { type: "technician.gone", person } as const;
    const cases = parts.directory.cases({ technician: person, open: true });
    return [say(member, words), ...cases.map(({ id }) => tellLater("case", id, { event }))];
  }

  /** A skill noted or struck out; the same buttons come back as they stand now. */
  async function skilled(person: string, change: string, incoming: Incoming) {
    const { skills } = desk().shop;
    if (!Object.hasOwn(skills, change.slice("skill:".length))) return {};
    await commit({ kind: "shop", id: SHOP }, incoming.update, (shop) => {
      const body = shop === null ? null : withChange(shop, person, change);
      if (body === null) return null;
      const message = memberMessage(body.members, person, Object.keys(skills));
      return { body, effects: [revise(readerOf(incoming), message, `member-${person}`)] };
    });
    return {};
  }

  return {
    async invite(role: Role, incoming: Incoming, member: Member | null) {
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
    },

    /** The owner changes somebody's role or takes them out; it counts at once. */
    async change(value: string, incoming: Incoming, member: Member) {
      if (!may(member.role, "remove-member")) return toast(incoming, phrase("not-allowed"));
      const [, person = "", change = ""] = /^([^:]*):(.*)$/s.exec(value) ?? [];
      if (change.startsWith("skill:")) return skilled(person, change, incoming);
      if (change === "out?") return tell(incoming, removalMessage(desk().members, person));
      await commit({ kind: "shop", id: SHOP }, incoming.update, (shop) => {
        const body = shop === null ? null : withChange(shop, person, change);
        if (body === null) return null;
        const done = { lines: [line(phrase("member-changed"))] };
        const left = change === "out" ? leaving(shop, person) : [];
        return { body, effects: [say(readerOf(incoming), done), ...left] };
      });
      return {};
    },

    async join(token: string, incoming: Incoming): Promise<Received> {
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
  };
}
