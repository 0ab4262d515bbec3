import type { CaseHappening, End } from "../domain/case-events.ts";
import type { CaseState } from "../domain/case-state.ts";
import type { Button, Line, Message } from "../domain/effects.ts";
import { type Payer, payers } from "../domain/shop-happenings.ts";
import { back, type Given, saying, tellingOperator, withSlip } from "./counter-given.ts";
import { button, type Decision, line, nothingToDo, phrase, say } from "./decision.ts";
import { complaintOf } from "./solved.ts";

const HISTORY_SHOWN = 20;

/** Ends that the counter decides; a visit is closed by the technician who made it. */
const ends: readonly End[] = [
  "solved-by-chat",
  "collected",
  "part-handed-over",
  "loan-machine",
  "referred",
  "nothing-found",
  "called-off",
];

const pressOf = (state: CaseState, act: string, value?: string) => ({
  case: state.id,
  revision: 0,
  act,
  ...(value === undefined ? {} : { value }),
});

/** Shows the dispatcher a message of their own. */
const show = (message: Message, given: Given): Decision => ({
  happenings: [],
  effects: [say(back(given), message)],
});

/** Everything that can be done with a case besides what stands under its slip. */
export function actsMenu(state: CaseState, given: Given): Decision {
  const open = [
    "ask",
    "ask-photo",
    "help",
    "heard",
    "book",
    "pay",
    "machine",
    "pass",
    "merge",
    "end",
  ];
  const always = ["history", "sticker", "causes", "circuit", "paper"];
  const names = state.closed === null ? [...open, ...always] : always;
  const buttons = names.map((name) => button(phrase(`press-${name}`), pressOf(state, name)));
  const lines = [line(phrase("acts-choose", { number: state.id }), "heading")];
  return show({ lines, buttons }, given);
}

/** The dispatcher is asked to write; what they write next goes into this case. */
export function prompt(state: CaseState, about: "ask" | "heard", given: Given): Decision {
  const lines = [line(phrase(`prompt-${about}`, { number: state.id }), "heading")];
  const message = { lines, buttons: [button(phrase("press-leave"), pressOf(state, "leave"))] };
  return {
    happenings: [{ type: "counter.prompted", about }],
    effects: [say(back(given), message)],
  };
}

/** Who pays, and did the operator agree to the call-out charge? */
export function payment(state: CaseState, value: string, given: Given): Decision {
  const [who, agreed] = value.split(":");
  const payer = payers.find((one) => one === who);
  if (payer === undefined) {
    const rows = payers.map((one: Payer): readonly Button[] =>
      [true, false].map((yes) => ({
        label: phrase(yes ? "pay-agreed" : "pay-open", {
          payer: { phrase: phrase(`payer-${one}`) },
        }),
        press: pressOf(state, "pay", `${one}:${yes ? "yes" : "no"}`),
      })),
    );
    return show({ lines: [line(phrase("pay-which"), "heading")], buttons: rows }, given);
  }
  const told: CaseHappening = { type: "payment.told", payer, agreed: agreed === "yes" };
  return { ...withSlip(state, [told], given), toast: phrase("done") };
}

/** Passes the case on to another dispatcher, who is told. */
export function passOn(state: CaseState, value: string, given: Given): Decision {
  const { members } = given.desk;
  const others = members.filter(
    (one) => one.role !== "technician" && one.person !== given.heard.incoming.from.id,
  );
  const to = others.find((one) => one.person === value);
  if (to === undefined) {
    const buttons = others.map((one) =>
      button({ raw: one.name }, pressOf(state, "pass", one.person)),
    );
    const key = others.length === 0 ? "pass-nobody" : "pass-which";
    return show({ lines: [line(phrase(key), "heading")], buttons }, given);
  }
  const decision = withSlip(state, [{ type: "case.passed-on", to: to.person }], given);
  const lines = [line(phrase("passed-to-you", { number: state.id }), "heading")];
  const told = say(to, { lines, buttons: [button(phrase("press-slip"), pressOf(state, "slip"))] });
  return { ...decision, effects: [told, ...decision.effects], toast: phrase("done") };
}

/** Closes the case the way the counter decides; it can be opened again. */
export function end(state: CaseState, value: string, given: Given): Decision {
  const chosen = ends.find((one) => one === value);
  if (chosen === undefined) {
    const buttons = ends.map((one) => button(phrase(`end-${one}`), pressOf(state, "end", one)));
    return show({ lines: [line(phrase("end-which"), "heading")], buttons }, given);
  }
  const closed: CaseHappening = {
    type: "case.closed",
    end: chosen,
    complaint: complaintOf(state),
    cause: state.confirmed?.faults[0] ?? state.confirmed?.words ?? "",
    correction: "",
  };
  const decision = withSlip(state, [closed], given);
  const { technician } = state;
  const lines = [line(phrase("technician-closed", { number: state.id }))];
  const freed = technician === null ? [] : [say(technician, { lines })];
  const how = { phrase: phrase(`end-${chosen}`) };
  const told = [line(phrase("operator-ended", { number: state.id, how }))];
  const done = { ...decision, effects: [...freed, ...decision.effects] };
  return { ...tellingOperator(state, told, done), toast: phrase("done") };
}

/** Opens a closed case again. */
export function openAgain(state: CaseState, given: Given): Decision {
  if (state.closed === null) return { ...nothingToDo, toast: phrase("is-open") };
  const decision = withSlip(state, [{ type: "case.reopened" }], given);
  const told = [line(phrase("operator-reopened", { number: state.id }))];
  return tellingOperator(state, told, decision);
}

function nameOf(person: string, state: CaseState, given: Given): string {
  const { members, shop } = given.desk;
  if (person === state.operator.id && state.operator.name !== "") return state.operator.name;
  return members.find((one) => one.person === person)?.name ?? shop.name;
}

/** What happened with the case, by whom and when, newest last. */
export function history(state: CaseState, given: Given): Decision {
  const lines = state.history.slice(-HISTORY_SHOWN).map((one): Line => {
    const what = { phrase: phrase(`past-${one.type.replaceAll(".", "-")}`) };
    const when = { time: one.at, style: "day-hour" } as const;
    return line(
      phrase("history-line", { when, what, who: nameOf(one.by, state, given) }),
      "bullet",
    );
  });
  const title = line(phrase("history-title", { number: state.id }), "heading");
  return show({ lines: [title, ...lines] }, given);
}

/** Nothing is written after all. */
export function leave(state: CaseState, given: Given): Decision {
  if (state.prompt === null) return nothingToDo;
  const left: Decision = { happenings: [{ type: "counter.left" }], effects: [] };
  return saying([line(phrase("left-it"))], left, given);
}
