import type { CaseHappening } from "../domain/case-events.ts";
import { stamped } from "../domain/case-events.ts";
import type { CaseState } from "../domain/case-state.ts";
import { applyEvent } from "../domain/fold-case.ts";
import { wordKey } from "../domain/knowledge.ts";
import { back, type Given, saying, tellingOperator, withSlip } from "./counter-given.ts";
import { button, type Decision, line, nothingToDo, phrase, say } from "./decision.ts";
import { DAY, type Desk, type OtherCase } from "./desk.ts";
import { slipEffects } from "./slip.ts";
import { complaintOf } from "./solved.ts";

const OFFERED = 5;
/** Calls about one trouble come close together. */
const CLOSE_IN_TIME = 3 * DAY;

/** Open cases that may be the same trouble: same person or same kind of machine, likeliest first. */
export function duplicatesOf(state: CaseState, desk: Desk): readonly OtherCase[] {
  const score = (other: OtherCase) =>
    2 * Number(other.operator.id === state.operator.id && other.operator.id !== "") +
    Number(other.machine.kind !== undefined && other.machine.kind === state.machine.kind) +
    Number(Math.abs(other.openedAt - state.opened.at) < CLOSE_IN_TIME);
  return (desk.others?.() ?? [])
    .filter((other) => other.id !== state.id && score(other) > 1)
    .sort((a, b) => score(b) - score(a) || b.openedAt - a.openedAt)
    .slice(0, OFFERED);
}

/** Which case is the same trouble? */
export function offerDuplicates(state: CaseState, given: Given): Decision {
  const buttons = duplicatesOf(state, given.desk).map((other) => {
    const machine = { know: wordKey("machine", other.machine.kind ?? "other") };
    const label = phrase("merge-with", { number: other.id, machine, who: other.operator.name });
    return button(label, { case: state.id, revision: 0, act: "merge", value: other.id });
  });
  const message = {
    lines: [line(phrase("merge-which", { number: state.id }), "heading")],
    buttons,
  };
  return {
    happenings: [{ type: "counter.prompted", about: "merge" }],
    effects: [say(back(given), message)],
  };
}

/** Asks before two cases become one. */
export function confirmMerge(state: CaseState, other: string, given: Given): Decision {
  const known = (given.desk.others?.() ?? []).some((one) => one.id === other && other !== state.id);
  if (!known) return saying([line(phrase("merge-unknown", { number: other }))], nothingToDo, given);
  const press = { case: state.id, revision: 0, act: "merge", value: `${other}!` };
  const message = {
    lines: [line(phrase("merge-sure", { number: state.id, other }), "heading")],
    buttons: [button(phrase("merge-yes"), press)],
  };
  return { happenings: [], effects: [say(back(given), message)] };
}

/** Closes this case as the same trouble as another, which is told what was known here. */
export function merge(state: CaseState, other: string, given: Given): Decision {
  if (!(given.desk.others?.() ?? []).some((one) => one.id === other)) {
    return { ...nothingToDo, toast: phrase("merge-unknown", { number: other }) };
  }
  const closed: CaseHappening = {
    ...({ type: "case.closed", end: "duplicate", cause: "", correction: "" } as const),
    complaint: complaintOf(state),
  };
  const decision = withSlip(state, [closed], given);
  const note = [state.operator.name, state.phone, ...state.words].filter(Boolean).join(" · ");
  const by = given.heard.incoming.from.id;
  const event = { type: "took-in", other: state.id, by, note } as const;
  const told = tellingOperator(
    state,
    [line(phrase("operator-merged", { number: state.id, other }))],
    decision,
  );
  const tell = { effect: { do: "tell", document: { kind: "case", id: other }, event } as const };
  return { ...told, effects: [tell, ...told.effects] };
}

/** The other side of a merge: what the closed case knew is kept as a note. */
export function tookInTurn(
  state: CaseState,
  told: { readonly other: string; readonly by: string; readonly note: string },
  desk: Desk,
): Decision {
  if (state.tookIn.includes(told.other)) return nothingToDo;
  const happenings: (CaseHappening & { readonly by?: string })[] = [
    { type: "case.took-in", other: told.other, by: told.by },
    { type: "note.added", text: told.note, from: "dispatcher" },
  ];
  const after = happenings.reduce(
    (earlier, one) =>
      applyEvent(earlier, stamped(one, { at: desk.now, by: told.by, update: null })),
    state,
  );
  return { happenings, effects: slipEffects(after, desk) };
}
