import { stamped } from "../domain/case-events.ts";
import type { PersonDocument } from "../domain/documents.ts";
import type { PlannedEffect, Press } from "../domain/effects.ts";
import { foldCase } from "../domain/fold-case.ts";
import type { Incoming } from "../domain/incoming.ts";
import { line, nothingToDo, phrase, say } from "../talk/decision.ts";
import type { Desk } from "../talk/desk.ts";
import { forgetMessage, languageMessage } from "../talk/lobby.ts";
import { sayOpen } from "../talk/more-menu.ts";
import type { Commit } from "./commit.ts";
import type { Directory } from "./directory.ts";
import { createOwnMachines } from "./own-machines.ts";
import type { Received } from "./ports.ts";

/** What of a person's document can change. */
export type Body = Pick<
  PersonDocument,
  "name" | "chat" | "language" | "machines" | "has" | "reachable" | "lookedAt" | "noting"
>;

export interface PersonalParts {
  readonly directory: Directory;
  readonly commit: Commit;
  readonly desk: (now: number) => Desk;
  readonly languages: readonly string[];
  /** Forgets a person: their name, words, number, place and files in their cases. */
  readonly forget: (person: string) => Promise<void>;
  /** Everything that is kept of a person, as text. */
  readonly exportOf: (person: string) => Promise<string>;
  readonly readerOf: (incoming: Incoming) => { readonly chat: string; readonly language: string };
  /** Commits to the person's own document. */
  readonly answer: (
    incoming: Incoming,
    effects: readonly PlannedEffect[],
    change?: Partial<Body>,
  ) => Promise<Received>;
}

/** What everybody has of their own here: a language, machines, what is kept of them. */
export function createPersonal(parts: PersonalParts) {
  const { directory, commit, languages, readerOf, answer } = parts;
  const machines = createOwnMachines({
    directory,
    desk: () => parts.desk(0),
    answer: (incoming, message, change) =>
      answer(incoming, [say(readerOf(incoming), message)], change),
  });

  /**
   * Changes the language of a person's open cases and of those they work on; the one they write
   * about says its question again.
   * It is done before the update counts as applied: after a kill it is simply done again.
   * @returns true where a question was said again
   */
  async function speakInCases(incoming: Incoming, language: string): Promise<boolean> {
    const by = incoming.from.id;
    const own = directory.cases({ operator: by, open: true });
    const cases = [...own, ...directory.cases({ technician: by, open: true })];
    let isAsked = false;
    for (const [place, { id }] of cases.entries()) {
      await commit({ kind: "case", id }, null, (open, at) => {
        if (open === null) return null;
        const changed = { type: "language.changed", language } as const;
        const stamp = { at, by, update: null };
        const after = foldCase(id, [...open.events, stamped(changed, stamp)]);
        const isAsking = place === 0 && own.length > 0;
        const set = phrase("language-set");
        const said = isAsking ? sayOpen(after, set, parts.desk(at)) : nothingToDo;
        isAsked ||= said.effects.length > 0;
        return { by, happenings: [changed, ...said.happenings], effects: said.effects };
      });
    }
    return isAsked;
  }

  async function speak(language: string, incoming: Incoming): Promise<Received> {
    const isAsked = await speakInCases(incoming, language);
    const message = { lines: [line(phrase("language-set"))] };
    const to = { ...readerOf(incoming), language };
    return answer(incoming, isAsked ? [] : [say(to, message)], { language });
  }

  async function forget(incoming: Incoming): Promise<Received> {
    const to = readerOf(incoming);
    await parts.forget(incoming.from.id);
    const nobody = { name: "", machines: [], has: [], noting: null };
    return answer(incoming, [say(to, { lines: [line(phrase("forgotten"))] })], nobody);
  }

  async function share(incoming: Incoming): Promise<Received> {
    const text = await parts.exportOf(incoming.from.id);
    const attachment = { name: "turnrow.json", text };
    const message = { lines: [line(phrase("export-here"))], attachment };
    return answer(incoming, [say(readerOf(incoming), message)]);
  }

  return {
    /** Answers a command that everybody has; null for any other. */
    command(name: string, incoming: Incoming): Promise<Received> | null {
      const to = readerOf(incoming);
      if (name === "language") return answer(incoming, [say(to, languageMessage(languages))]);
      if (name === "forget") return answer(incoming, [say(to, forgetMessage())]);
      if (name === "machines") return machines.list(incoming);
      return name === "export" ? share(incoming) : null;
    },

    /** Answers a button that everybody may have; null for any other. */
    pressed({ act, value = "" }: Press, incoming: Incoming): Promise<Received> | null {
      if (act === "language" && languages.includes(value)) return speak(value, incoming);
      if (act === "forget" && value === "yes") return forget(incoming);
      return act === "own-machine" ? machines.pressed(value, incoming) : null;
    },

    written: machines.written,
  };
}
