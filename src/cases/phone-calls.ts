import { stamped } from "../domain/case-events.ts";
import type { Member } from "../domain/documents.ts";
import { foldCase } from "../domain/fold-case.ts";
import type { Incoming } from "../domain/incoming.ts";
import type { ReadingResult } from "../domain/reading.ts";
import { advance } from "../talk/advance.ts";
import { line, phrase, say } from "../talk/decision.ts";
import type { Desk } from "../talk/desk.ts";
import { operatorTurn } from "../talk/operator-turn.ts";
import { phoneOpening } from "../talk/phone-intake.ts";
import { may } from "../talk/rights.ts";
import type { Commit } from "./commit.ts";
import type { Directory } from "./directory.ts";
import { digestOf } from "./invites.ts";
import type { Chance, Received } from "./ports.ts";

/** Calls that came in by phone: opened by a dispatcher, joined by the operator through a link. */
export interface PhoneCalls {
  open(note: string, incoming: Incoming, member: Member): Promise<Received>;
  /** Makes a link for one use that brings whoever opens it into the case. */
  link(id: string, incoming: Incoming, member: Member): Promise<Received>;
  /** Lets somebody in who opened such a link; null: it is none of these. */
  join(token: string, incoming: Incoming, language: string): Promise<Received | null>;
}

export interface PhoneCallsParts {
  readonly directory: Directory;
  readonly commit: Commit;
  readonly chance: Chance;
  readonly desk: (now: number) => Desk;
  readonly read: (text: string, language: string, desk: Desk) => ReadingResult;
  readonly linkFor: (token: string) => string;
}

const refused: Received = { toast: phrase("not-allowed") };

export function createPhoneCalls(parts: PhoneCallsParts): PhoneCalls {
  const { directory, commit, chance } = parts;

  const readerOf = (incoming: Incoming, language: string) => {
    const { chat, topic } = incoming;
    return topic === undefined ? { chat, language } : { chat, language, topic };
  };

  return {
    async open(note, incoming, member) {
      if (!may(member.role, "note")) return refused;
      const id = chance.caseId();
      const seed = chance.seed();
      await commit({ kind: "case", id }, incoming.update, (document, at) => {
        if (document !== null) return null;
        const desk = parts.desk(at);
        const opened = {
          ...({ type: "case.opened", operator: "", name: "", chat: "" } as const),
          ...{ language: member.language, knowledge: desk.knowledge.version, seed },
        };
        const stamp = { at, by: member.person, update: incoming.update };
        const state = foldCase(id, [stamped(opened, stamp)]);
        const reading = parts.read(note, member.language, desk);
        const decision = phoneOpening(state, note, { heard: { incoming, reading, member }, desk });
        const happenings = [opened, ...decision.happenings];
        return { by: member.person, happenings, effects: decision.effects };
      });
      return {};
    },

    async link(id, incoming, member) {
      if (!may(member.role, "ask")) return refused;
      const token = chance.token();
      await commit({ kind: "case", id }, incoming.update, (document) => {
        if (document === null) return null;
        const state = foldCase(id, document.events);
        if (state.closed !== null || state.operator.chat !== "") return null;
        const message = {
          lines: [
            line(phrase("start-link", { number: id }), "heading"),
            line({ raw: parts.linkFor(token) }),
          ],
        };
        const effects = [say(readerOf(incoming, member.language), message)];
        const made = { type: "link.made", digest: digestOf(token) } as const;
        return { by: member.person, happenings: [made], effects };
      });
      return {};
    },

    async join(token, incoming, language) {
      const digest = digestOf(token);
      const [known] = directory.cases({ open: true, link: digest });
      if (known === undefined) return null;
      let joined = false;
      await commit({ kind: "case", id: known.id }, incoming.update, (document, at) => {
        joined = false;
        if (document === null) return null;
        const state = foldCase(known.id, document.events);
        // Somebody else may have used it a moment ago.
        if (state.link !== digest || state.closed !== null) return null;
        joined = true;
        const { id: operator, name } = incoming.from;
        const came = {
          ...({ type: "operator.joined", operator, name } as const),
          ...{ chat: incoming.chat, language },
        };
        const heard = { incoming, reading: null, member: null };
        const after = advance(state, [came], heard);
        const turn = operatorTurn(after, heard, parts.desk(at));
        const happenings = [came, ...turn.happenings];
        return { by: operator, happenings, effects: turn.effects };
      });
      return joined ? {} : null;
    },
  };
}
