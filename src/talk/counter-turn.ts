import type { CaseHappening } from "../domain/case-events.ts";
import type { CaseState } from "../domain/case-state.ts";
import type { Member } from "../domain/documents.ts";
import { book, offerWindows, pressedWindow, typedWindow, unbook } from "./booking.ts";
import {
  actsMenu,
  end,
  history,
  leave,
  openAgain,
  passOn,
  payment,
  prompt,
} from "./counter-acts.ts";
import { back, type Given, saying, withSlip } from "./counter-given.ts";
import { assign, handOver, movedMeanwhile, takeBack } from "./counter-hand.ts";
import { type Decision, line, nothingToDo, phrase, say } from "./decision.ts";
import type { Desk, Heard } from "./desk.ts";
import { onDuty } from "./duty.ts";
import { paperTo } from "./job-sheet.ts";
import { machineAct, machineWritten } from "./machine-profile.ts";
import { confirmMerge, merge, offerDuplicates } from "./merge.ts";
import { phoneAnswers } from "./phone-intake.ts";
import { filesToMark, markPhoto, unmarkPhoto } from "./photo-mark.ts";
import { pictureTo } from "./pictures.ts";
import { askOperator, heardByPhone } from "./relay.ts";
import { type CaseAct, may, type Standing } from "./rights.ts";
import { giveHelp } from "./self-help.ts";
import { slipMessage, slipSlot } from "./slip.ts";
import { factsIn } from "./understand.ts";

/** The slot of the slip that this reader has, so that later changes are made to the new copy. */
function readerSlot(given: Given): string {
  const { incoming } = given.heard;
  const atCounter = given.desk.counter?.chat === incoming.chat;
  return slipSlot(atCounter ? "counter" : incoming.from.id);
}

function seen(state: CaseState, flag: string, given: Given): Decision {
  const standing = state.flags.find((one) => one.flag === flag && one.seenBy === null);
  if (standing === undefined) return { ...nothingToDo, toast: phrase("seen-already") };
  const decision = withSlip(state, [{ type: "flag.seen", flag }], given);
  const who = given.heard.member?.name ?? given.desk.shop.name;
  const told = { lines: [line(phrase("operator-flag-seen", { who }))] };
  return { ...decision, effects: [say(state.operator, told), ...decision.effects] };
}

/** Sends the case's photos and files to whoever asks for them. */
export function filesTo(
  to: { readonly chat: string; readonly language: string; readonly topic?: number },
  state: CaseState,
): Decision {
  if (state.files.length === 0) return { ...nothingToDo, toast: phrase("no-files") };
  const effects = state.files.map(({ file, caption }) =>
    say(to, { lines: caption === undefined ? [] : [line({ raw: caption }, "quote")], file }),
  );
  return { happenings: [], effects };
}

type Act = (state: CaseState, value: string, given: Given) => Decision;

/** What can be pressed about a case: which right it needs, whether it is for closed cases as well. */
const presses: Readonly<
  Record<string, { readonly right: CaseAct; readonly afterwards?: true; readonly act: Act }>
> = {
  seen: { right: "seen", afterwards: true, act: seen },
  noticed: {
    right: "noticed",
    act: (state, _, given) =>
      state.shopSaw === null
        ? withSlip(state, [{ type: "shop.saw" }], given)
        : lookedAfter(state, given),
  },
  "hand-over": { right: "hand-over", act: (state, _, given) => handOver(state, given) },
  assign: { right: "assign", act: assign },
  "take-back": { right: "take-back", act: (state, _, given) => takeBack(state, given) },
  files: {
    right: "files",
    afterwards: true,
    act: (state, _, given) => filesToMark(state, given),
  },
  help: { right: "ask", act: giveHelp },
  mark: { right: "note", act: markPhoto },
  unmark: { right: "note", act: unmarkPhoto },
  slip: { right: "see", afterwards: true, act: (state, _, given) => showSlip(state, given) },
  paper: {
    right: "see",
    afterwards: true,
    act: (state, _, given) => paperTo(back(given), state, given.desk),
  },
  causes: {
    right: "see",
    afterwards: true,
    act: (state, _, given) => pictureTo(back(given), "causes", { state, desk: given.desk }),
  },
  circuit: {
    right: "see",
    afterwards: true,
    act: (state, _, given) => pictureTo(back(given), "circuit", { state, desk: given.desk }),
  },
  history: { right: "see", afterwards: true, act: (state, _, given) => history(state, given) },
  acts: { right: "see", afterwards: true, act: (state, _, given) => actsMenu(state, given) },
  "open-again": {
    right: "decide",
    afterwards: true,
    act: (state, _, given) => openAgain(state, given),
  },
  ask: { right: "ask", act: (state, _, given) => prompt(state, "ask", given) },
  heard: { right: "note", act: (state, _, given) => prompt(state, "heard", given) },
  leave: { right: "see", afterwards: true, act: (state, _, given) => leave(state, given) },
  "ask-photo": {
    right: "ask",
    act: (state, _, given) => askOperator(state, { text: "", photo: true }, given),
  },
  book: { right: "book", act: bookPressed },
  unbook: { right: "book", act: (state, _, given) => unbook(state, given) },
  pay: { right: "decide", act: payment },
  pass: { right: "decide", act: passOn },
  end: { right: "decide", act: end },
  merge: { right: "decide", act: mergePressed },
  machine: { right: "note", act: machineAct },
};

/** What can be pressed at the counter, by name. */
export const counterActs: ReadonlySet<string> = new Set(Object.keys(presses));

function lookedAfter(state: CaseState, given: Given): Decision {
  const who = given.desk.members.find((member) => member.person === state.shopSaw);
  if (who === undefined) return nothingToDo;
  return { ...nothingToDo, toast: phrase("slip-looked-after", { who: who.name }) };
}

function showSlip(state: CaseState, given: Given): Decision {
  const message = slipMessage(state, given.desk);
  return { happenings: [], effects: [say(back(given), message, readerSlot(given))] };
}

function bookPressed(state: CaseState, value: string, given: Given): Decision {
  const window = pressedWindow(value);
  return window === null ? offerWindows(state, given) : book(state, window, given);
}

function mergePressed(state: CaseState, value: string, given: Given): Decision {
  if (value === "") return offerDuplicates(state, given);
  return value.endsWith("!")
    ? merge(state, value.slice(0, -1), given)
    : confirmMerge(state, value, given);
}

/** What the dispatcher writes after being asked to, by what they were asked for. */
function promptedWords(state: CaseState, text: string, given: Given): Decision | null {
  const { prompt: asked } = state;
  const { heard, desk } = given;
  if (asked === null || asked.by !== heard.incoming.from.id) return null;
  if (asked.about === "phone") return phoneAnswers(state, text, heard, desk);
  if (asked.about === "ask") return askOperator(state, { text, photo: false }, given);
  if (asked.about === "title" || asked.about === "serial") {
    return machineWritten(state, { about: asked.about, text }, given);
  }
  if (asked.about === "merge") return confirmMerge(state, text.trim().toUpperCase(), given);
  if (asked.about === "heard") {
    const reading = heard.reading;
    const about = { state, knowledge: desk.knowledge, reporter: "second-hand" } as const;
    return heardByPhone(state, reading === null ? [] : factsIn(reading, about), { ...given, text });
  }
  const window = typedWindow(text, desk.now, desk.shop.timeZone);
  return window === null
    ? saying([line(phrase("book-not-understood"))], nothingToDo, given)
    : book(state, window, given);
}

/** A technician is at the counter only while they have the call-outs. */
function standingOf(member: Member | null, desk: Desk): Standing {
  if (member?.role !== "technician") return member?.role ?? "stranger";
  return onDuty(desk, desk.now)?.person === member.person ? "on-duty" : "technician";
}

/** What a dispatcher does with a case: press under its slip, or answer it with words. */
export function counterTurn(state: CaseState, heard: Heard, desk: Desk): Decision {
  const standing = standingOf(heard.member, desk);
  const { what } = heard.incoming;
  const given = { heard, desk };
  if (what.kind === "press" && what.press !== null) {
    const known = Object.hasOwn(presses, what.press.act) ? presses[what.press.act] : undefined;
    if (known === undefined || !may(standing, known.right)) {
      return { ...nothingToDo, toast: phrase("not-allowed") };
    }
    if (state.closed !== null && known.afterwards !== true) {
      return { ...nothingToDo, toast: phrase("case-is-closed") };
    }
    const moves = ["assign", "take-back"].includes(what.press.act);
    const stale = moves && what.press.revision !== state.hands;
    if (stale && what.press.value !== state.technician?.id) return movedMeanwhile(state);
    return known.act(state, what.press.value ?? "", given);
  }
  if (what.kind !== "text" || !may(standing, "note")) return nothingToDo;
  const prompted = promptedWords(state, what.text, given);
  if (prompted !== null) return prompted;
  const note: CaseHappening = { type: "note.added", text: what.text, from: "dispatcher" };
  const kept = [line(phrase("note-kept", { number: state.id }))];
  return saying(kept, withSlip(state, [note], given), given);
}
