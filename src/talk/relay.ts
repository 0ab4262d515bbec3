import type { CaseHappening } from "../domain/case-events.ts";
import type { CaseState } from "../domain/case-state.ts";
import { advance } from "./advance.ts";
import { back, type Given, saying, tellingOperator, withSlip } from "./counter-given.ts";
import { type Decision, line, nothingToDo, phrase, say } from "./decision.ts";
import type { Desk, Heard } from "./desk.ts";
import { slipEffects, slipReaders } from "./slip.ts";

/** Passes a question of the shop on to the operator; neither sees the other's number. */
export function askOperator(
  state: CaseState,
  question: { readonly text: string; readonly photo: boolean },
  given: Given,
): Decision {
  const { text, photo } = question;
  const asked: CaseHappening = { type: "operator.asked", text, photo };
  const decision = withSlip(state, [asked], given);
  if (state.operator.chat === "") {
    return saying([line(phrase("no-chat", { number: state.id }))], nothingToDo, given);
  }
  const who = given.heard.member?.name ?? given.desk.shop.name;
  const words = photo
    ? [
        line(phrase("shop-asks-photo", { who }), "heading"),
        ...(text === "" ? [] : [line({ raw: text }, "quote")]),
      ]
    : [line(phrase("shop-asks", { who }), "heading"), line({ raw: text }, "quote")];
  const told = tellingOperator(state, words, decision);
  return saying([line(phrase("asked-operator", { number: state.id }))], told, given);
}

/**
 * The operator's words or photo are the answer to what the shop asked.
 * @returns null where nothing was asked, or the words belong to something else
 */
export function relayed(state: CaseState, heard: Heard, desk: Desk): Decision | null {
  const asked = state.askedBack;
  const { what } = heard.incoming;
  if (asked === null) return null;
  const isWords = what.kind === "text" && !asked.photo;
  const isPhoto = what.kind === "file" && asked.photo;
  if (!isWords && !isPhoto) return null;
  const text = what.kind === "text" ? what.text : (what.caption ?? "");
  const happenings: CaseHappening[] = [
    { type: "operator.replied", text },
    ...(what.kind === "file"
      ? [
          {
            type: "file.received",
            file: what.file,
            from: "operator",
            ...(what.caption === undefined ? {} : { caption: what.caption }),
          } as const,
        ]
      : [{ type: "note.added", text, from: "operator" } as const]),
  ];
  const after = advance(state, happenings, heard);
  const asker = desk.members.find((member) => member.person === asked.by);
  const readers = asker === undefined || desk.counter !== undefined ? slipReaders(desk) : [asker];
  const lines = [
    line(phrase("operator-replied", { number: state.id, question: asked.text }), "heading"),
    ...(text === "" ? [] : [line({ raw: text }, "quote")]),
  ];
  const file = what.kind === "file" ? { file: what.file } : {};
  const thanks = { lines: [line(phrase("passed-on"))] };
  return {
    happenings,
    effects: [
      say(state.operator, thanks),
      ...readers.map((reader) => say(reader, { lines, ...file })),
      ...slipEffects(after, desk),
    ],
  };
}

/** What was heard on the phone goes into the case as the operator's own words, second hand. */
export function heardByPhone(
  state: CaseState,
  facts: readonly CaseHappening[],
  given: Given & { readonly text: string },
): Decision {
  const note: CaseHappening = { type: "note.added", text: given.text, from: "dispatcher" };
  const happenings: CaseHappening[] = [...facts, note, { type: "counter.left" }];
  const decision = withSlip(state, happenings, given);
  return {
    ...decision,
    effects: [
      say(back(given), { lines: [line(phrase("note-kept", { number: state.id }))] }),
      ...decision.effects,
    ],
  };
}
