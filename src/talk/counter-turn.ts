import type { CaseHappening } from "../domain/case-events.ts";
import type { CaseState } from "../domain/case-state.ts";
import type { Member } from "../domain/documents.ts";
import type { Message, Press } from "../domain/effects.ts";
import { advance } from "./advance.ts";
import { button, type Decision, line, nothingToDo, phrase, say } from "./decision.ts";
import type { Desk, Heard } from "./desk.ts";
import { type CaseAct, may } from "./rights.ts";
import { slipEffects, slipMessage, slipSlot } from "./slip.ts";
import { pinEffects, sheetEffects } from "./visit-sheet.ts";

interface Given {
  readonly heard: Heard;
  readonly desk: Desk;
}

/** Where the dispatcher who acted reads the answer. */
function back(given: Given) {
  const { incoming, member } = given.heard;
  const language = member?.language ?? given.desk.shop.languages[0] ?? "en";
  return {
    chat: incoming.chat,
    language,
    ...(incoming.topic === undefined ? {} : { topic: incoming.topic }),
  };
}

/** The slot of the slip that this reader has, so that later changes are made to the new copy. */
function readerSlot(given: Given): string {
  const { incoming } = given.heard;
  const atCounter = given.desk.counter?.chat === incoming.chat;
  return slipSlot(atCounter ? "counter" : incoming.from.id);
}

function withSlip(state: CaseState, happenings: readonly CaseHappening[], given: Given): Decision {
  const after = advance(state, happenings, given.heard);
  return { happenings, effects: slipEffects(after, given.desk) };
}

function technicians(desk: Desk): readonly Member[] {
  return desk.members.filter((member) => member.role !== "dispatcher");
}

/** Offers the technicians there are. */
function handOver(state: CaseState, given: Given): Decision {
  const people = technicians(given.desk);
  const message: Message = {
    lines: [
      line(
        phrase(people.length === 0 ? "no-technicians" : "which-technician", { number: state.id }),
        "heading",
      ),
    ],
    buttons: people.map((member) =>
      button(
        { raw: member.name },
        { case: state.id, revision: 0, act: "assign", value: member.person },
      ),
    ),
  };
  return { happenings: [], effects: [say(back(given), message, `hand-${back(given).chat}`)] };
}

function assign(state: CaseState, person: string, given: Given): Decision {
  const { desk, heard } = given;
  const technician = technicians(desk).find((member) => member.person === person);
  if (technician === undefined) return { ...nothingToDo, toast: phrase("no-longer-there") };
  if (state.technician?.id === person) {
    return { ...nothingToDo, toast: phrase("has-it-already", { technician: technician.name }) };
  }
  const { name, chat, language } = technician;
  const assigned: CaseHappening = {
    type: "case.assigned",
    technician: person,
    name,
    chat,
    language,
  };
  const happenings = [assigned];
  const after = advance(state, happenings, heard);
  const told = {
    lines: [line(phrase("operator-assigned", { technician: name, shop: desk.shop.name }))],
  };
  return {
    happenings,
    effects: [
      ...sheetEffects(after, desk),
      ...pinEffects(after),
      ...(after.operator.chat === "" ? [] : [say(after.operator, told)]),
      ...slipEffects(after, desk),
    ],
    toast: phrase("handed-to", { technician: name }),
  };
}

function takeBack(state: CaseState, given: Given): Decision {
  const technician = state.technician;
  if (technician === null) return { ...nothingToDo, toast: phrase("nobody-has-it") };
  const decision = withSlip(state, [{ type: "case.taken-back" }], given);
  const told = { lines: [line(phrase("technician-taken-back", { number: state.id }))] };
  return { ...decision, effects: [say(technician, told), ...decision.effects] };
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

const presses: Readonly<Record<string, CaseAct>> = {
  seen: "seen",
  noticed: "noticed",
  "hand-over": "hand-over",
  assign: "assign",
  "take-back": "take-back",
  files: "files",
  slip: "see",
};

/** What may still be done when the case is closed. */
const afterwards = new Set(["seen", "slip", "files"]);

function pressed(state: CaseState, press: Press, given: Given): Decision {
  const value = press.value ?? "";
  if (state.closed !== null && !afterwards.has(press.act)) {
    return { ...nothingToDo, toast: phrase("case-is-closed") };
  }
  switch (press.act) {
    case "seen":
      return seen(state, value, given);
    case "noticed":
      return state.shopSaw === null ? withSlip(state, [{ type: "shop.saw" }], given) : nothingToDo;
    case "hand-over":
      return handOver(state, given);
    case "assign":
      return assign(state, value, given);
    case "take-back":
      return takeBack(state, given);
    case "slip":
      return {
        happenings: [],
        effects: [say(back(given), slipMessage(state, given.desk), readerSlot(given))],
      };
    default:
      return filesTo(back(given), state);
  }
}

/** What a dispatcher does with a case: press under its slip, or answer it with words. */
export function counterTurn(state: CaseState, heard: Heard, desk: Desk): Decision {
  const standing = heard.member?.role ?? "stranger";
  const { what } = heard.incoming;
  const given = { heard, desk };
  if (what.kind === "press" && what.press !== null) {
    const act = presses[what.press.act];
    if (act === undefined || !may(standing, act)) {
      return { ...nothingToDo, toast: phrase("not-allowed") };
    }
    return pressed(state, what.press, given);
  }
  if (what.kind !== "text" || !may(standing, "note")) return nothingToDo;
  const note: CaseHappening = { type: "note.added", text: what.text, from: "dispatcher" };
  const decision = withSlip(state, [note], given);
  const kept = say(back(given), { lines: [line(phrase("note-kept", { number: state.id }))] });
  return { ...decision, effects: [kept, ...decision.effects] };
}
