import type { CaseHappening, KnownMachine } from "../domain/case-events.ts";
import { stamped } from "../domain/case-events.ts";
import type { CaseState } from "../domain/case-state.ts";
import type { Member } from "../domain/documents.ts";
import type { Phrase, Press } from "../domain/effects.ts";
import { foldCase } from "../domain/fold-case.ts";
import type { Incoming } from "../domain/incoming.ts";
import type { Reader } from "../domain/reading.ts";
import { advance } from "../talk/advance.ts";
import { counterActs, counterTurn } from "../talk/counter-turn.ts";
import type { Decision } from "../talk/decision.ts";
import type { Desk, Heard } from "../talk/desk.ts";
import { followUps } from "../talk/follow-ups.ts";
import { lobbyCommands } from "../talk/lobby.ts";
import { operatorTurn } from "../talk/operator-turn.ts";
import { relayed } from "../talk/relay.ts";
import { visitTurn } from "../talk/visit-turn.ts";
import { caseOf, caseOfFile, promptedCase, type Side } from "./case-of.ts";
import type { Commit } from "./commit.ts";
import type { Directory } from "./directory.ts";
import type { Lobby } from "./lobby.ts";
import { ownWords } from "./own-words.ts";
import { createPhoneCalls } from "./phone-calls.ts";
import type { Chance, Received } from "./ports.ts";
import { readWords } from "./read-words.ts";
import { createStickers } from "./stickers.ts";

export interface OfficeParts {
  /** The link that brings somebody here with a token. */
  readonly link: (token: string) => string;
  readonly directory: Directory;
  readonly commit: Commit;
  readonly chance: Chance;
  readonly reader: Reader;
  readonly lobby: Lobby;
  /** The desk as it stands now: settings, members, time. */
  readonly desk: (now: number) => Desk;
  /** Languages that people can be spoken to. */
  readonly languages: readonly string[];
}

type Turn = (state: CaseState, heard: Heard, desk: Desk) => Decision;

const turns: Readonly<Record<Side, Turn>> = {
  operator: operatorTurn,
  counter: counterTurn,
  visit: visitTurn,
};

/** Both sides have these: whoever was handed the case gets them as its technician. */
const sharedActs = new Set(["files", "paper", "causes", "circuit", "probes"]);
const visitActs = new Set([
  ...sharedActs,
  "set-out",
  "begin",
  "result",
  "skip-step",
  "found",
  "undo",
  "sheet",
  "cause",
  "short",
  "reading-of",
  "record",
]);

/** Finds out what an update is about, lets that side decide, and commits the outcome. */
export function createOffice(parts: OfficeParts): (incoming: Incoming) => Promise<Received> {
  const { directory, commit, chance, reader, lobby, languages } = parts;

  const memberOf = (incoming: Incoming): Member | null =>
    directory.members().find((member) => member.person === incoming.from.id) ?? null;

  function languageOf(incoming: Incoming): string {
    const own = directory.person(incoming.from.id)?.language ?? incoming.from.language ?? "";
    const alike = [own, own.slice(0, 2)].find((one) => languages.includes(one));
    return alike ?? languages.find((one) => one.startsWith(`${own}-`)) ?? languages[0] ?? "en";
  }

  const phone = createPhoneCalls({
    ...{ directory, commit, chance },
    desk: parts.desk,
    linkFor: parts.link,
    read: (text, language, { shop, now }) =>
      reader.read(text, {
        languages: [language, ...shop.languages.filter((one) => one !== language)],
        now,
      }),
  });

  const stickers = createStickers({
    ...{ directory, commit, chance },
    desk: parts.desk,
    linkFor: parts.link,
  });

  /** Which side of the case a press belongs to, by who pressed it and what it does. */
  function sideOf(press: Press, incoming: Incoming, member: Member | null): Side {
    const summary = directory.case(press.case ?? "");
    const handed = summary?.technician?.id === incoming.from.id;
    if (visitActs.has(press.act) && (handed || !sharedActs.has(press.act))) return "visit";
    if (counterActs.has(press.act) && member !== null) return "counter";
    return "operator";
  }

  function wordsOf(incoming: Incoming): string | null {
    if (incoming.what.kind === "text") return incoming.what.text;
    return incoming.what.kind === "file" ? (incoming.what.caption ?? null) : null;
  }

  function opened(incoming: Incoming, desk: Desk): CaseHappening {
    return {
      type: "case.opened",
      operator: incoming.from.id,
      name: incoming.from.name,
      chat: incoming.chat,
      language: languageOf(incoming),
      knowledge: desk.knowledge.version,
      seed: chance.seed(),
    };
  }

  /** The desk with what is kept of the operator who writes. */
  function deskFor(side: Side, incoming: Incoming, at: number): Desk {
    const desk = parts.desk(at);
    const person = side === "operator" ? directory.person(incoming.from.id) : null;
    if (person === null) return desk;
    const { machines, has } = person;
    return { ...desk, remembered: { machines, ...(has === undefined ? {} : { has }) } };
  }

  async function inCase(
    id: string,
    side: Side,
    incoming: Incoming,
    known: readonly CaseHappening[] = [],
  ): Promise<Received> {
    const fresh = directory.case(id) === null;
    let toast: Phrase | undefined;
    await commit({ kind: "case", id }, incoming.update, (document, at) => {
      const desk = deskFor(side, incoming, at);
      const first = document === null && fresh ? [opened(incoming, desk), ...known] : [];
      if (document === null && !fresh) return null;
      const stamp = { at, by: incoming.from.id, update: incoming.update };
      const state = foldCase(id, [
        ...(document?.events ?? []),
        ...first.map((happening) => stamped(happening, stamp)),
      ]);
      const words = wordsOf(incoming);
      const reading = words === null ? null : readWords(reader, words, { state, side, desk });
      const heard = { incoming, reading, member: memberOf(incoming) };
      const replied = side === "operator" ? relayed(state, heard, desk) : null;
      const decision = replied ?? turns[side](state, heard, desk);
      toast = decision.toast;
      const events = [...first, ...decision.happenings];
      if (events.length === 0 && decision.effects.length === 0) return null;
      const after = advance(state, decision.happenings, heard);
      const effects = [...decision.effects, ...followUps(state, after, desk)];
      return { by: incoming.from.id, happenings: events, effects };
    });
    return {
      language: languageOf(incoming),
      ...(toast === undefined ? {} : { toast }),
    };
  }

  async function words(incoming: Incoming, member: Member | null): Promise<Received> {
    const { what } = incoming;
    const desk = parts.desk(incoming.sentAt);
    const writer = { member, language: languageOf(incoming), desk, directory, reader, lobby };
    const own = what.kind === "text" ? ownWords(what.text, incoming, writer) : null;
    if (own !== null && "command" in own) return command(own.command, "", incoming);
    if (own !== null) return own;
    const person = incoming.from.id;
    const about =
      incoming.what.kind === "file"
        ? caseOfFile(directory, { person, now: incoming.sentAt }, member)
        : caseOf(directory, person, member);
    if (about !== null) return inCase(about.id, about.side, incoming);
    // Where there is no case, changed words are no news.
    if (incoming.what.kind === "edited") return {};
    if (member !== null) return lobby.stray(incoming, member);
    return inCase(chance.caseId(), "operator", incoming);
  }

  /** Whoever scans a machine's code goes on with their case about it, or begins one. */
  function atMachine(machine: KnownMachine, incoming: Incoming): Promise<Received> {
    const own = directory
      .cases({ operator: incoming.from.id, open: true })
      .find((one) => one.figures.profile === machine.id);
    const { facts, id: profile } = machine;
    const described = { type: "machine.described", facts, profile } as const;
    return inCase(own?.id ?? chance.caseId(), "operator", incoming, [described]);
  }

  async function pressed(press: Press, incoming: Incoming, member: Member | null) {
    if (press.case === undefined) return lobby.pressed(press, incoming, member);
    const summary = directory.case(press.case);
    if (press.act === "start-link" && member !== null) {
      return phone.link(press.case, incoming, member);
    }
    if (press.act === "sticker" && member !== null) {
      return stickers.make(press.case, incoming, member);
    }
    const side = sideOf(press, incoming, member);
    const own = summary?.operator.id === incoming.from.id;
    if (summary === null || (side === "operator" && !own)) return lobby.refuse(incoming);
    return inCase(press.case, side, incoming);
  }

  async function command(name: string, argument: string, incoming: Incoming) {
    const member = memberOf(incoming);
    if (name === "start" && argument !== "") {
      const machine = stickers.machineOf(argument);
      if (machine !== null) return atMachine(machine, incoming);
      const joined = await phone.join(argument, incoming, languageOf(incoming));
      return joined ?? lobby.join(argument, incoming);
    }
    if (name === "call" && member !== null) {
      if (argument !== "") return phone.open(argument, incoming, member);
      return lobby.command(name, incoming, { member, argument });
    }
    if (name === "new") return inCase(chance.caseId(), "operator", incoming);
    if (lobbyCommands.has(name)) return lobby.command(name, incoming, { member, argument });
    if (name === "start" && member !== null)
      return lobby.command("help", incoming, { member, argument: "" });
    return words(incoming, member);
  }

  return async (incoming) => {
    const { what } = incoming;
    const member = memberOf(incoming);
    if (what.kind === "reachable" || what.kind === "moved") return lobby.upkeep(incoming);
    if (what.kind === "press") {
      return what.press === null ? lobby.refuse(incoming) : pressed(what.press, incoming, member);
    }
    if (!incoming.direct) {
      const prompted =
        what.kind === "text" ? promptedCase(directory, incoming.from.id, member) : null;
      return prompted === null
        ? lobby.group(incoming, member)
        : inCase(prompted, "counter", incoming);
    }
    await lobby.remember(incoming, languageOf(incoming));
    if (what.kind === "command") return command(what.name, what.argument, incoming);
    return words(incoming, member);
  };
}
